package org.pourbook.takeoff;

import org.pourbook.measure.Length;

/**
 * Like pieces of a cut-planned material ({@link Material.Planning#CUT}); their lengths are in the
 * quantities too, this says how they are cut.
 *
 * @param goesTo where the crew puts them, e.g. {@code floor side L1}; holds the section's code
 * @param mark of a bent bar, refers to the bar list; empty for a straight piece
 */
public record PieceNeed(
    MaterialKey material, Length length, int count, String goesTo, String mark, int pour) {
  public PieceNeed {
    if (!length.isPositive() || count <= 0) {
      throw new IllegalArgumentException("a piece has a length and a count: " + goesTo);
    }
  }
}
