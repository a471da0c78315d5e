package org.pourbook.buy;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;

/**
 * Goods of a supplement on one day: the little that is wanted besides would else pay a delivery fee
 * for every day on which some of it is needed.
 */
final class OneDay {

  /** Where goods are brought: the shared name, or one job's site. */
  private record Stop(String deliverTo, Optional<String> job) {
    static Stop of(Delivery delivery) {
      return new Stop(delivery.deliverTo(), delivery.job());
    }
  }

  private final Map<Stop, TreeSet<LocalDate>> days = new HashMap<>();
  private final Map<Stop, Long> together = new HashMap<>();

  /** Takes note of all that is left to buy. */
  OneDay(List<Lot> open) {
    open.stream().filter(Lot::isGoods).forEach(this::note);
  }

  private void note(Lot lot) {
    for (Portion portion : lot.portions()) {
      Stop stop = Stop.of(portion.delivery());
      together.merge(stop, deliverTogether(portion.job()), Math::min);
      portion
          .delivery()
          .day()
          .ifPresent(day -> days.computeIfAbsent(stop, k -> new TreeSet<>()).add(day));
    }
  }

  private static long deliverTogether(Job job) {
    return (long) job.practice().number(Setting.DELIVER_TOGETHER);
  }

  /** Returns the lot with goods no further apart than <i>Deliver together</i> on the first day. */
  Lot of(Lot lot) {
    return lot.isGoods() ? lot.withPortions(lot.portions().stream().map(this::of).toList()) : lot;
  }

  private Portion of(Portion portion) {
    Delivery delivery = portion.delivery();
    Optional<LocalDate> day = delivery.day().map(own -> first(Stop.of(delivery), own));
    return portion.on(new Delivery(delivery.deliverTo(), delivery.job(), day));
  }

  /** Returns the first of the days with which one comes together. */
  private LocalDate first(Stop stop, LocalDate own) {
    TreeSet<LocalDate> all = days.getOrDefault(stop, new TreeSet<>(List.of(own)));
    LocalDate first = all.first();
    for (LocalDate day : all.headSet(own, true)) {
      first = day.isAfter(first.plusDays(together.getOrDefault(stop, 0L))) ? day : first;
    }
    return first;
  }
}
