package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.pourbook.measure.Money;

/** What rows of quotations come to when they are ordered together: deliveries, fees and tax. */
final class QuotedWay {

  /** A row of a supplier. */
  record Pick(Supplier supplier, Quotation.Row row) {}

  private static final class Stop {
    private final Supplier supplier;
    private Money goods = Money.ZERO;
    private Money truckFees = Money.ZERO;
    private BigDecimal tax = BigDecimal.ZERO;
    private boolean brought;
    private Money own = Money.ZERO;

    private Stop(Supplier supplier) {
      this.supplier = supplier;
    }

    private void add(Quotation.Row row, Money another) {
      own = own.compareTo(another) >= 0 ? own : another;
      goods = goods.plus(row.amount());
      truckFees = truckFees.plus(row.truckFees());
      tax = tax.add(tax(row));
      brought |= row.brought();
    }

    private Money fees() {
      return OrderFees.delivery(supplier, goods, brought)
          .plus(truckFees)
          .plus(OrderFees.underMinimum(supplier, goods));
    }
  }

  private QuotedWay() {}

  /** Returns the tax on a row, not yet rounded. */
  static BigDecimal tax(Quotation.Row row) {
    return row.taxable()
        ? row.amount().amount().multiply(row.taxPercent()).movePointLeft(2)
        : BigDecimal.ZERO;
  }

  /**
   * Returns the way that picks make; tax is rounded once a delivery.
   *
   * @param anotherStop what a stop costs the builder of a job besides
   */
  static Compared.Way of(
      String name,
      List<Pick> picks,
      int missing,
      String says,
      Function<String, Money> anotherStop) {
    Map<String, Map<Delivery, Stop>> stops = new TreeMap<>();
    for (Pick pick : picks) {
      if (!isNothing(pick.row())) {
        stops
            .computeIfAbsent(pick.supplier().name(), k -> new TreeMap<>())
            .computeIfAbsent(pick.row().delivery(), k -> new Stop(pick.supplier()))
            .add(pick.row(), anotherStop.apply(pick.row().job()));
      }
    }
    List<Stop> all = new ArrayList<>();
    stops.values().forEach(ofSupplier -> all.addAll(ofSupplier.values()));
    return new Compared.Way(
        name,
        Money.sum(all.stream().map(stop -> stop.goods).toList()),
        Money.sum(all.stream().map(Stop::fees).toList()),
        Money.sum(all.stream().map(stop -> Money.rounded(stop.tax)).toList()),
        all.size(),
        Money.sum(all.stream().map(stop -> stop.own).toList()),
        missing,
        says);
  }

  /** Returns whether a row brings nothing, so that no delivery is made for it. */
  static boolean isNothing(Quotation.Row row) {
    return row.missing() || (row.packs().signum() == 0 && row.amount().isZero());
  }
}
