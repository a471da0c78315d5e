package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Rounds a relaxation to whole boards: fixes what is nearly whole, solves the relaxation of what is
 * left anew, and so on; each stage is also completed by {@link FirstFit}, and by {@link BestFill}
 * near the end.
 */
final class Dive {
  private static final double WHOLE = 1e-6;

  /** Rounds of column generation that guide a quick rounding; its next stage goes on from there. */
  private static final int QUICK = 8;

  /** Rounds that solve what is left, near enough, before more of it is rounded. */
  private static final int THOROUGH = 200;

  private static final List<Long> FAVOURS = List.of(0L, 64L, 512L);

  /**
   * How fractions are rounded.
   *
   * @param roundUp those at least this large are rounded up, the largest one in any case
   * @param skipAt stage where the largest one is passed over, −1 for none
   * @param rounds of column generation at each stage
   */
  record Rounding(double roundUp, int skipAt, int rounds) {

    /** Ways that differ enough for one to succeed where others fail, quick ones first. */
    static final List<Rounding> ALL =
        Stream.of(
                of(QUICK, -1, 0.5, 0.7, 0.9, 0.8, 0.6),
                of(QUICK, 0, 0.5, 0.6, 0.7),
                of(THOROUGH, -1, 0.7, 0.9, 0.8),
                IntStream.range(0, 4)
                    .boxed()
                    .flatMap(skipAt -> of(THOROUGH, skipAt, 0.7, 0.8, 0.9)))
            .flatMap(ways -> ways)
            .toList();

    private static Stream<Rounding> of(int rounds, int skipAt, Double... roundUp) {
      return Stream.of(roundUp).map(up -> new Rounding(up, skipAt, rounds));
    }
  }

  private final CutModel model;
  private final Workshop workshop;
  private final List<Packing.Lot> fixed = new ArrayList<>();
  private final int[] wanted;
  private final int[] left;
  private long fixedCost;

  /** Width left from which on {@link BestFill} is tried: near the end, then at each half of it. */
  private long fillFrom;

  private Optional<Packing> best;

  private Dive(CutModel model, Workshop workshop, Optional<Packing> best) {
    this.model = model;
    this.workshop = workshop;
    this.wanted = model.demand().clone();
    this.left = model.limit().clone();
    this.best = best;
    this.fillFrom = BestFill.MOST_BOARDS * LongStream.of(model.size()).max().orElse(0);
  }

  /**
   * Returns the best packing found, or {@code best} where none is better.
   *
   * @param root relaxation of the whole model
   */
  static Optional<Packing> from(
      CutModel model,
      Workshop workshop,
      Relaxation.Result root,
      Rounding rounding,
      Optional<Packing> best) {
    Dive dive = new Dive(model, workshop, best);
    dive.run(root, rounding);
    return dive.best;
  }

  private void run(Relaxation.Result root, Rounding rounding) {
    int stage = 0;
    Relaxation.Result lp = root;
    while (lp.complete() && !isHopeless(lp.bound()) && !workshop.steps().areSpent()) {
      round(lp, rounding.roundUp(), stage++ == rounding.skipAt());
      complete();
      if (IntStream.of(wanted).allMatch(w -> w == 0)) {
        return;
      }
      CutModel rest = model.withDemand(wanted.clone()).withLimit(left.clone());
      lp = Relaxation.solve(rest, workshop, lp.columns(), rounding.rounds());
    }
  }

  private boolean isHopeless(OptionalLong bound) {
    return bound.isEmpty()
        || (best.isPresent() && fixedCost + bound.getAsLong() >= best.get().cost());
  }

  private void round(Relaxation.Result lp, double roundUp, boolean skipLargest) {
    double[] fraction = new double[lp.times().length];
    boolean any = false;
    for (int j = 0; j < fraction.length; j++) {
      int whole = (int) Math.floor(lp.times()[j] + WHOLE);
      fraction[j] = lp.times()[j] - whole;
      any |= fixTrimmed(lp.columns().get(j), whole);
    }
    List<Integer> largestFirst =
        IntStream.range(0, fraction.length)
            .filter(j -> fraction[j] > WHOLE)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer j) -> -fraction[j])
                    .thenComparing(j -> lp.columns().get(j), Column.ORDER))
            .toList();
    boolean skip = skipLargest && largestFirst.size() > 1;
    for (int j : skip ? largestFirst.subList(1, largestFirst.size()) : largestFirst) {
      if (any && fraction[j] < roundUp) {
        break;
      }
      any |= fix(lp.columns().get(j), 1);
    }
  }

  /**
   * Opens as many boards as the relaxation does. It cuts more of some lengths than are wanted: what
   * is not wanted any more is left out of the later ones.
   */
  private boolean fixTrimmed(Column column, int times) {
    int rest = left[column.stock()] - Math.min(times, left[column.stock()]);
    boolean any = false;
    Column trimmed = column;
    while (left[column.stock()] > rest && trimmed.item().length > 0) {
      any |= fix(trimmed, left[column.stock()] - rest);
      trimmed = trimmed.within(wanted);
    }
    return any;
  }

  /** Cuts a column as often as asked, as far as pieces are wanted and stock is left. */
  private boolean fix(Column column, int times) {
    int possible = Math.min(times, Math.min(left[column.stock()], column.timesWithin(wanted)));
    if (possible <= 0) {
      return false;
    }
    column.takeFrom(wanted, possible);
    left[column.stock()] -= possible;
    fixedCost += possible * model.cost()[column.stock()];
    fixed.add(new Packing.Lot(column, possible));
    return true;
  }

  private void complete() {
    for (boolean longestFirst : new boolean[] {false, true}) {
      best = Packing.better(best, FirstFit.pack(model, fixed, longestFirst));
    }
    long width = model.withDemand(wanted).totalWidth();
    if (width <= fillFrom) {
      fillFrom = width / 2;
      for (long favour : FAVOURS) {
        best = Packing.better(best, BestFill.pack(model, workshop, fixed, favour));
      }
    }
  }
}
