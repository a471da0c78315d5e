package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.pourbook.takeoff.Source;

/** Whole packs and steps (BUY-1, CON-7). */
final class Packs {

  /** Decimals to which a quotient is rounded before it is rounded up. */
  private static final int DECIMALS = 9;

  private Packs() {}

  /** Returns ⌈needed ÷ held, rounded to nine decimals⌉; 0 where nothing is needed. */
  @Source(
      rule = "BUY-1",
      says =
          "Needed is net with its allowance; packs are needed ÷ what a pack holds, rounded to nine"
              + " decimals and then up",
      value = "screws, supports, ties 10 %; stakes, braces 5 %; others 0",
      standing = COMMON_PRACTICE)
  static BigDecimal up(double needed, double held) {
    return ratio(Math.max(0, needed), held).setScale(0, RoundingMode.CEILING);
  }

  /** Returns ⌊amount ÷ held, rounded to nine decimals⌋. */
  static BigDecimal down(double amount, double held) {
    return ratio(amount, held).setScale(0, RoundingMode.FLOOR);
  }

  /** Returns amount ÷ held, rounded to nine decimals, for what is sold by measure. */
  static BigDecimal ratio(double amount, double held) {
    return exact(amount / held);
  }

  /** Returns a number as a decimal of at most nine places, without idle zeros. */
  static BigDecimal exact(double number) {
    BigDecimal rounded =
        BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
