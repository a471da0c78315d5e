package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-3: bars along edges, thickenings and footings, at their corners, and upright in piers. */
public final class EdgeBars {

  /** Concrete below an upright bar. */
  private static final Length UNDER_UPRIGHT = Length.ofInches(3);

  private EdgeBars() {}

  /**
   * Returns the length of a bar along a side, to the cover at both ends. Where the neighbouring
   * side turns, the bar ends on the line of that side's bars: a cover short of an outside corner, a
   * cover beyond a re-entrant one.
   *
   * @param startAngleDeg inside angle at the first corner [degrees], 180 for none
   */
  @Source(
      rule = "BAR-3",
      says = "Edge bars run straight to the cover at both ends of their side.",
      value = "Edge cover 3 in",
      standing = Standing.COMMON_PRACTICE)
  public static Length alongSide(
      Length side, Length cover, double startAngleDeg, double endAngleDeg) {
    return side.minus(shortened(cover, startAngleDeg)).minus(shortened(cover, endAngleDeg));
  }

  /** The mitred corner of a line moved in by the cover: cover / tan(angle/2). */
  private static Length shortened(Length cover, double angleDeg) {
    if (angleDeg == 90) {
      return cover;
    }
    if (angleDeg == 180) {
      return Length.ZERO;
    }
    if (angleDeg == 270) {
      return Length.ZERO.minus(cover);
    }
    return Length.ofMetres(cover.metres() / StrictMath.tan(StrictMath.toRadians(angleDeg / 2)));
  }

  /** Returns the length of a bar bent round a circle at the cover, its closing lap in. */
  @Source(
      rule = "BAR-3",
      says = "A bar round a circular edge closes with a lap: π × (diameter − 2 covers) + lap.",
      standing = Standing.COMMON_PRACTICE)
  public static Length round(Length diameter, Length cover, Length lap) {
    Length circle = Length.ofMetres(StrictMath.PI * diameter.minus(cover.times(2)).metres());
    return circle.isPositive() ? circle.plus(lap) : Length.ZERO;
  }

  /** Returns the length of an upright bar in a pier: its depth less 3 in. */
  @Source(
      rule = "BAR-3",
      says = "Upright bars of a pier: its depth less 3 in of cover at the bottom.",
      value = "3 in",
      key = "aci-318-19",
      at = "Table 20.5.1.3.1",
      standing = Standing.PUBLISHED)
  public static Length upright(Length depth) {
    return depth.minus(UNDER_UPRIGHT);
  }
}
