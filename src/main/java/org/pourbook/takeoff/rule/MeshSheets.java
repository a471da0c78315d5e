package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** MESH-1: welded wire mesh in sheets or strips off a roll. */
public final class MeshSheets {

  private static final Length EDGE = Length.ofInches(2);

  private MeshSheets() {}

  /** Returns how far mesh stays from the outline: 2 in. */
  @Source(
      rule = "MESH-1",
      says = "Mesh lies to 2 in from the outline.",
      value = "2 in",
      standing = Standing.COMMON_PRACTICE)
  public static Length edge() {
    return EDGE;
  }

  /** Returns the lap of sheets or strips: one cross-wire space and 2 in, at least 6 in. */
  @Source(
      rule = "MESH-1",
      says = "Mesh laps one cross-wire space and 2 in, at least 6 in.",
      value = "space + 2 in; 6 in",
      key = "aci-318-19",
      at = "25.5.4",
      standing = Standing.FROM_MEMORY)
  public static Length lap(Length crossWireSpace) {
    return crossWireSpace.plus(Length.ofInches(2)).max(Length.ofInches(6));
  }

  /**
   * Returns how many sheets or strips of a size cover a distance when lapped: {@code ⌈(d −
   * lap)/(size − lap)⌉}, at least one.
   *
   * @throws IllegalArgumentException if the size is no greater than the lap
   */
  @Source(
      rule = "MESH-1",
      says = "Sheets over a distance: (distance − lap) ÷ (sheet − lap), rounded up.",
      standing = Standing.COMMON_PRACTICE)
  public static int over(Length distance, Length size, Length lap) {
    return Math.max(1, distance.minus(lap).ceilDiv(size.minus(lap)));
  }

  /**
   * Returns the sheets that a number of like strips take, each of full sheets and a last piece; a
   * sheet may be cut once and its rest used as the last piece of another strip.
   */
  @Source(
      rule = "MESH-1",
      says = "A sheet may be cut once and its rest used.",
      standing = Standing.COMMON_PRACTICE)
  public static int sheets(int strips, Length strip, Length sheet, Length lap) {
    int inStrip = over(strip, sheet, lap);
    Length last = strip.minus(sheet.minus(lap).times(inStrip - 1L));
    boolean twoFromOne = !last.times(2).isMoreThan(sheet);
    return strips * (inStrip - 1) + (twoFromOne ? (strips + 1) / 2 : strips);
  }
}
