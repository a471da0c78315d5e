package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** DOW-1: dowels and tie bars across joints. */
public final class Dowels {

  private static final Length LEAST_DOWELLED = Length.ofInches(5);
  private static final Length TIE_EMBEDMENT = Length.ofInches(6);
  private static final Length HOLE_OVER_BAR = Length.ofInches(1, 8);

  /** Bars across a joint: what one is and how far apart they lie. */
  public record Across(String diameterName, Length diameter, Length length, Length spacing) {}

  private Dowels() {}

  /** Returns how many bars cross a joint: {@code ⌈joint/spacing⌉}, half a space at each end. */
  @Source(
      rule = "DOW-1",
      says = "Bars across a joint: its length ÷ spacing, rounded up (half a space at each end).",
      standing = Standing.COMMON_PRACTICE)
  public static int across(Length joint, Length spacing) {
    return joint.ceilDiv(spacing);
  }

  /**
   * Returns the dowel for a thickness by a paving table; where the table gives a range of
   * diameters, its greatest.
   */
  @Source(
      rule = "DOW-1",
      says = "Dowels by thickness, a table for paving: diameter x length @ spacing.",
      value =
          "under 8 in 3/4 x 16 @ 12; to 11-1/2 in 1 x 16 @ 12; to 15-1/2 in 1-1/4 x 20 @ 15; to"
              + " 20-1/2 in 1-1/2 x 20 @ 18; to 25-1/2 in 2 x 24 @ 18; above 3 x 30 @ 18",
      key = "ufc-3-260-02",
      at = "Table 12-8",
      standing = Standing.PUBLISHED)
  public static Across byThickness(Length thickness) {
    double inches = thickness.inches();
    if (inches < 8) {
      return inches("3/4", 3, 4, 16, 12);
    }
    if (inches < 12) {
      return inches("1", 1, 1, 16, 12);
    }
    if (inches < 16) {
      return inches("1-1/4", 5, 4, 20, 15);
    }
    if (inches < 21) {
      return inches("1-1/2", 3, 2, 20, 18);
    }
    return inches < 26 ? inches("2", 2, 1, 24, 18) : inches("3", 3, 1, 30, 18);
  }

  private static Across inches(String name, int over, int under, int length, int spacing) {
    return new Across(
        name, Length.ofInches(over, under), Length.ofInches(length), Length.ofInches(spacing));
  }

  /** Returns whether a slab is thick enough for dowels: 5 in. */
  @Source(
      rule = "DOW-1",
      says = "A slab under 5 in is tied, not dowelled.",
      value = "5 in",
      key = "aci-302-1r",
      standing = Standing.FROM_MEMORY)
  public static boolean isDowelled(Length thickness) {
    return !thickness.isLessThan(LEAST_DOWELLED);
  }

  /** Returns the tie bar where none is written: #4 x 18 in @ 18 in. */
  @Source(
      rule = "DOW-1",
      says = "Tie bars where none are written.",
      value = "#4 x 18 in @ 18 in",
      standing = Standing.COMMON_PRACTICE)
  public static Across usualTie() {
    return inches("#4", 1, 2, 18, 18);
  }

  /** Returns how deep a tie bar is drilled in where not written: 6 in, at least 10 diameters. */
  @Source(
      rule = "DOW-1",
      says = "A drilled tie bar is embedded 6 in and at least 10 diameters; a dowel half its bar.",
      value = "6 in; 10 db; 1/2",
      standing = Standing.COMMON_PRACTICE)
  public static Length tieEmbedment(Length diameter) {
    return TIE_EMBEDMENT.max(diameter.times(10));
  }

  /** Returns the diameter of a drilled hole: the bar's and 1/8 in. */
  @Source(
      rule = "DOW-1",
      says = "A hole is drilled 1/8 in wider than its bar.",
      value = "1/8 in",
      standing = Standing.COMMON_PRACTICE)
  public static Length hole(Length diameter) {
    return diameter.plus(HOLE_OVER_BAR);
  }

  /** Returns the adhesive for one hole: the annulus round the bar × Hole fill [m3]. */
  @Source(
      rule = "DOW-1",
      says = "Anchoring adhesive: the annulus between hole and bar × embedment × Hole fill.",
      value = "Hole fill 1.5",
      standing = Standing.COMMON_PRACTICE)
  public static double adhesiveM3(Length diameter, Length embedment, double holeFill) {
    double hole = hole(diameter).metres();
    double bar = diameter.metres();
    return StrictMath.PI / 4 * (hole * hole - bar * bar) * embedment.metres() * holeFill;
  }
}
