package org.pourbook.takeoff.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** The pieces in which a wall plate is laid (BOLT-1). */
public final class PlatePieces {

  private static final Length SHORT = Length.ofFeet(4);

  private PlatePieces() {}

  /**
   * Returns the pieces of a straight plate, together exactly as long: full ones and a rest; where
   * the rest would be under 4 ft, it and the one before are made equal.
   */
  @Source(
      rule = "BOLT-1",
      says =
          "A wall is laid in plate pieces; a last piece under 4 ft and the one before it are made"
              + " equal",
      value = "pieces of 16 ft",
      standing = Standing.COMMON_PRACTICE)
  public static List<Length> of(Length plate, Length longest) {
    int count = plate.ceilDiv(longest);
    List<Length> pieces = new ArrayList<>(Collections.nCopies(count - 1, longest));
    Length last = plate.minus(longest.times(count - 1));
    if (count > 1 && last.isLessThan(SHORT)) {
      Length both = longest.plus(last);
      last = both.dividedBy(2);
      pieces.set(count - 2, both.minus(last));
    }
    pieces.add(last);
    return pieces;
  }
}
