package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** Strips and time of placing (POUR-1 … POUR-3). */
public final class PlacingTime {

  /** People for whom the placing rates are given. */
  private static final int CREW = 5;

  /** Times that differ by less are one time [min]. */
  private static final double SAME_MINUTES = 5e-10;

  private PlacingTime() {}

  /** Returns how many equal strips a floor of that width across is placed in. */
  @Source(
      rule = "POUR-1",
      says =
          "Strips run along the longer side, equal, no wider than a straight screed board spans"
              + " (Strip width)",
      value = "10 ft, usual 8 to 12",
      standing = Standing.COMMON_PRACTICE)
  public static int strips(Length across, Length largest) {
    return across.ceilDiv(largest);
  }

  /**
   * Returns how much a crew places in an hour [m3/h].
   *
   * @param m3PerHour Placing rate of a crew of five [m3/h]
   */
  @Source(
      rule = "POUR-2",
      says = "A crew places at the Placing rate for five people, in proportion to its number",
      value = "chute 15, pump 20, barrow 3 yd3/h",
      standing = Standing.COMMON_PRACTICE)
  public static double rateM3PerHour(double m3PerHour, int crew) {
    return m3PerHour * crew / CREW;
  }

  /** Returns the minutes that placing a volume takes. */
  @Source(
      rule = "POUR-2",
      says = "A truck arrives when the one before is empty; a strip begins when the last is full",
      standing = Standing.COMMON_PRACTICE)
  public static double minutes(double volumeM3, double rateM3PerHour) {
    return volumeM3 / rateM3PerHour * 60;
  }

  /**
   * Returns whether concrete is too old when its truck is empty.
   *
   * @param minutesAway from batching to the site
   * @param dischargeMinutes from first to last of the load
   * @param limitMinutes Discharge limit
   */
  @Source(
      rule = "POUR-3",
      says = "Concrete is discharged within 90 min of batching",
      value = "90 min",
      key = "astm-c94",
      at = "§ 12, discharge",
      standing = Standing.FROM_MEMORY)
  public static boolean isTooOld(double minutesAway, double dischargeMinutes, double limitMinutes) {
    return minutesAway + dischargeMinutes - limitMinutes > SAME_MINUTES;
  }
}
