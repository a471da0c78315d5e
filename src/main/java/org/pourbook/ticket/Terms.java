package org.pourbook.ticket;

/**
 * What differences are let pass (TICK-2, TICK-4).
 *
 * @param quantityPercent of the ordered quantity
 * @param pricePercent of the ordered unit price
 * @param dischargeMinutes after batching
 */
public record Terms(double quantityPercent, double pricePercent, double dischargeMinutes) {

  /** The usual: 5 %, 1 %, 90 minutes. */
  public static final Terms USUAL = new Terms(5, 1, 90);
}
