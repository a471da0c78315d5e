package org.pourbook.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.TakeOff;
import org.pourbook.takeoff.TakeOffs;
import org.pourbook.ticket.PourPlanned;
import org.pourbook.ticket.Reconciler;
import org.pourbook.ticket.Terms;
import org.pourbook.ticket.Ticket;

/** The bookkeeper's desk. */
public final class Reconcile {

  /** The settings that say what is let pass. */
  public static final List<Setting> SETTINGS =
      List.of(Setting.QUANTITY_DIFFERENCE, Setting.PRICE_DIFFERENCE, Setting.DISCHARGE_LIMIT);

  /** Concrete that stays in the pump is no part of a pour's net. */
  private static final String PUMP_LOSS = "CON-7";

  private Reconcile() {}

  /**
   * Returns the tickets matched with an order.
   *
   * @param problems of reading both
   */
  public static Reconciled reconcile(
      OrderBook order,
      List<Ticket> tickets,
      List<Batch.InputFile> ticketFiles,
      List<Problem> problems,
      String version) {
    Batch batch = order.batch();
    Map<String, Terms> terms = terms(batch.jobs());
    List<Batch.InputFile> files = new ArrayList<>(batch.files());
    files.addAll(ticketFiles);
    return new Reconciled(
        order,
        Reconciler.reconcile(
            order.ordered(),
            batch.prices().suppliers(),
            pours(batch),
            tickets,
            job -> terms.getOrDefault(MaterialKey.normal(job), Terms.USUAL),
            problems),
        files,
        version);
  }

  /** Returns each job's own by its code; by a shared name those of the first job that shares it. */
  private static Map<String, Terms> terms(List<Job> jobs) {
    Map<String, Terms> terms = new LinkedHashMap<>();
    jobs.forEach(job -> terms.put(MaterialKey.normal(job.code()), of(job.practice())));
    jobs.forEach(
        job ->
            job.deliverTo()
                .ifPresent(to -> terms.putIfAbsent(MaterialKey.normal(to), of(job.practice()))));
    return terms;
  }

  private static Terms of(Practice practice) {
    return new Terms(
        practice.number(Setting.QUANTITY_DIFFERENCE),
        practice.number(Setting.PRICE_DIFFERENCE),
        practice.number(Setting.DISCHARGE_LIMIT));
  }

  private static List<PourPlanned> pours(Batch batch) {
    List<PourPlanned> pours = new ArrayList<>();
    for (Job job : batch.jobs()) {
      TakeOff takeOff = TakeOffs.of(job, batch.prices());
      netM3(takeOff).forEach((pour, m3) -> pours.add(planned(job, pour, m3)));
    }
    return pours;
  }

  private static Map<Integer, Double> netM3(TakeOff takeOff) {
    return takeOff.quantities().stream()
        .filter(quantity -> isConcrete(quantity) && !quantity.rule().equals(PUMP_LOSS))
        .collect(
            Collectors.groupingBy(
                Quantity::pour,
                TreeMap::new,
                Collectors.summingDouble(quantity -> quantity.unit().toBase(quantity.amount()))));
  }

  private static boolean isConcrete(Quantity quantity) {
    return quantity
        .material()
        .flatMap(key -> Material.named(key.material()))
        .equals(Optional.of(Material.CONCRETE));
  }

  private static PourPlanned planned(Job job, int pour, double netM3) {
    List<String> kinds =
        job.sections().stream()
            .filter(section -> section.pour() == pour)
            .map(section -> section.kind().label())
            .distinct()
            .toList();
    return new PourPlanned(
        job.code(),
        pour,
        job.pour(pour).date().map(Object::toString).orElse(""),
        kinds.size() == 1 ? kinds.get(0) : "mixed",
        netM3);
  }
}
