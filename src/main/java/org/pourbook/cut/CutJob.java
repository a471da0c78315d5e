package org.pourbook.cut;

import java.util.List;
import org.pourbook.measure.Length;

/**
 * Pieces to cut from stock of one material and size.
 *
 * @param pieces lengths with counts; lengths as wanted, rounding to {@code step} is the planner's
 * @param runs that are joined of pieces; where their joints lie is the planner's
 * @param kerf lost at each cut between two pieces, zero for sheared bars
 * @param step cut lengths are rounded up and stock lengths down to it (CUT-1)
 */
public record CutJob(
    List<Piece> pieces, List<Run> runs, List<Stock> stock, Length kerf, Length step) {
  public CutJob {
    pieces = List.copyOf(pieces);
    runs = List.copyOf(runs);
    stock = List.copyOf(stock);
    if (kerf.nanometres() < 0 || !step.isPositive()) {
      throw new IllegalArgumentException("kerf " + kerf + " and step " + step + " make no sense");
    }
  }

  /** Makes a job of pieces alone. */
  public CutJob(List<Piece> pieces, List<Stock> stock, Length kerf, Length step) {
    this(pieces, List.of(), stock, kerf, step);
  }

  /** Returns the same stock for these pieces and no runs. */
  CutJob ofPieces(List<Piece> other) {
    return new CutJob(other, stock, kerf, step);
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
   * Like runs, each of {@code joints + 1} pieces that overlap by a lap, or are butted where that is
   * zero (FORM-3, BAR-2).
   *
   * @param length of the run in place
   * @param shortest no piece is shorter
   * @param longest no piece is longer, whatever the stock
   * @param courses boards that lie side by side and are joined at the same places
   * @param count runs, each of that many courses
   */
  public record Run(
      Length length,
      int joints,
      Length lap,
      Length shortest,
      Length longest,
      int courses,
      int count,
      String goesTo) {
    public Run {
      if (!length.isPositive()
          || joints <= 0
          || lap.nanometres() < 0
          || shortest.nanometres() < 0) {
        throw new IllegalArgumentException("a run has a length and joints: " + goesTo);
      }
      if (courses <= 0 || count <= 0) {
        throw new IllegalArgumentException("a run has courses and a count: " + goesTo);
      }
    }

    /** Returns how many pieces a course has. */
    public int pieces() {
      return joints + 1;
    }

    /** Returns the length of all pieces of a course: the run and its laps. */
    public Length total() {
      return length.plus(lap.times(joints));
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
    return new CutJob(pieces, runs, byLength, kerf, step);
  }

  /** Returns whether any stock has a price. */
  public boolean isPriced() {
    return stock.stream().anyMatch(s -> s.costMicros() > 0);
  }
}
