package org.pourbook.buy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * A quotation as it came back, in whatever program it was saved.
 *
 * @param supplier with its delivery fee, free-from limit and minimum order
 * @param request SHA-256 of what was asked, in hexadecimal
 * @param currency code
 * @param anotherStop what each stop costs the builder of a job besides, by job; nothing paid
 *     (BUY-3)
 * @param rows of its Quotation sheet
 */
public record Quotation(
    Supplier supplier,
    Optional<LocalDate> validUntil,
    String request,
    String currency,
    Map<String, Money> anotherStop,
    List<Row> rows) {
  public Quotation {
    anotherStop = Map.copyOf(anotherStop);
    rows = List.copyOf(rows);
  }

  /**
   * What is offered of a line by one item for one delivery.
   *
   * @param asked on the first row of a line only
   * @param item what is offered, as Best split names it
   * @param packs order units
   * @param amount as stored, whatever packs and price say
   * @param taxPercent rate of its goods
   * @param brought goods, not work done
   * @param missing what was asked is not offered
   */
  public record Row(
      String job,
      MaterialKey key,
      OptionalDouble asked,
      String unit,
      String item,
      BigDecimal packs,
      String orderUnit,
      Money amount,
      boolean taxable,
      BigDecimal taxPercent,
      Money truckFees,
      String deliverTo,
      Optional<LocalDate> neededBy,
      boolean brought,
      boolean missing) {

    /** What tells lines apart. */
    public LineKey line() {
      return new LineKey(job, key.normal());
    }

    /** Returns where and when it is brought; a job's own where no day is known. */
    Delivery delivery() {
      boolean own = deliverTo.equals(job) || neededBy.isEmpty();
      return new Delivery(deliverTo, own ? Optional.of(job) : Optional.empty(), neededBy);
    }
  }

  /** A job's material in a size, in normal form. */
  public record LineKey(String job, MaterialKey key) {}

  /** Returns the supplier's name. */
  public String name() {
    return supplier.name();
  }
}
