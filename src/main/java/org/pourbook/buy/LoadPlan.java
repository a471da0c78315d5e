package org.pourbook.buy;

import java.util.List;
import org.pourbook.measure.Money;

/**
 * An order of concrete in truckloads.
 *
 * @param orderM3 allowed volume rounded up to the order step
 * @param loadsM3 in the order they come
 * @param shortFee of all loads, or of the order
 * @param loadFee of all loads
 */
record LoadPlan(double orderM3, List<Double> loadsM3, Money shortFee, Money loadFee) {
  LoadPlan {
    loadsM3 = List.copyOf(loadsM3);
  }

  Money fees() {
    return shortFee.plus(loadFee);
  }
}
