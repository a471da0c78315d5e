package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.BoardEnd;
import org.pourbook.takeoff.Source;

/** How long the board along a formed side is (FORM-1). */
public final class BoardLength {

  private BoardLength() {}

  /** Returns side + thickness, side, or side − thickness, by the end; never below one thickness. */
  @Source(
      rule = "FORM-1",
      says =
          "Each straight formed side has its own board: the side's length, and one board thickness"
              + " more where it laps the next board at an outside corner, one less where it stops"
              + " at a re-entrant one",
      standing = Standing.COMMON_PRACTICE)
  public static Length of(Length side, Length thickness, BoardEnd end) {
    return side.plus(thickness.times(end.thicknesses())).max(thickness);
  }
}
