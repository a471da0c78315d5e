package org.pourbook.takeoff.rule;

import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-9: guards over bar ends. */
public final class BarCaps {

  private BarCaps() {}

  /** Returns the caps for bar ends left standing: one each. */
  @Source(
      rule = "BAR-9",
      says =
          "Protruding bars onto or into which people could fall are guarded: one cap for each bar"
              + " end left standing.",
      value = "1 a bar end",
      key = "29-cfr-1926",
      at = "1926.701(b)",
      standing = Standing.PUBLISHED)
  public static int over(int barEnds) {
    return barEnds;
  }
}
