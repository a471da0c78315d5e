package org.pourbook.takeoff.rule;

import java.util.function.DoubleUnaryOperator;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;
import org.pourbook.takeoff.Worked;

/** Concrete of a turned-down edge below the slab's underside (CON-3). */
public final class TurnedDownEdge {

  private TurnedDownEdge() {}

  /**
   * Returns the edge between two heights above its bottom. At height z it is the ring between the
   * outline and the outline with the turned-down sides moved in, mitred, by {@code width + slope ×
   * z}; corners are thus counted once and the whole never exceeds the block under the plan.
   *
   * @param planM2 area of the whole plan [m2]
   * @param leftM2 area left when the turned-down sides are moved in by so many metres [m2]
   * @param widthM width at the bottom [m]
   * @param slope run of the inner bank to one of rise
   * @param fromM height above the bottom at which to begin: 0 for the whole edge [m]
   * @param toM height above the bottom at which to end: the depth below the underside [m]
   */
  @Source(
      rule = "CON-3",
      says =
          "A turned-down edge below the slab's underside is d/6 × (A0 + 4 A½ + A1), A being the"
              + " ring between the outline and the outline moved in by bottom width + bank; split"
              + " where nothing is left inside, never more than the plan × d",
      value = "inner bank 1 to 1 (Base bank slope)",
      standing = Standing.COMMON_PRACTICE)
  public static Prismatoid ofSides(
      double planM2,
      DoubleUnaryOperator leftM2,
      double widthM,
      double slope,
      double fromM,
      double toM) {
    return Prismatoid.of(
        z -> planM2 - leftM2.applyAsDouble(widthM + slope * z), planM2, fromM, toM);
  }

  /**
   * Returns the edge along one straight run of a given length, which belongs to no named side.
   *
   * @param planM2 area of the whole plan, which a level of the edge never exceeds [m2]
   * @param runM length of the run [m]
   */
  @Source(
      rule = "CON-3",
      says = "A turned-down edge along a given length is length × (b × d + k × d²/2)",
      value = "inner bank 1 to 1 (Base bank slope)",
      standing = Standing.COMMON_PRACTICE)
  public static Prismatoid ofRun(
      double planM2, double runM, double widthM, double slope, double fromM, double toM) {
    return Prismatoid.of(z -> Math.min(planM2, runM * (widthM + slope * z)), planM2, fromM, toM);
  }

  /**
   * Returns the edge of a rectangle whose inside never vanishes [m3]: the same figure as {@link
   * #ofSides} gives, in one line.
   *
   * @param sides length of the turned-down sides [m]
   * @param corners between two such sides
   * @param width at the bottom [m]
   * @param slope run of the inner bank to one of rise
   * @param depth below the underside [m]
   */
  @Source(
      rule = "CON-3",
      says =
          "A rectangle's turned-down edge is d × (sides × m − corners × (m² + (k d)²/12)), m being"
              + " the width half way up its bank, b + k d/2",
      value = "inner bank 1 to 1 (Base bank slope)",
      standing = Standing.COMMON_PRACTICE)
  public static Worked ofRectangle(
      Worked sides, int corners, Worked width, double slope, Worked depth) {
    Worked middle = width.plus(depth.times(slope / 2));
    if (corners == 0) {
      return depth.times(sides).times(middle);
    }
    Worked twice = middle.times(middle).plus(depth.times(depth).times(slope * slope / 12));
    return depth.times(sides.times(middle).minus(twice.times(corners)));
  }
}
