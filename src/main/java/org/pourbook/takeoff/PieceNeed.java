package org.pourbook.takeoff;

import java.util.Optional;
import org.pourbook.measure.Length;

/**
 * Like pieces of a cut-planned material ({@link Material.Planning#CUT}); their lengths are in the
 * quantities too, this says how they are cut.
 *
 * @param goesTo where the crew puts them, e.g. {@code floor side L1}; holds the section's code
 * @param mark of a bent bar, refers to the bar list; empty for a straight piece
 * @param joined the run that this is a piece of, if the cut plan may divide it otherwise; the
 *     pieces of all such runs of one place stand for full lengths first
 */
public record PieceNeed(
    MaterialKey material,
    Length length,
    int count,
    String goesTo,
    String mark,
    int pour,
    Optional<Joined> joined) {
  public PieceNeed {
    if (!length.isPositive() || count <= 0) {
      throw new IllegalArgumentException("a piece has a length and a count: " + goesTo);
    }
  }

  /** Makes pieces that are cut as they are listed. */
  public PieceNeed(
      MaterialKey material, Length length, int count, String goesTo, String mark, int pour) {
    this(material, length, count, goesTo, mark, pour, Optional.empty());
  }

  /** Returns the run whose joints this piece's own plan may place; empty for one cut as listed. */
  public Optional<Joined> run() {
    return joined.filter(of -> !of.tied());
  }
}
