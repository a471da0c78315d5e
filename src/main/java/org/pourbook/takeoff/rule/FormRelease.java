package org.pourbook.takeoff.rule;

import org.pourbook.measure.Unit;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** The form release that the faces take (FORM-7). */
public final class FormRelease {

  /** Square feet that a gallon covers. */
  public static final int FT2_A_GALLON = 400;

  private static final double M_COVERED = Unit.FT2.toBase(FT2_A_GALLON) / Unit.GAL.toBase(1);

  private FormRelease() {}

  /** Returns contact area ÷ 400 ft2/gal [m3]. */
  @Source(
      rule = "FORM-7",
      says = "Form release by contact area",
      value = "400 ft2/gal (300 to 500 on wood)",
      key = "aci-347",
      standing = Standing.FROM_MEMORY)
  public static double volumeM3(double contactM2) {
    return contactM2 / M_COVERED;
  }

  /** Returns the square metres that a litre covers. */
  @Source(
      rule = "FORM-7",
      says = "Form release by contact area",
      value = "9.82 m2/L",
      key = "aci-347",
      standing = Standing.FROM_MEMORY)
  public static double m2ALitre() {
    return M_COVERED * Unit.L.toBase(1);
  }
}
