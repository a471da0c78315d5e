package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** Least sizes that codes ask of floors and footings; a designer and the local code decide. */
public final class CodeMinimums {

  private static final Length FLOOR = Length.ofInches(7, 2);
  private static final Length BASE = Length.ofInches(4);
  private static final Length FOOTING_WIDTH = Length.ofInches(12);
  private static final Length FOOTING_THICKNESS = Length.ofInches(6);
  private static final Length LAP = Length.ofInches(6);
  private static final int RETARDER_MIL = 10;
  private static final int MOST_THICKNESSES = 36;
  private static final Length WIDEST_JOINTS = Length.ofFeet(18);
  private static final Length GROUND_COVER = Length.ofInches(3);
  private static final Length TOP_COVER = Length.ofInches(3, 2);

  private CodeMinimums() {}

  /** Returns whether a floor is thinner than 3-1/2 in. */
  @Source(
      rule = "CON-2",
      says = "A floor on ground is at least 3-1/2 in thick",
      value = "3-1/2 in",
      key = "irc-r506",
      at = "R506.1",
      standing = Standing.PUBLISHED)
  @Source(
      rule = "CON-2",
      says = "A floor on ground is at least 3-1/2 in thick",
      value = "3-1/2 in",
      key = "ibc-1910",
      at = "1910.1",
      standing = Standing.PUBLISHED)
  public static boolean isThin(Length thickness) {
    return thickness.isLessThan(FLOOR);
  }

  /** Returns whether there is less base than 4 in. */
  @Source(
      rule = "BASE-1",
      says = "An inside floor lies on 4 in of base; it may be left out on well-drained soils",
      value = "4 in",
      key = "irc-r506",
      at = "R506.2.2",
      standing = Standing.PUBLISHED)
  public static boolean isThinBase(Length base) {
    return base.isLessThan(BASE);
  }

  /** Returns whether retarder laps are shorter than 6 in. */
  @Source(
      rule = "VR-1",
      says = "Retarder laps are at least 6 in",
      value = "6 in",
      key = "ibc-1910",
      at = "1910.1",
      standing = Standing.PUBLISHED)
  public static boolean isShortLap(Length lap) {
    return lap.isLessThan(LAP);
  }

  /** Returns whether a retarder of so many mil is thinner than the code of 2021 asks. */
  @Source(
      rule = "VR-1",
      says = "A retarder is 10 mil, ASTM E1745 Class A (6 mil in 2018 and before)",
      value = "10 mil",
      key = "irc-r506",
      at = "R506.2.3 (2021)",
      standing = Standing.PUBLISHED)
  public static boolean isThinRetarder(double mil) {
    return mil < RETARDER_MIL;
  }

  /** Returns whether a footing is narrower than 12 in or thinner than 6 in. */
  @Source(
      rule = "CON-5",
      says = "A footing is at least 12 in wide and 6 in thick",
      value = "12 in, 6 in",
      key = "irc-r403",
      at = "R403.1",
      standing = Standing.FROM_MEMORY)
  public static boolean isSmallFooting(Length width, Length thickness) {
    return width.isLessThan(FOOTING_WIDTH) || thickness.isLessThan(FOOTING_THICKNESS);
  }

  /** Returns whether joints stand farther apart than 36 thicknesses or 18 ft. */
  @Source(
      rule = "JOINT-1",
      says =
          "Joints of an unreinforced floor stand no farther apart than 36 × its thickness, at most"
              + " 18 ft",
      value = "36 × thickness, ≤ 18 ft",
      key = "aci-302-1r",
      at = "302.1R-96, joint spacing",
      standing = Standing.PUBLISHED)
  public static boolean isWide(Length jointSpacing, Length thickness) {
    return jointSpacing.isMoreThan(thickness.times(MOST_THICKNESSES).min(WIDEST_JOINTS));
  }

  /** Returns whether bars cast against the ground have less cover than 3 in. */
  @Source(
      rule = "BAR-1",
      says = "Bars in concrete cast against the ground have 3 in of cover",
      value = "3 in",
      key = "aci-318-19",
      at = "Table 20.5.1.3.1",
      standing = Standing.PUBLISHED)
  public static boolean isThinGroundCover(Length cover) {
    return cover.isLessThan(GROUND_COVER);
  }

  /** Returns whether bars of #5 and smaller have less cover to the top than 1-1/2 in. */
  @Source(
      rule = "BAR-7",
      says = "Bars of #5 and smaller have 1-1/2 in of cover to weather",
      value = "1-1/2 in",
      key = "aci-318-19",
      at = "Table 20.5.1.3.1, exposed to weather",
      standing = Standing.FROM_MEMORY)
  public static boolean isThinTopCover(Length cover) {
    return cover.isLessThan(TOP_COVER);
  }
}
