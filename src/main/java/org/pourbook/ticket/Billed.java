package org.pourbook.ticket;

import org.pourbook.measure.Money;

/**
 * What was billed in all, each row once.
 *
 * @param ordered goods that were ordered
 * @param notOrdered goods that nobody ordered
 * @param fees rows with a charge
 */
public record Billed(Money ordered, Money notOrdered, Money fees) {

  public Money total() {
    return ordered.plus(notOrdered).plus(fees);
  }
}
