package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-8: ties and their wire. */
public final class TieWire {

  /** One tie each 4 ft of an edge bar. */
  private static final Length EDGE_SPACING = Length.ofFeet(4);

  /** Mass of 16 gauge wire, 0.0104 lb/ft [kg/m]. */
  private static final double KG_PER_M = 0.0104 * 0.45359237 / 0.3048;

  private TieWire() {}

  /** Returns the ties of a mat: every second crossing. */
  @Source(
      rule = "BAR-8",
      says = "Every second crossing of a mat is tied.",
      standing = Standing.FROM_MEMORY)
  public static long atCrossings(long crossings) {
    return (crossings + 1) / 2;
  }

  /** Returns the ties of laps: two each. */
  @Source(rule = "BAR-8", says = "Two ties a lap.", standing = Standing.COMMON_PRACTICE)
  public static long atLaps(long laps) {
    return 2 * laps;
  }

  /** Returns the ties of an edge bar: one each 4 ft. */
  @Source(
      rule = "BAR-8",
      says = "One tie each 4 ft of an edge bar.",
      value = "4 ft",
      standing = Standing.COMMON_PRACTICE)
  public static int alongEdgeBar(Length run) {
    return run.ceilDiv(EDGE_SPACING);
  }

  /** Returns the mass of 16 gauge wire for ties of a length [kg]. */
  @Source(
      rule = "BAR-8",
      says = "Tie wire: ties × Tie length × the weight of 16 gauge wire.",
      value = "12 in; 0.0104 lb/ft",
      standing = Standing.COMMON_PRACTICE)
  public static double massKg(long ties, Length tieLength) {
    return ties * tieLength.metres() * KG_PER_M;
  }
}
