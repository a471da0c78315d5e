package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-1: how many bars a mat has, and how long they are. */
public final class BarMats {

  private BarMats() {}

  /**
   * Returns how many bars lie side by side across a width: {@code ⌈(width − 2·cover)/spacing⌉ + 1},
   * exactly; one where the covers leave nothing.
   */
  @Source(
      rule = "BAR-1",
      says =
          "Bars of a mat: the width less both edge covers, divided by the spacing, rounded up, plus"
              + " one; one bar where the covers leave nothing.",
      value = "Edge cover 3 in",
      standing = Standing.COMMON_PRACTICE)
  public static int barsAcross(Length width, Length cover, Length spacing) {
    Length between = between(width, cover);
    return between.isPositive() ? between.ceilDiv(spacing) + 1 : 1;
  }

  /** Returns the length between the covers at both ends; zero or less where nothing is left. */
  @Source(
      rule = "BAR-1",
      says = "A bar runs to the edge cover at both ends.",
      value = "3 in, cast against ground",
      key = "aci-318-19",
      at = "Table 20.5.1.3.1",
      standing = Standing.PUBLISHED)
  public static Length between(Length run, Length cover) {
    return run.minus(cover.times(2));
  }
}
