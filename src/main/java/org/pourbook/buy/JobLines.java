package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;

/** Rows of the Materials sheet: each job's share of what was bought. */
final class JobLines {

  /** What orders bring of a purchase for one job. */
  private static final class Brought {
    private Money amount = Money.ZERO;
    private final Set<String> orders = new LinkedHashSet<>();
  }

  private final Map<Purchase, Map<String, Brought>> brought = new IdentityHashMap<>();

  /** Most lines of a job come by the same orders: one list of each is kept. */
  private final Map<List<String>, List<String>> alike = new HashMap<>();

  private JobLines(List<OrderDraft> drafts, int after) {
    for (int i = 0; i < drafts.size(); i++) {
      String number = Orders.number(after + i);
      for (OrderDraft.Good good : drafts.get(i).goods()) {
        Map<String, Brought> byJob =
            brought.computeIfAbsent(good.purchase(), k -> new LinkedHashMap<>());
        good.byJob()
            .forEach(
                (job, amount) -> {
                  Brought sum = byJob.computeIfAbsent(job, k -> new Brought());
                  sum.amount = sum.amount.plus(amount);
                  sum.orders.add(number);
                });
      }
    }
  }

  /**
   * Returns the lines: by job in the batch's order, then material and size.
   *
   * @param after how many orders were numbered before
   */
  static List<Line> of(List<Job> jobs, List<Choice> choices, List<OrderDraft> drafts, int after) {
    JobLines lines = new JobLines(drafts, after);
    Map<String, List<JobPart>> parts = new LinkedHashMap<>();
    jobs.forEach(job -> parts.put(job.code(), new ArrayList<>()));
    for (Choice choice : choices) {
      for (JobPart part : lines.parts(choice)) {
        parts.computeIfAbsent(part.job().code(), k -> new ArrayList<>()).add(part);
      }
    }
    List<Line> all = new ArrayList<>();
    for (List<JobPart> ofJob : parts.values()) {
      ofJob.sort(Comparator.comparing(part -> part.lot().key(), Lots.TRADE_ORDER));
      all.addAll(LineRows.of(ofJob));
    }
    return all;
  }

  private List<JobPart> parts(Choice choice) {
    Lot lot = choice.lot();
    List<Purchase> purchases = choice.option().purchases();
    List<List<BigDecimal>> shares =
        purchases.stream().map(purchase -> JobPart.shares(lot, purchase.totalPacks())).toList();
    Map<String, List<Portion>> byJob = lot.byJob();
    double needed = lot.needed();
    List<JobPart> parts = new ArrayList<>();
    byJob.forEach(
        (job, portions) -> {
          List<JobPart.Bought> bought = new ArrayList<>();
          for (int i = 0; i < purchases.size(); i++) {
            BigDecimal packs = shares.get(i).get(parts.size());
            bought.add(bought(job, purchases.get(i), packs));
          }
          parts.add(JobPart.of(lot, needed, portions, byJob.size(), bought));
        });
    return parts;
  }

  private JobPart.Bought bought(String job, Purchase purchase, BigDecimal packs) {
    Brought sum = brought.getOrDefault(purchase, Map.of()).getOrDefault(job, new Brought());
    List<String> orders = alike.computeIfAbsent(List.copyOf(sum.orders), numbers -> numbers);
    return new JobPart.Bought(purchase, packs, sum.amount, orders);
  }
}
