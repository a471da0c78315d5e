package org.pourbook.buy;

import java.util.List;
import java.util.function.BiFunction;

/**
 * How one job would buy its part of a lot alone, for what sharing saves (BUY-4).
 *
 * @param onHand stock on hand, of which each job takes what those before it left
 * @param ways the ways to meet a lot with some stock on hand
 */
record Alone(List<OnHand> onHand, BiFunction<Lot, List<OnHand>, List<Option>> ways) {

  /** Nobody could: what sharing saves is not told. */
  static final Alone NOBODY = new Alone(List.of(), (lot, there) -> List.of());

  Alone {
    onHand = List.copyOf(onHand);
  }
}
