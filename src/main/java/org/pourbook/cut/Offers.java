package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The stock on offer that a cheapest plan may need. */
final class Offers {
  private static final Comparator<CutJob.Stock> ORDER =
      Comparator.comparing(CutJob.Stock::length, Comparator.reverseOrder())
          .thenComparingLong(CutJob.Stock::costMicros)
          .thenComparing(CutJob.Stock::id);

  private Offers() {}

  /**
   * Returns the stock longest first, without that which holds no piece, is not there, or is beaten
   * by stock that is no shorter, no dearer and never runs out.
   */
  static List<CutJob.Stock> worthKeeping(CutJob job) {
    long pieces = job.pieces().stream().mapToLong(CutJob.Piece::count).sum();
    List<CutJob.Stock> kept = new ArrayList<>();
    for (CutJob.Stock stock : job.stock().stream().sorted(ORDER).toList()) {
      boolean beaten =
          kept.stream().anyMatch(k -> k.limit() >= pieces && k.costMicros() <= stock.costMicros());
      if (stock.limit() > 0 && !beaten && holdsAny(job, stock)) {
        kept.add(stock);
      }
    }
    return List.copyOf(kept);
  }

  /** Returns the first piece that no stock there is can hold, if any. */
  static Optional<CutJob.Piece> tooLong(CutJob job) {
    return job.pieces().stream()
        .filter(p -> job.stock().stream().noneMatch(s -> s.limit() > 0 && holds(job, s, p)))
        .max(Comparator.comparing(CutJob.Piece::length));
  }

  private static boolean holdsAny(CutJob job, CutJob.Stock stock) {
    return job.pieces().stream().anyMatch(p -> holds(job, stock, p));
  }

  private static boolean holds(CutJob job, CutJob.Stock stock, CutJob.Piece piece) {
    return !piece
        .length()
        .roundedUpTo(job.step())
        .isMoreThan(stock.length().roundedDownTo(job.step()));
  }
}
