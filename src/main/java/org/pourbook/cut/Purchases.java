package org.pourbook.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whole numbers of boards that a {@link Relaxation.Certificate} allows. Every plan buys boards
 * whose worth reaches that of all pieces, and pays a total that prices can add up to; so the least
 * such total is a bound, often the optimum itself.
 */
final class Purchases {
  /** Totals up to this are told apart one by one; above, by their rest from whole boards. */
  private static final int SMALL = 1 << 16;

  /**
   * So many totals are looked at: where prices share no greater unit than a millionth there are
   * billions. A bound not raised any further stays one.
   */
  static final long MOST_TOTALS = 1 << 22;

  /** What boards of some total are worth, and which they are. */
  interface Table {
    /** What no boards add up to. */
    long NONE = Long.MIN_VALUE / 4;

    /**
     * Returns the most worth of boards that cost exactly this much, at least; {@link #NONE} where
     * there are none.
     */
    long worth(long total);

    /** Returns such boards of each stock length; empty where only more than there are would do. */
    Optional<int[]> boards(long total);

    /** Returns how many cells were filled. */
    long steps();
  }

  private final Table table;
  private final long needed;
  private final long from;
  private final long below;

  Purchases(Table table, long needed, long from, long below) {
    this.table = table;
    this.needed = needed;
    this.from = from;
    this.below = below;
  }

  /**
   * Returns the purchases that cost less than {@code below}; empty where numbers are too large.
   *
   * @param atLeast a lower bound already known
   */
  static Optional<Purchases> below(
      CutModel model,
      Relaxation.Certificate certificate,
      long atLeast,
      long below,
      Effort.Steps steps) {
    if (certificate.total().bitLength() > 61 || below <= 0) {
      return Optional.empty();
    }
    long[] worth = certificate.stockWorth();
    long needed = certificate.total().longValueExact();
    for (int k = 0; k < model.stocks(); k++) {
      if (model.cost()[k] == 0) {
        needed -= Math.multiplyExact(worth[k], (long) model.limit()[k]);
      }
    }
    Optional<? extends Table> table =
        below <= SMALL
            ? Optional.of(new PurchasesByTotal(model, worth, (int) below))
            : PurchasesByRest.of(model, worth, needed);
    table.ifPresent(t -> steps.take(t.steps()));
    long enough = needed;
    return table.map(t -> new Purchases(t, enough, atLeast, below));
  }

  /** Returns a bound raised to the least total that is enough; to {@code below} where none is. */
  static long raised(
      CutModel model,
      Relaxation.Certificate certificate,
      long bound,
      long below,
      Effort.Steps steps) {
    return below <= bound
        ? bound
        : below(model, certificate, bound, below, steps)
            .map(purchases -> Math.max(bound, purchases.least()))
            .orElse(bound);
  }

  /**
   * Returns the least total that is enough; {@code below} where none below it is, and where it is
   * beyond all that are looked at the first of those not looked at.
   */
  long least() {
    long total = from;
    while (total < end() && table.worth(total) < needed) {
      total++;
    }
    return Math.min(total, below);
  }

  private long end() {
    return below - from > MOST_TOTALS ? from + MOST_TOTALS : below;
  }

  /**
   * Returns boards of each stock length that are enough, cheapest first, each worth more than those
   * before.
   */
  List<int[]> cheapest(int howMany) {
    List<int[]> found = new ArrayList<>();
    long more = needed;
    for (long total = from; total < end() && found.size() < howMany; total++) {
      if (table.worth(total) >= more) {
        table.boards(total).ifPresent(found::add);
        more = table.worth(total) + 1;
      }
    }
    return found;
  }
}
