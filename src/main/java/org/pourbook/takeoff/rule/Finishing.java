package org.pourbook.takeoff.rule;

import org.pourbook.measure.Unit;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;
import org.pourbook.takeoff.Worked;

/** Finishing and curing of a floor (FIN-1). */
public final class Finishing {

  private static final double CURING_FT2_PER_GAL = 200;
  private static final double FT2_PER_HOUR = 100;

  private Finishing() {}

  /** Returns the curing compound for a floor [m3]. */
  @Source(
      rule = "FIN-1",
      says = "Curing compound covers 200 ft2 a gallon",
      value = "200 ft2/gal",
      key = "astm-c309",
      at = "rate of the test",
      standing = Standing.FROM_MEMORY)
  public static Worked curingCompound(Worked area) {
    return area.times(Unit.GAL.toBase(1) / Unit.FT2.toBase(CURING_FT2_PER_GAL));
  }

  /** Returns the hours of one finisher for a floor. */
  @Source(
      rule = "FIN-1",
      says = "A finisher finishes about 100 ft2 an hour; asked for only where it is priced",
      value = "100 ft2/h",
      standing = Standing.COMMON_PRACTICE)
  @Source(
      rule = "FIN-1",
      says =
          "Power float when the bleed water is gone and a footprint is about 1/4 in deep; bare"
              + " floors are listed by finish",
      value = "footprint 1/4 in",
      standing = Standing.COMMON_PRACTICE)
  public static Worked hours(Worked area) {
    return area.times(1 / Unit.FT2.toBase(FT2_PER_HOUR));
  }
}
