package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import org.pourbook.measure.Money;
import org.pourbook.takeoff.Source;

/** Fees of an order as a whole (BUY-7). They are not taxed. */
final class OrderFees {

  private OrderFees() {}

  /**
   * Returns the delivery fee: none where the supplier's fee is blank, where the goods reach the
   * limit from which delivery is free, or where nothing is brought (services only).
   */
  @Source(
      rule = "BUY-7",
      says =
          "A delivery fee is paid per delivery: supplier, place and needed-by day; none from the"
              + " supplier's limit on, none for services alone",
      standing = COMMON_PRACTICE)
  static Money delivery(Supplier supplier, Money goods, boolean delivered) {
    boolean free = supplier.freeFrom().filter(limit -> goods.compareTo(limit) >= 0).isPresent();
    return delivered && !free ? supplier.deliveryFee().orElse(Money.ZERO) : Money.ZERO;
  }

  /** Returns what goods lack to the supplier's minimum order, which is charged in full. */
  @Source(
      rule = "BUY-3",
      says = "An order under the supplier's minimum costs the minimum",
      standing = COMMON_PRACTICE)
  static Money underMinimum(Supplier supplier, Money goods) {
    Money minimum = supplier.minimumOrder().orElse(Money.ZERO);
    return minimum.compareTo(goods) > 0 ? minimum.minus(goods) : Money.ZERO;
  }
}
