package org.pourbook.buy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.pourbook.buy.QuoteLine.Standing;
import org.pourbook.cut.CutPlanner;
import org.pourbook.job.Job;
import org.pourbook.measure.Length;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;
import org.pourbook.takeoff.TakeOff;
import org.pourbook.takeoff.TakeOffs;
import org.pourbook.takeoff.UsualSizes;

/**
 * One supplier's answer to a request.
 *
 * <p>What is asked is worked out with the trade's usual sizes and lengths, so that it is the same
 * whoever is asked. What is offered is worked out again with this supplier's stock lengths and
 * sheets: laps and butts, and so what must be brought, follow from these.
 */
public final class Quoting {

  private final Map<Asked.Key, Asked> asked;
  private final Map<Asked.Key, List<QuoteLine>> rows = new LinkedHashMap<>();
  private final Map<Choice, Answer> answers = new IdentityHashMap<>();

  private Quoting(Map<Asked.Key, Asked> asked) {
    this.asked = asked;
    asked.keySet().forEach(key -> rows.put(key, new ArrayList<>()));
  }

  /**
   * Returns what a supplier offers the jobs.
   *
   * @param list one supplier's
   * @param date on which the prices must hold
   */
  public static Quoted quote(List<Job> jobs, PriceBook list, LocalDate date, CutPlanner planner) {
    Function<Job, OnOffer> usual = job -> new UsualSizes(job.units(), PriceBook.EMPTY);
    Map<Asked.Key, Asked> asked =
        Asked.byKey(jobs.stream().map(job -> TakeOffs.of(job, usual.apply(job))).toList(), usual);
    Map<MaterialKey, Length> atMost = new HashMap<>();
    while (true) {
      Counter counter = new Counter(list, date, planner, atMost);
      List<TakeOff> takeOffs =
          jobs.stream().map(job -> TakeOffs.of(job, new UsualSizes(job.units(), counter))).toList();
      List<Answer> answers = Lots.of(takeOffs, counter).stream().map(counter::answer).toList();
      Map<MaterialKey, Length> shorter = new HashMap<>();
      answers.forEach(answer -> shorter.putAll(counter.shorter(answer)));
      if (shorter.isEmpty()) {
        return new Quoting(asked).answered(answers);
      }
      atMost.putAll(shorter); // each time a length fewer, so that it ends
    }
  }

  private Quoted answered(List<Answer> all) {
    List<Choice> choices = new ArrayList<>();
    for (Answer answer : all) {
      answer.choice().ifPresent(choice -> answers.put(choice, answer));
      answer.choice().ifPresent(choices::add);
    }
    List<OrderDraft> drafts = OrderDrafts.of(choices);
    for (int i = 0; i < drafts.size(); i++) {
      for (OrderDraft.Good good : drafts.get(i).goods()) {
        add(good, drafts.get(i), i + 1);
      }
    }
    all.stream().filter(answer -> answer.choice().isEmpty()).forEach(this::addNothing);
    return new Quoted(
        List.copyOf(asked.values()),
        lines(),
        Orders.of(drafts, 0, Alone.NOBODY),
        CutSheets.of(choices),
        all.stream().flatMap(answer -> answer.problem().stream()).toList());
  }

  private void add(OrderDraft.Good good, OrderDraft draft, int number) {
    Answer answer = answers.get(good.choice());
    if (answer == null) {
      throw new IllegalStateException("an order of what was not offered");
    }
    Lot lot = good.lot();
    List<Job> jobs = lot.jobs();
    Map<String, Money> amounts = good.byJob();
    Optional<LocalDate> day = draft.delivery().day();
    Money truckFees =
        Money.sum(
            good.choice().option().pours().stream()
                .filter(pour -> pour.portion().delivery().equals(draft.delivery()))
                .map(pour -> pour.plan().fees())
                .toList());
    List<BigDecimal> shares = JobPart.shares(lot, good.packs());
    for (int i = 0; i < jobs.size(); i++) {
      Job job = jobs.get(i);
      row(
          answer.asked(),
          job,
          new QuoteLine(
              job.code(),
              answer.asked().key(),
              OptionalDouble.empty(),
              unit(lot, job),
              good.purchase().price(),
              shares.get(i),
              amounts.getOrDefault(job.code(), Money.ZERO),
              truckFees,
              SalesTax.percent(job, draft.supplier()),
              lot.delivered(),
              draft.delivery().deliverTo(),
              day,
              number,
              answer.standing(),
              answer.says()));
    }
  }

  private void addNothing(Answer answer) {
    Lot lot = answer.asked();
    for (Job job : lot.jobs()) {
      Delivery delivery = lot.portionsOf(job).get(0).delivery();
      row(lot, job, nothing(job, lot, delivery, answer));
    }
  }

  private static QuoteLine nothing(Job job, Lot lot, Delivery delivery, Answer answer) {
    return new QuoteLine(
        job.code(),
        lot.key(),
        OptionalDouble.empty(),
        unit(lot, job),
        Optional.empty(),
        BigDecimal.ZERO,
        Money.ZERO,
        Money.ZERO,
        BigDecimal.ZERO,
        lot.delivered(),
        delivery.deliverTo(),
        delivery.day(),
        0,
        answer.standing(),
        answer.says());
  }

  private static String unit(Lot lot, Job job) {
    return lot.portionsOf(job).get(0).unit().label();
  }

  private void row(Lot lot, Job job, QuoteLine line) {
    rows.computeIfAbsent(Asked.Key.of(job, lot), key -> new ArrayList<>()).add(line);
  }

  private List<QuoteLine> lines() {
    List<QuoteLine> lines = new ArrayList<>();
    rows.forEach(
        (key, ofLine) -> {
          Optional<Asked> line = Optional.ofNullable(asked.get(key));
          double amount = line.map(Asked::amount).orElse(0.0);
          if (ofLine.isEmpty()) {
            line.ifPresent(none -> lines.add(noneNeeded(none)));
          }
          for (int i = 0; i < ofLine.size(); i++) {
            lines.add(i == 0 ? ofLine.get(i).withAsked(amount) : ofLine.get(i));
          }
        });
    return lines;
  }

  /** Returns the row of a line that this supplier's stock makes needless, such as splices. */
  private static QuoteLine noneNeeded(Asked line) {
    return new QuoteLine(
        line.job(),
        line.key(),
        OptionalDouble.of(line.amount()),
        line.unit(),
        Optional.empty(),
        BigDecimal.ZERO,
        Money.ZERO,
        Money.ZERO,
        BigDecimal.ZERO,
        line.brought(),
        line.deliverTo(),
        line.neededBy(),
        0,
        Standing.AS_ASKED,
        "none needed with this stock");
  }
}
