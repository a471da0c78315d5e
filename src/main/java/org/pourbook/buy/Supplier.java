package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Money;
import org.pourbook.problem.Place;

/**
 * A row of the Suppliers sheet. Volumes are in m3.
 *
 * @param deliveryFee empty where the cell is blank: then no delivery is charged
 * @param freeFrom order value from which delivery is free
 * @param shortLoadPerM3 the short-load fee is per m3 short (per yd3 in the sheet), not flat
 * @param shortLoadByOrder the short-load fee looks at the order, not at each load
 */
public record Supplier(
    String name,
    String contact,
    String phone,
    String email,
    Optional<Money> deliveryFee,
    Optional<Money> freeFrom,
    BigDecimal taxPercent,
    OptionalDouble loadSizeM3,
    OptionalDouble orderStepM3,
    OptionalDouble shortLoadUnderM3,
    BigDecimal shortLoadFee,
    boolean shortLoadPerM3,
    boolean shortLoadByOrder,
    Optional<Money> feePerLoad,
    OptionalDouble minutesAway,
    OptionalDouble freeMinutesPerM3,
    Optional<BigDecimal> waitingPerMinute,
    Optional<Money> minimumOrder,
    Place place) {

  /** Returns the fee for a load, or for an order where the fee looks at that [m3]. */
  public Money shortLoadFee(double volumeM3) {
    BigDecimal missing = Packs.exact(shortLoadUnderM3.orElse(0) - volumeM3);
    return missing.signum() > 0
        ? Money.ofPrice(shortLoadPerM3 ? missing : BigDecimal.ONE, shortLoadFee)
        : Money.ZERO;
  }

  /** Returns a supplier of whom a quotation tells the terms of delivery. */
  public static Supplier quoting(
      String name,
      Optional<Money> deliveryFee,
      Optional<Money> freeFrom,
      Optional<Money> minimumOrder,
      Place place) {
    Supplier bare = named(name, place);
    return new Supplier(
        name,
        "",
        "",
        "",
        deliveryFee,
        freeFrom,
        BigDecimal.ZERO,
        bare.loadSizeM3,
        bare.orderStepM3,
        bare.shortLoadUnderM3,
        BigDecimal.ZERO,
        false,
        false,
        bare.feePerLoad,
        bare.minutesAway,
        bare.freeMinutesPerM3,
        bare.waitingPerMinute,
        minimumOrder,
        place);
  }

  /** Returns a supplier of whom only the name is known: no fees, no tax. */
  public static Supplier named(String name, Place place) {
    return new Supplier(
        name,
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        BigDecimal.ZERO,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        BigDecimal.ZERO,
        false,
        false,
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        place);
  }
}
