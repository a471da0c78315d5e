package org.pourbook.ticket;

import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * A material of a job as estimated, ordered, delivered and billed, in its own unit: a row of
 * Matched.
 *
 * @param standing {@code as ordered}, or the names of its findings
 */
public record Matched(
    String job,
    MaterialKey key,
    String unit,
    double estimated,
    double ordered,
    double delivered,
    double billed,
    Money orderedAmount,
    Money billedAmount,
    String standing) {

  /** Returns billed less ordered. */
  public Money difference() {
    return billedAmount.minus(orderedAmount);
  }
}
