package org.pourbook.ticket;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * A material of a job as it was ordered.
 *
 * @param deliverTo the shared name; the job's code for its own site
 * @param unit the material's own unit
 * @param estimated the net, in {@code unit}
 * @param items what was ordered, one a (supplier, item)
 */
public record Ordered(
    String job,
    String deliverTo,
    MaterialKey key,
    String unit,
    double estimated,
    List<Item> items) {
  public Ordered {
    items = List.copyOf(items);
  }

  /**
   * An item ordered.
   *
   * @param packHolds own units in one order unit
   */
  public record Item(
      String supplier,
      String item,
      String orderUnit,
      double packHolds,
      BigDecimal packs,
      Optional<BigDecimal> unitPrice,
      Optional<Money> amount) {}

  /** Returns what was ordered, in own units. */
  public double ordered() {
    return items.stream().mapToDouble(item -> item.packs().doubleValue() * item.packHolds()).sum();
  }

  public Money orderedAmount() {
    return Money.sum(items.stream().map(Item::amount).flatMap(Optional::stream).toList());
  }
}
