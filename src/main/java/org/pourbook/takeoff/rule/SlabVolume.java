package org.pourbook.takeoff.rule;

import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;
import org.pourbook.takeoff.Worked;

/** Plan area and concrete of flat pieces (CON-1, CON-2, CON-4, CON-5). */
public final class SlabVolume {

  private SlabVolume() {}

  /** Returns the area of a floor's own top: its plan less what its recesses take out [m2]. */
  @Source(
      rule = "CON-1",
      says = "Plan area is L × W, π D²/4, or the outline less its openings; a recess is taken out",
      standing = Standing.COMMON_PRACTICE)
  public static Worked ownArea(Worked plan, Worked recesses) {
    if (recesses.value() == 0) {
      return plan;
    }
    Worked own = plan.minus(recesses);
    return own.value() < 0 ? Worked.of(0) : own;
  }

  /** Returns the volume of a slab of even thickness [m3]. */
  @Source(
      rule = "CON-2",
      says = "Concrete of a slab is plan area × thickness",
      key = "en5466",
      at = "p. 2-45",
      standing = Standing.PUBLISHED)
  public static Worked flat(Worked area, Worked thickness) {
    return area.times(thickness);
  }

  /**
   * Returns what a top that falls adds where the base does not fall with it, the thickness then
   * being the least one [m3].
   *
   * @param fall slope of the top, a ratio
   * @param runM length along which it falls [m]
   */
  @Source(
      rule = "CON-2",
      says = "A top that falls over a level base adds area × fall × run/2 over the least thickness",
      standing = Standing.COMMON_PRACTICE)
  public static double fallM3(double areaM2, double fall, double runM) {
    return areaM2 * fall * runM / 2;
  }

  /**
   * Returns the bank along a recess's inner sides, where its underside lies lower than its
   * parent's: it lies under the parent, so that concrete at the step is never thinner than the
   * parent [m3]. Corners are left out.
   *
   * @param sidesM length of the inner sides [m]
   * @param lowerM how far the underside lies lower; nothing is added at zero or above [m]
   * @param slope run of the bank to one of rise
   */
  @Source(
      rule = "CON-4",
      says =
          "A recess is its own area × its own thickness; where its underside lies lower by h, the"
              + " bank along its inner sides adds length × k h²/2 (corners approximated)",
      standing = Standing.COMMON_PRACTICE)
  public static double recessBankM3(double sidesM, double lowerM, double slope) {
    return lowerM <= 0 ? 0 : sidesM * slope * lowerM * lowerM / 2;
  }

  /** Returns the whole of a thickening below its slab's underside [m3]. */
  @Source(
      rule = "CON-5",
      says = "A thickening below the underside is length × (b × d + k × d²), with its two banks",
      standing = Standing.COMMON_PRACTICE)
  public static Worked thickening(Worked length, Worked width, double slope, Worked depth) {
    return length.times(width.plus(depth.times(slope))).times(depth);
  }

  /**
   * Returns the part of a thickening that lies between two heights above its bottom, with its two
   * banks [m3].
   *
   * @param lengthM clear between turned-down edges [m]
   * @param widthM at the bottom [m]
   */
  @Source(
      rule = "CON-5",
      says = "A thickening below the underside is length × (b × d + k × d²), with its two banks",
      standing = Standing.COMMON_PRACTICE)
  public static double thickeningM3(
      double lengthM, double widthM, double slope, double fromM, double toM) {
    return toM <= fromM
        ? 0
        : lengthM * (widthM * (toM - fromM) + slope * (toM * toM - fromM * fromM));
  }

  /** Returns the volume of a footing or pier [m3]. */
  @Source(
      rule = "CON-5",
      says = "A footing or pier is its plan area × its depth",
      key = "en5466",
      at = "p. 2-45",
      standing = Standing.PUBLISHED)
  public static Worked footing(Worked area, Worked depth) {
    return area.times(depth);
  }
}
