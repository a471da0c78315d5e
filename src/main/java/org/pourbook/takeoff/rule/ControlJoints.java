package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** Control joints of a floor (JOINT-1 … JOINT-3). */
public final class ControlJoints {

  private static final int THICKNESSES = 30;
  private static final Length LARGEST = Length.ofFeet(15);
  private static final Length LEAST_DEPTH = Length.ofInches(1);

  /** A panel is no longer than this many halves of its width. */
  private static final int LONGEST_HALVES = 3;

  /** Sealant in a joint 1/4 in wide and 1/2 in deep [m2]. */
  private static final double SEALANT_M2 =
      Length.ofInches(1, 4).metres() * Length.ofInches(1, 2).metres();

  /** A strip narrower than this is not cut to shape: its joints would stand in each other's way. */
  private static final Length NARROWEST = Length.ofInches(24);

  /** What is drawn and set out no finer than this is no fault of a panel. */
  private static final Length WRITTEN = Length.ofInches(1, 16);

  private ControlJoints() {}

  /** Equal panels: how many lie along Length, and how many along Width. */
  public record Panels(int alongLength, int alongWidth) {
    public int count() {
      return alongLength * alongWidth;
    }
  }

  /** Returns the largest panel side of a floor of that thickness. */
  @Source(
      rule = "JOINT-1",
      says = "The largest panel side is 30 × thickness, within 24 to 36 ×, at most 15 ft",
      value = "30 × thickness, ≤ 15 ft",
      key = "aci-302-1r",
      at = "302.1R-96, joint spacing of unreinforced floors: 24 to 36 × thickness, at most 18 ft",
      standing = Standing.PUBLISHED)
  public static Length largestSide(Length thickness) {
    return thickness.times(THICKNESSES).min(LARGEST);
  }

  /**
   * Returns the fewest equal panels with no side over {@code largest} and none longer than 1.5 ×
   * its width; of those with as many panels, the one that is cut least. A strip narrower than 2 ft
   * is cut by its length alone.
   */
  @Source(
      rule = "JOINT-1",
      says =
          "The fewest equal panels with no side over the largest and none longer than 1.5 × its"
              + " width",
      value = "1.5",
      key = "sudas-5g-2",
      at = "length ≤ 1.5 × width",
      standing = Standing.PUBLISHED)
  public static Panels panels(Length length, Length width, Length largest) {
    if (length.min(width).isLessThan(NARROWEST)) {
      return new Panels(length.ceilDiv(largest), width.ceilDiv(largest));
    }
    Panels best = null;
    long leastCut = Long.MAX_VALUE;
    int leastRows = width.ceilDiv(largest);
    for (int rows = leastRows; best == null || rows <= best.count(); rows++) {
      int columns = columns(length, width, largest, rows);
      long count = (long) columns * rows;
      long cut = width.nanometres() * (columns - 1L) + length.nanometres() * (rows - 1L);
      if (columns > 0
          && (best == null || count < best.count() || (count == best.count() && cut < leastCut))) {
        best = new Panels(columns, rows);
        leastCut = cut;
      }
    }
    return best;
  }

  /** Fewest panels along Length for so many rows, 0 where none is well shaped. */
  private static int columns(Length length, Length width, Length largest, int rows) {
    // A panel is length/columns by width/rows. Not longer than 1.5 times its width:
    // length/columns <= 3/2 width/rows, so columns >= 2 rows length / (3 width); and the other way
    // about, columns <= 3 rows length / (2 width).
    Length twice = length.times(2L * rows);
    int columns = Math.max(length.ceilDiv(largest), twice.ceilDiv(width.times(LONGEST_HALVES)));
    int most = length.times((long) LONGEST_HALVES * rows).floorDiv(width.times(2));
    return columns <= most ? columns : 0;
  }

  /** Returns whether a panel keeps to the largest side and is no longer than 1.5 × its width. */
  @Source(
      rule = "JOINT-1",
      says =
          "A panel's sides are no longer than the largest, the longer no more than 1.5 × the other",
      value = "1.5",
      key = "sudas-5g-2",
      at = "length ≤ 1.5 × width",
      standing = Standing.PUBLISHED)
  public static boolean isSound(Length length, Length width, Length largest) {
    Length longer = length.max(width);
    Length shorter = length.min(width);
    return !longer.isMoreThan(largest.plus(WRITTEN))
        && !longer.times(2).isMoreThan(shorter.times(LONGEST_HALVES).plus(WRITTEN));
  }

  /** Returns how far apart two joints may lie of which one serves for both [m]. */
  @Source(
      rule = "JOINT-1",
      says =
          "First a joint runs from each re-entrant corner, those of openings and recesses too, the"
              + " shortest way across; then each piece has its panels",
      key = "aci-302-1r",
      at = "re-entrant corners",
      standing = Standing.FROM_MEMORY)
  @Source(
      rule = "JOINT-1",
      says = "One joint serves for two that would lie within a quarter panel of each other",
      value = "1/4 panel",
      standing = Standing.COMMON_PRACTICE)
  public static double nearM(Length panel) {
    return panel.metres() / 4;
  }

  /** Returns when joints are sawn, as the Ready list prints it. */
  @Source(
      rule = "JOINT-2",
      says =
          "An early-entry saw starts 1 to 4 h after finishing, a conventional one 4 to 12 h, as soon"
              + " as the cut does not ravel",
      value = "1 to 4 h, 4 to 12 h",
      key = "aci-302-1r",
      at = "timing of sawn joints",
      standing = Standing.FROM_MEMORY)
  public static String sawing() {
    return "early-entry saw 1 to 4 h after finishing, conventional saw 4 to 12 h, as soon as the cut"
        + " does not ravel (from memory of ACI 302.1R)";
  }

  /** Returns how deep a joint is cut. */
  @Source(
      rule = "JOINT-2",
      says = "A control joint is a quarter of the thickness deep, at least 1 in",
      value = "max(t/4, 1 in)",
      key = "aci-302-1r",
      at = "depth of contraction joints",
      standing = Standing.FROM_MEMORY)
  public static Length depth(Length thickness) {
    return thickness.dividedBy(4).max(LEAST_DEPTH);
  }

  /** Returns the sealant of joints of a length [m3]. */
  @Source(
      rule = "JOINT-3",
      says = "Joints are sealed (Seal joints) 1/4 in wide and 1/2 in deep over a backer rod",
      value = "1/4 × 1/2 in",
      standing = Standing.COMMON_PRACTICE)
  public static double sealantM3(double lengthM) {
    return lengthM * SEALANT_M2;
  }

  /** Returns the thickness of an isolation joint's filler. */
  @Source(
      rule = "JOINT-4",
      says = "Isolation joints are filled by length and depth, 1/2 in thick",
      value = "1/2 in",
      key = "irmca",
      at = "1/2 in isolation at fixed objects",
      standing = Standing.PUBLISHED)
  public static Length fillerThickness() {
    return Length.ofInches(1, 2);
  }
}
