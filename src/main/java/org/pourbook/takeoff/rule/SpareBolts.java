package org.pourbook.takeoff.rule;

import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** Bolts, nuts and washers to spare (BOLT-5). */
public final class SpareBolts {

  private static final int LEAST = 2;

  private SpareBolts() {}

  /** Returns max(2, ⌈count × percent⌉) for one size; none where none are wanted (0 %). */
  @Source(
      rule = "BOLT-5",
      says = "A nut and a washer on each bolt",
      key = "irc-r403",
      at = "R403.1.6",
      standing = Standing.PUBLISHED)
  @Source(
      rule = "BOLT-5",
      says = "Bolts, nuts and washers to spare, of each size",
      value = "5 %, at least 2 a size",
      standing = Standing.COMMON_PRACTICE)
  public static int count(int bolts, double percent) {
    if (bolts == 0 || percent == 0) {
      return 0;
    }
    return Math.max(LEAST, (int) Math.ceil(Math.round(bolts * percent / 100 * 1e9) / 1e9));
  }
}
