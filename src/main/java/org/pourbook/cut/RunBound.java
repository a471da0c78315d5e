package org.pourbook.cut;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * A bound of the cost wherever the joints of runs lie, their number being given: of each piece of a
 * run only what it has at least is a piece here, the rest may be cut in grains, without a kerf. Any
 * plan gives such a plan for the same stock.
 */
final class RunBound {
  /** A stock length is no more than so many grains. */
  private static final long MOST_GRAINS = 20_000;

  /** Fewer pieces than there are give a lower bound, which stays one. */
  private static final long MOST_PIECES = 1_000_000_000L;

  private final CutJob job;
  private final Effort effort;
  private final TreeMap<Long, Long> byWidth = new TreeMap<>(Comparator.reverseOrder());
  private long loose;

  private RunBound(CutJob job, Effort effort) {
    this.job = job;
    this.effort = effort;
  }

  /**
   * Returns the bound in micros; empty where the stock is certainly not enough.
   *
   * @param kinds of the job's runs, each with a division
   * @param known cost of some plan in micros, if any
   */
  static OptionalLong of(CutJob job, List<RunKind> kinds, OptionalLong known, Effort effort) {
    RunBound bound = new RunBound(job, effort);
    bound.gather(kinds);
    List<CutJob.Stock> stock =
        job.stock().stream()
            .filter(s -> s.limit() > 0)
            .sorted(Comparator.comparing(CutJob.Stock::length).reversed())
            .toList();
    return bound.of(stock, known);
  }

  private void gather(List<RunKind> kinds) {
    long kerf = job.kerf().nanometres();
    for (CutJob.Piece piece : job.pieces()) {
      long width = piece.length().roundedUpTo(job.step()).nanometres() + kerf;
      byWidth.merge(width, (long) piece.count(), Math::addExact);
    }
    for (RunKind kind : kinds) {
      long courses = Math.multiplyExact((long) kind.count(), kind.courses());
      long left = kind.total();
      for (int place = 0; place < kind.pieces(); place++) {
        long least = Math.min(left, kind.atLeast(place));
        left -= least;
        byWidth.merge(least + kerf, courses, Math::addExact);
      }
      loose = Math.addExact(loose, Math.multiplyExact(left, courses));
    }
  }

  private OptionalLong of(List<CutJob.Stock> stock, OptionalLong known) {
    long grain = grain(stock);
    List<Long> widths = new ArrayList<>();
    List<Integer> demand = new ArrayList<>();
    for (Map.Entry<Long, Long> piece : byWidth.entrySet()) {
      widths.add(piece.getKey() / grain);
      demand.add((int) Math.min(MOST_PIECES, piece.getValue()));
    }
    if (loose >= grain) {
      widths.add(1L);
      demand.add((int) Math.min(MOST_PIECES, loose / grain));
    }
    long costUnit = 0;
    for (CutJob.Stock s : stock) {
      costUnit =
          BigInteger.valueOf(costUnit).gcd(BigInteger.valueOf(s.costMicros())).longValueExact();
    }
    long unit = Math.max(1, costUnit);
    int[] pieces = demand.stream().mapToInt(d -> d).toArray();
    long all = demand.stream().mapToLong(d -> d).sum();
    int most = (int) Math.min(Integer.MAX_VALUE - 1L, all);
    CutModel model =
        new CutModel(
            widths.stream().mapToLong(w -> w).toArray(),
            pieces,
            stock.stream().mapToLong(s -> size(s, grain)).toArray(),
            stock.stream().mapToLong(s -> s.costMicros() / unit).toArray(),
            stock.stream().mapToInt(s -> Math.min(most, s.limit())).toArray());
    OptionalLong bound = bound(model, known.isPresent() ? known.getAsLong() / unit : -1);
    return bound.isPresent() ? OptionalLong.of(bound.getAsLong() * unit) : bound;
  }

  /** Sizes are rounded up to the grain and widths down, so that the bound stays one. */
  private long size(CutJob.Stock stock, long grain) {
    long size = stock.length().roundedDownTo(job.step()).plus(job.kerf()).nanometres();
    return -Math.floorDiv(-size, grain);
  }

  private long grain(List<CutJob.Stock> stock) {
    BigInteger grain = BigInteger.valueOf(loose);
    for (long width : byWidth.keySet()) {
      grain = grain.gcd(BigInteger.valueOf(width));
    }
    long longest = 1;
    for (CutJob.Stock s : stock) {
      long size = size(s, 1);
      grain = grain.gcd(BigInteger.valueOf(size));
      longest = Math.max(longest, size);
    }
    return Math.max(Math.max(1, grain.longValueExact()), longest / MOST_GRAINS + 1);
  }

  private OptionalLong bound(CutModel model, long known) {
    OptionalLong bound = CoverBound.byLength(model);
    Optional<Knapsack> knapsack = Knapsack.ofGrains(model, effort.sums());
    if (bound.isEmpty() || knapsack.isEmpty() || bound.getAsLong() == known) {
      return bound;
    }
    try {
      Workshop workshop =
          new Workshop(knapsack.get(), effort, new Effort.Steps(effort.steps() / 10));
      List<Column> seeds =
          FirstFit.pack(model)
              .map(p -> p.lots().stream().map(Packing.Lot::column).toList())
              .orElse(List.of());
      Relaxation.Result lp = Relaxation.solve(model, workshop, seeds);
      if (lp.bound().isEmpty()) {
        return lp.bound();
      }
      long best = Math.max(bound.getAsLong(), lp.bound().getAsLong());
      best = Purchases.raised(model, lp.certificate(), best, known, workshop.steps());
      Relaxation.Certificate byLength = Relaxation.Certificate.byLength(model, knapsack.get());
      return OptionalLong.of(Purchases.raised(model, byLength, best, known, workshop.steps()));
    } catch (ArithmeticException e) {
      return bound; // the linear program went astray; the bound by length stands
    }
  }
}
