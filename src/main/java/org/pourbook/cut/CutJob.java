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
    if (kerf.nanometres() < 0 || !step.isPositive()) {
      throw new IllegalArgumentException("kerf " + kerf + " and step " + step + " make no sense");
    }
  }

  /** Like pieces; {@code goesTo} travels to the cut list. */
  public record Piece(Length length, int count, String goesTo) {
    public Piece {
      if (!length.isPositive() || count <= 0) {
        throw new IllegalArgumentException("a piece has a length and a count: " + goesTo);
      }
    }
  }

  /**
   * A stock length on offer.
   *
   * @param id the caller's own key, e.g. supplier and item
   * @param costMicros price of one piece in millionths of the currency unit, zero for a free offcut
   * @param limit how many there are; {@link Integer#MAX_VALUE} when not limited
   */
  public record Stock(String id, Length length, long costMicros, int limit) {
    public Stock {
      if (!length.isPositive() || costMicros < 0 || limit < 0) {
        throw new IllegalArgumentException("stock has a length, a price and a limit: " + id);
      }
    }
  }

  /**
   * Returns this job with each stock piece costing its length in micrometres, for material without
   * a price: cost and bound of the plan then are total lengths of stock, and {@code isProven} says
   * that no plan opens less of it.
   */
  public CutJob pricedByLength() {
    List<Stock> byLength =
        stock.stream()
            .map(s -> new Stock(s.id(), s.length(), s.length().nanometres() / 1000, s.limit()))
            .toList();
    return new CutJob(pieces, byLength, kerf, step);
  }

  /** Returns whether any stock has a price. */
  public boolean isPriced() {
    return stock.stream().anyMatch(s -> s.costMicros() > 0);
  }
}
