package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Source;

/** Concrete in whole order steps and truckloads (CON-7, CON-8). */
final class LoadPlans {

  private LoadPlans() {}

  /**
   * Returns the cheaper of full loads with a remainder and balanced loads; on a tie, full loads.
   *
   * @param allowedM3 volume to place, with allowance and pump loss [m3]
   * @param stepM3 order step [m3]
   * @param largestM3 the most one truck brings, by its size and by the time to discharge it [m3]
   */
  @Source(
      rule = "CON-8",
      says =
          "Full loads and a remainder, or balanced loads in whole order steps, largest first:"
              + " whichever costs less with the supplier's fees",
      value = "10 yd3 a load, ordered by 0.25 yd3, unless the supplier says otherwise",
      standing = COMMON_PRACTICE)
  static LoadPlan cheaper(double allowedM3, double stepM3, double largestM3, Supplier supplier) {
    int steps = Packs.up(allowedM3, stepM3).intValueExact();
    int most =
        Math.max(1, Packs.down(Math.min(largestM3, allowedM3 + stepM3), stepM3).intValueExact());
    LoadPlan full = plan(full(steps, most), stepM3, supplier);
    LoadPlan balanced = plan(balanced(steps, most), stepM3, supplier);
    return balanced.fees().compareTo(full.fees()) < 0 ? balanced : full;
  }

  /** Returns full loads and a remainder, in steps. */
  static List<Integer> full(int steps, int most) {
    List<Integer> loads = new ArrayList<>();
    for (int left = steps; left > 0; left -= most) {
      loads.add(Math.min(left, most));
    }
    return loads;
  }

  /** Returns the same number of loads as alike as whole steps allow, largest first. */
  static List<Integer> balanced(int steps, int most) {
    List<Integer> loads = new ArrayList<>();
    int count = (steps + most - 1) / most;
    for (int i = 0; i < count; i++) {
      loads.add(steps / count + (i < steps % count ? 1 : 0));
    }
    return loads;
  }

  private static LoadPlan plan(List<Integer> loads, double stepM3, Supplier supplier) {
    int steps = loads.stream().mapToInt(Integer::intValue).sum();
    List<Double> volumes = loads.stream().map(load -> load * stepM3).toList();
    Money loadFee =
        supplier
            .feePerLoad()
            .map(fee -> Money.ofPrice(BigDecimal.valueOf(loads.size()), fee.amount()))
            .orElse(Money.ZERO);
    double order = steps * stepM3;
    return new LoadPlan(order, volumes, shortFee(order, volumes, supplier), loadFee);
  }

  /** Returns the short-load fees, each rounded to the cent: of the order, or of each load. */
  private static Money shortFee(double orderM3, List<Double> loadsM3, Supplier supplier) {
    List<Double> charged = supplier.shortLoadByOrder() ? List.of(orderM3) : loadsM3;
    return Money.sum(charged.stream().map(supplier::shortLoadFee).toList());
  }
}
