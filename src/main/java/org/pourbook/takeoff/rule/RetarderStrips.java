package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** Strips of vapor retarder (VR-1). */
public final class RetarderStrips {

  private RetarderStrips() {}

  /** Returns how many strips of a roll's width, lapped, cover a distance across. */
  @Source(
      rule = "VR-1",
      says =
          "Vapor retarder is laid in strips of the roll's width along whichever side needs fewer"
              + " rolls; needed are whole rolls",
      standing = Standing.COMMON_PRACTICE)
  public static int count(Length across, Length rollWidth, Length lap) {
    return lapped(across, rollWidth, lap);
  }

  /** Returns how many end laps there are where rolls are used up one after another. */
  @Source(
      rule = "VR-1",
      says = "Rolls are used up one after another, each lapped on the end of the one before",
      standing = Standing.COMMON_PRACTICE)
  public static int endLaps(Length run, Length rollLength, Length lap) {
    return lapped(run, rollLength, lap) - 1;
  }

  private static int lapped(Length distance, Length piece, Length lap) {
    return distance.isMoreThan(piece) ? 1 + distance.minus(piece).ceilDiv(piece.minus(lap)) : 1;
  }

  /**
   * Returns how much longer a sheet is than the plan where it runs down a bank instead of level
   * [m].
   *
   * @param depthM height of the bank [m]
   * @param slope run of the bank to one of rise
   */
  @Source(
      rule = "VR-1",
      says =
          "At a turned-down edge the retarder goes down the bank and across the bottom; it is turned"
              + " up 6 in against existing work and at isolation joints, and ends at the form"
              + " elsewhere",
      value = "turned up 6 in",
      key = "astm-e1643",
      at = "turned up at walls",
      standing = Standing.FROM_MEMORY)
  public static double bankMoreM(double depthM, double slope) {
    return depthM * (Math.sqrt(1 + slope * slope) - slope);
  }
}
