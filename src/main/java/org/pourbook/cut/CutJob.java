package org.pourbook.cut;

import java.util.List;
import org.pourbook.measure.Length;

/**
 * Pieces to cut from stock of one material and size.
 *
 * @param pieces lengths with counts; lengths as wanted, rounding to {@code step} is the planner's
 * @param kerf lost at each cut between two pieces, zero for sheared bars
 * @param step cut lengths are rounded up and stock lengths down to it (CUT-1)
 */
public record CutJob(List<Piece> pieces, List<Stock> stock, Length kerf, Length step) {
  public CutJob {
    pieces = List.copyOf(pieces);
    stock = List.copyOf(stock);
  }

  /** Like pieces; {@code goesTo} travels to the cut list. */
  public record Piece(Length length, int count, String goesTo) {}

  /**
   * A stock length on offer.
   *
   * @param id the caller's own key, e.g. supplier and item
   * @param costMicros price of one piece in millionths of the currency unit, zero for a free offcut
   * @param limit how many there are; {@link Integer#MAX_VALUE} when not limited
   */
  public record Stock(String id, Length length, long costMicros, int limit) {}
}
