package org.pourbook.takeoff.rule;

import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-6: the weight of bars. */
public final class BarWeights {

  private BarWeights() {}

  /** Returns the mass of a length of bar by its tabulated mass a metre, not π·d²/4 [kg]. */
  @Source(
      rule = "BAR-6",
      says = "Weight of inch-pound bars: the tabulated weight a foot.",
      value = "#3 0.376, #4 0.668, #5 1.043, #6 1.502, #7 2.044, #8 2.670 lb/ft",
      key = "crsi-msp-27",
      at = "inside cover, after ASTM A615",
      standing = Standing.PUBLISHED)
  @Source(
      rule = "BAR-6",
      says = "Weight of metric bars: the nominal mass a metre.",
      value = "10M 0.785, 15M 1.570, 20M 2.355; 10 mm 0.617, 12 mm 0.888, 16 mm 1.578 kg/m",
      key = "csa-g30-18",
      at = "and ISO 6935-2",
      standing = Standing.FROM_MEMORY)
  public static double massKg(BarSize bar, Length length) {
    return bar.massKgPerM() * length.metres();
  }
}
