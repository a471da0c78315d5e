package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-7: what carries the bars until the concrete does. */
public final class BarSupports {

  /** Height of the blocks under edge and footing bars. */
  private static final Length BLOCK = Length.ofInches(3);

  private static final Length METRIC_BLOCK = Length.ofMillimetres(75);

  private BarSupports() {}

  /** Returns the supports under a rectangular mat: {@code (⌈l/s⌉ + 1) × (⌈w/s⌉ + 1)}, exactly. */
  @Source(
      rule = "BAR-7",
      says =
          "Supports: (mat length ÷ spacing, rounded up, plus one) × (mat width ÷ spacing, rounded"
              + " up, plus one).",
      value = "4 ft under bars, 3 ft under mesh",
      key = "wri-tf702",
      standing = Standing.FROM_MEMORY)
  public static int underMat(Length length, Length width, Length spacing) {
    return inRow(length, spacing) * inRow(width, spacing);
  }

  /** Returns the supports in one row: {@code ⌈l/s⌉ + 1}; one where the length is not above zero. */
  @Source(
      rule = "BAR-7",
      says = "Supports in a row: its length ÷ spacing, rounded up, plus one.",
      standing = Standing.FROM_MEMORY)
  public static int inRow(Length length, Length spacing) {
    return length.isPositive() ? length.ceilDiv(spacing) + 1 : 1;
  }

  /**
   * Returns the height of supports: thickness less top cover and both layers, down to 1/4 in (5 mm
   * in an {@code m} job); may be zero or less where the steel does not fit.
   *
   * @param steel diameters of both layers
   */
  @Source(
      rule = "BAR-7",
      says = "Height of supports: thickness less top cover and both bars, down to 1/4 in (5 mm).",
      value = "Top cover 1-1/2 in, outside 2 in",
      key = "aci-360r",
      standing = Standing.PUBLISHED)
  public static Length height(Length thickness, Length topCover, Length steel, UnitSystem units) {
    Length step = units.isMetric() ? Length.ofMillimetres(5) : Length.ofInches(1, 4);
    return thickness.minus(topCover).minus(steel).roundedDownTo(step);
  }

  /** Returns the 3 in blocks under a run of edge or footing bars: one every spacing. */
  @Source(
      rule = "BAR-7",
      says = "Edge and footing bars: one 3 in block every 4 ft, the first half a space in.",
      value = "3 in; 4 ft",
      key = "aci-318-19",
      at = "Table 20.5.1.3.1 (cover)",
      standing = Standing.COMMON_PRACTICE)
  public static int blocksUnder(Length run, Length spacing) {
    return run.ceilDiv(spacing);
  }

  /**
   * Returns the height of those blocks: 3 in, the cover of concrete cast against ground; 75 mm as
   * they are sold in metric sizes.
   */
  @Source(
      rule = "BAR-7",
      says = "Blocks hold edge and footing bars 3 in clear of the ground.",
      value = "3 in",
      key = "aci-318-19",
      at = "Table 20.5.1.3.1",
      standing = Standing.PUBLISHED)
  public static Length blockHeight(UnitSystem units) {
    return units.isMetric() ? METRIC_BLOCK : BLOCK;
  }
}
