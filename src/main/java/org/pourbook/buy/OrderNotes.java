package org.pourbook.buy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pourbook.job.Change;
import org.pourbook.job.Job;
import org.pourbook.job.Pour;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material;

/** What is said below an order. */
final class OrderNotes {

  private OrderNotes() {}

  /**
   * Returns the notes: concrete as a plant takes it, what sharing saves, open changes, and what has
   * no price.
   *
   * @param saving what the jobs would pay more if each ordered alone
   */
  static List<String> of(OrderDraft draft, Optional<Money> saving) {
    List<String> notes = new ArrayList<>();
    for (PourOrder pour : draft.pours()) {
      notes.add(concrete(pour, draft));
      if (pour.portion().before() > 0) {
        notes.add(besides(pour));
      }
    }
    saving
        .filter(money -> money.compareTo(Money.ZERO) > 0)
        .ifPresent(money -> notes.add(shared(draft, money)));
    for (Job job : draft.jobs()) {
      for (Change change : job.openChanges()) {
        notes.add(
            "Open change "
                + change.code()
                + " of "
                + job.code()
                + ", not in this order: "
                + change.what());
      }
    }
    if (draft.supplier().isEmpty()) {
      notes.add("Nobody in the price book sells these: ask for prices. The totals lack them.");
    }
    return notes;
  }

  private static String shared(OrderDraft draft, Money saving) {
    String jobs = draft.jobs().stream().map(Job::code).collect(Collectors.joining(", "));
    return "Shared by " + jobs + ": " + saving + " less than ordered apart, before tax.";
  }

  private static String besides(PourOrder order) {
    Job job = order.portion().job();
    double before = order.portion().before();
    return volume(before, job)
        + " are ordered before. Where the plant raises that order to "
        + volume(before + order.plan().orderM3(), job)
        + ", the load fees here fall away.";
  }

  private static String concrete(PourOrder order, OrderDraft draft) {
    Job job = order.portion().job();
    Pour pour = job.pour(order.portion().pour());
    List<String> parts = new ArrayList<>();
    parts.add(
        "Pour "
            + pour.number()
            + ", "
            + order.portion().concrete().map(need -> need.mix()).orElse(""));
    parts.add(volume(order.plan().orderM3(), job));
    if (!pour.slump().isEmpty()) {
      parts.add("slump " + pour.slump());
    }
    pour.airPercent().ifPresent(air -> parts.add("air " + Packs.exact(air).toPlainString() + " %"));
    parts.add("placed by " + pour.placing().label());
    parts.add(
        "loads "
            + order.plan().loadsM3().stream()
                .map(load -> number(load, job))
                .collect(Collectors.joining(" + ")));
    if (order.portion().before() <= 0) {
      parts.add("first truck " + pour.start());
    }
    if (order.plan().loadsM3().size() > 1 && draft.supplier().isPresent()) {
      PlacingTimes times = PlacingTimes.of(order.portion(), draft.supplier().get());
      long minutes = Math.round(times.minutesFor(order.plan().loadsM3().get(0)));
      parts.add("then one every " + minutes + " min");
    }
    return String.join(", ", parts);
  }

  /** Returns a volume of concrete in the job's unit, with the unit. */
  static String volume(double m3, Job job) {
    return number(m3, job) + " " + Material.CONCRETE.unit(job.units()).label();
  }

  private static String number(double m3, Job job) {
    double amount = Material.CONCRETE.unit(job.units()).fromBase(m3);
    return Packs.exact(Math.round(amount * 100) / 100.0).toPlainString();
  }
}
