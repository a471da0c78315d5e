package org.pourbook.buy;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/**
 * Where something is brought, and when (BUY-4, BUY-7).
 *
 * @param deliverTo the shared name, or the job's code
 * @param job whose it is alone; empty where jobs share it. A job without a date shares with nobody,
 *     since nobody knows whether its goods come on one day with others'.
 * @param day needed by
 */
record Delivery(String deliverTo, Optional<String> job, Optional<LocalDate> day)
    implements Comparable<Delivery> {

  private static final Comparator<Delivery> ORDER =
      Comparator.comparing((Delivery delivery) -> delivery.day.orElse(LocalDate.MAX))
          .thenComparing(Delivery::deliverTo)
          .thenComparing(delivery -> delivery.job.orElse(""));

  boolean isShared() {
    return job.isEmpty();
  }

  @Override
  public int compareTo(Delivery other) {
    return ORDER.compare(this, other);
  }
}
