package org.pourbook.buy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * What a supplier offers of a line asked for, by one item for one delivery.
 *
 * @param asked in {@code unit}; on the first row of a (job, material, size) only
 * @param price the row of the list at its tier; empty: nothing is offered
 * @param packs order units; a job's share of a shared delivery may be a fraction
 * @param amount packs × price, or the job's share of it to the cent
 * @param truckFees short-load fees and fees per load of this row's concrete
 * @param taxPercent that its goods bear, if they are taxable
 * @param brought goods, not work done: a delivery fee may be due
 * @param delivery number of the delivery that brings it, from 1; 0 where nothing is offered
 * @param says what is offered in place of what was asked, or why nothing is
 */
public record QuoteLine(
    String job,
    MaterialKey key,
    OptionalDouble asked,
    String unit,
    Optional<Price> price,
    BigDecimal packs,
    Money amount,
    Money truckFees,
    BigDecimal taxPercent,
    boolean brought,
    String deliverTo,
    Optional<LocalDate> neededBy,
    int delivery,
    Standing standing,
    String says) {

  /** How a line is answered. */
  public enum Standing {
    AS_ASKED("as asked"),
    INSTEAD("instead"),
    NOT_STOCKED("not stocked"),
    RAN_OUT("price ran out");

    private final String label;

    Standing(String label) {
      this.label = label;
    }

    /** Returns the words of the Quotation sheet. */
    public String label() {
      return label;
    }
  }

  /** Returns whether what was asked is not offered. */
  public boolean isMissing() {
    return standing == Standing.NOT_STOCKED || standing == Standing.RAN_OUT;
  }

  /** Returns this row as the first of its line. */
  QuoteLine withAsked(double amountAsked) {
    return new QuoteLine(
        job,
        key,
        OptionalDouble.of(amountAsked),
        unit,
        price,
        packs,
        amount,
        truckFees,
        taxPercent,
        brought,
        deliverTo,
        neededBy,
        delivery,
        standing,
        says);
  }
}
