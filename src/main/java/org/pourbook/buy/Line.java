package org.pourbook.buy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Money;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.MaterialKey;

/**
 * A material to buy for a job from one item: a row of the Materials sheet.
 *
 * @param net in {@code unit}; on the first row of a (job, material, size) only
 * @param allowancePercent 5 for 5 %; on the first row only
 * @param needed this row's own, in {@code unit}
 * @param unit the material's own unit in the job's system, or an extra's unit as written
 * @param price the row of the price book at its tier; empty: no price
 * @param item the supplier's code; of unpriced boards and bars the stock length
 * @param packHolds own units in one order unit
 * @param packs order units; of concrete the order quantity; a job's share of a shared order may be
 *     a fraction
 * @param amount of a job's own purchase packs × price, rounded; of a shared order the job's share
 *     to the cent, which may differ from that by a cent
 * @param orders numbers of the orders that hold it; several where pours are dated apart
 */
public record Line(
    String job,
    UnitSystem units,
    MaterialKey key,
    OptionalDouble net,
    OptionalDouble allowancePercent,
    double needed,
    String unit,
    Optional<Price> price,
    String item,
    double packHolds,
    BigDecimal packs,
    String orderUnit,
    Optional<Money> amount,
    boolean service,
    Optional<LocalDate> neededBy,
    List<String> orders) {
  public Line {
    orders = List.copyOf(orders);
  }

  /** Returns this row as the first of its material, which holds net and allowance. */
  Line withNet(double netOfAll, double allowanceOfAll) {
    return new Line(
        job,
        units,
        key,
        OptionalDouble.of(netOfAll),
        OptionalDouble.of(allowanceOfAll),
        needed,
        unit,
        price,
        item,
        packHolds,
        packs,
        orderUnit,
        amount,
        service,
        neededBy,
        orders);
  }
}
