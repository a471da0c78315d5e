package org.pourbook.takeoff;

import java.util.Optional;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.rule.FormReuse.Lot;

/**
 * Like boards, stakes or braces of a section, which may serve a later pour again (FORM-8).
 *
 * @param what {@code form boards 2x6}, {@code stakes}, {@code braces}: what may stand in for
 *     another
 * @param material bought, or cut from
 * @param joined the run that boards are pieces of, if the cut plan may divide it otherwise
 * @param cut whether it is cut from a board; else it is bought by the piece
 */
record FormPiece(
    String what,
    MaterialKey material,
    boolean cut,
    Length length,
    int count,
    String goesTo,
    int pour,
    Optional<Joined> joined) {

  /** Makes pieces that are of no run. */
  FormPiece(
      String what,
      MaterialKey material,
      boolean cut,
      Length length,
      int count,
      String goesTo,
      int pour) {
    this(what, material, cut, length, count, goesTo, pour, Optional.empty());
  }

  Lot lot() {
    return new Lot(length, count);
  }

  FormPiece withCount(int other) {
    return new FormPiece(what, material, cut, length, other, goesTo, pour, joined);
  }

  /** Returns the same, to be cut as it is listed. */
  FormPiece asListed() {
    return new FormPiece(what, material, cut, length, count, goesTo, pour);
  }

  PieceNeed need() {
    return new PieceNeed(material, length, count, goesTo, "", pour, joined);
  }
}
