package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.pourbook.measure.Length;

/**
 * A cut job as a {@link CutModel}, and what is needed to write a packing of it as a plan.
 *
 * @param lengths cut lengths on the step, in the model's order
 * @param labels the pieces of each length, in the job's order
 * @param stocks the stock of each index of the model
 * @param unit nanometres in a unit of width
 * @param costUnit in micros
 */
record Normalised(
    CutModel model,
    List<Length> lengths,
    List<List<CutJob.Piece>> labels,
    List<CutJob.Stock> stocks,
    long unit,
    long costUnit) {

  /**
   * Returns the job in whole units; stock that another beats in every way is left out.
   *
   * @throws ArithmeticException if there are more pieces than an {@code int} counts
   */
  static Normalised of(CutJob job) {
    TreeMap<Length, List<CutJob.Piece>> byLength = new TreeMap<>(Comparator.reverseOrder());
    for (CutJob.Piece piece : job.pieces()) {
      byLength
          .computeIfAbsent(piece.length().roundedUpTo(job.step()), l -> new ArrayList<>())
          .add(piece);
    }
    List<Length> lengths = List.copyOf(byLength.keySet());
    List<List<CutJob.Piece>> labels = byLength.values().stream().map(List::copyOf).toList();
    int[] demand = labels.stream().mapToInt(Normalised::count).toArray();
    List<CutJob.Stock> stocks = Offers.worthKeeping(job);
    long[] width = lengths.stream().mapToLong(l -> l.plus(job.kerf()).nanometres()).toArray();
    long[] size = stocks.stream().mapToLong(s -> size(job, s)).toArray();
    long[] cost = stocks.stream().mapToLong(CutJob.Stock::costMicros).toArray();
    long unit = Math.max(1, gcd(width));
    long costUnit = Math.max(1, gcd(cost));
    divide(width, unit);
    divide(size, unit);
    divide(cost, costUnit);
    int pieces = new CutModel(width, demand, size, cost, demand).pieces();
    int[] limit = stocks.stream().mapToInt(s -> Math.min(pieces, s.limit())).toArray();
    return new Normalised(
        new CutModel(width, demand, size, cost, limit), lengths, labels, stocks, unit, costUnit);
  }

  private static int count(List<CutJob.Piece> alike) {
    return Math.toIntExact(alike.stream().mapToLong(CutJob.Piece::count).sum());
  }

  private static long size(CutJob job, CutJob.Stock stock) {
    return stock.length().roundedDownTo(job.step()).plus(job.kerf()).nanometres();
  }

  private static long gcd(long[] values) {
    long gcd = 0;
    for (long value : values) {
      long a = gcd;
      long b = value;
      while (b != 0) {
        long rest = a % b;
        a = b;
        b = rest;
      }
      gcd = a;
    }
    return gcd;
  }

  /** Sizes are rounded down: widths add up to multiples of the unit only. */
  private static void divide(long[] values, long divisor) {
    for (int i = 0; i < values.length; i++) {
      values[i] /= divisor;
    }
  }
}
