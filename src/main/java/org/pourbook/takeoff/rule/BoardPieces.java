package org.pourbook.takeoff.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** The pieces a run of boards is made of, end to end (FORM-3). */
public final class BoardPieces {

  private BoardPieces() {}

  /**
   * Returns the ⌈run ÷ longest⌉ pieces of a run, together exactly as long: full ones first; where
   * the last would be shorter than {@code shortest}, the one before gives it what it lacks, or both
   * are made equal where that would leave the one before too short.
   *
   * @param longest board to be had
   */
  @Source(
      rule = "FORM-3",
      says =
          "A run longer than the longest board on offer is butted, with no piece under the shortest"
              + " board; each butt is backed by a splice",
      value = "shortest board 4 ft, splice 24 in",
      standing = Standing.COMMON_PRACTICE)
  public static List<Length> of(Length run, Length longest, Length shortest) {
    int count = run.ceilDiv(longest);
    List<Length> pieces = new ArrayList<>(Collections.nCopies(count - 1, longest));
    Length last = run.minus(longest.times(count - 1));
    if (count > 1 && last.isLessThan(shortest)) {
      Length both = longest.plus(last);
      last = shortest.min(both.dividedBy(2));
      pieces.set(count - 2, both.minus(last));
    }
    pieces.add(last);
    return pieces;
  }
}
