package org.pourbook.takeoff.rule;

import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-5: bent bars that tie a lowered floor to the one above it. */
public final class StepTieBars {

  private StepTieBars() {}

  /** Returns how many ties stand along a side: {@code ⌈side/spacing⌉ + 1}, exactly. */
  @Source(
      rule = "BAR-5",
      says = "Step ties: the side divided by the spacing, rounded up, plus one.",
      standing = Standing.COMMON_PRACTICE)
  public static int along(Length side, Length spacing) {
    return side.ceilDiv(spacing) + 1;
  }

  /** Returns the riser of a tie, measured outside: the difference of bar levels and one bar. */
  @Source(
      rule = "BAR-5",
      says = "Riser of a step tie, outside: the difference of bar levels plus one bar diameter.",
      standing = Standing.COMMON_PRACTICE)
  public static Length riser(Length levels, BarSize bar) {
    return levels.plus(bar.diameter());
  }

  /** Returns whether levels differ enough to bend a tie: by 8 db or more. */
  @Source(
      rule = "BAR-5",
      says = "Where bar levels differ by less than 8 diameters the upper bars run on below.",
      value = "8 db",
      standing = Standing.COMMON_PRACTICE)
  public static boolean isBent(Length levels, BarSize bar) {
    return !levels.isLessThan(BarBends.leastRiser(bar));
  }
}
