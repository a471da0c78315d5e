package org.pourbook.buy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;

/** Cautions that choices draw. */
final class BuyCautions {

  private BuyCautions() {}

  /** Returns them for every job of each lot. */
  static List<Bought.BuyCaution> of(List<Choice> choices) {
    List<Bought.BuyCaution> cautions = new ArrayList<>();
    for (Choice choice : choices) {
      List<Told> told = new ArrayList<>(choice.option().cautions());
      choice.option().purchases().forEach(bought -> ranOut(choice, bought).ifPresent(told::add));
      for (Job job : choice.lot().jobs()) {
        told.forEach(
            one -> cautions.add(new Bought.BuyCaution(job.code(), "", one.says(), one.rule())));
      }
    }
    return cautions;
  }

  /** Tells a price that no longer holds when the goods are needed. */
  private static Optional<Told> ranOut(Choice choice, Purchase purchase) {
    Optional<LocalDate> until = purchase.price().flatMap(Price::validUntil);
    Optional<LocalDate> last =
        purchase.packs().keySet().stream()
            .flatMap(delivery -> delivery.day().stream())
            .max(LocalDate::compareTo);
    if (until.isEmpty() || last.isEmpty() || !last.get().isAfter(until.get())) {
      return Optional.empty();
    }
    return Optional.of(
        new Told(
            choice.lot().key()
                + ": the price is valid until "
                + until.get()
                + ", and it is needed by "
                + last.get(),
            "BUY-2"));
  }
}
