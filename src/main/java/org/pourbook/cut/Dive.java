package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;

/**
 * Rounds a relaxation to whole boards: fixes what is nearly whole, solves the relaxation of what is
 * left anew, and so on; each stage is also completed by {@link FirstFit}.
 */
final class Dive {
  private static final double WHOLE = 1e-6;

  private final CutModel model;
  private final Workshop workshop;
  private final List<Packing.Lot> fixed = new ArrayList<>();
  private final int[] wanted;
  private final int[] left;
  private long fixedCost;
  private Optional<Packing> best;

  private Dive(CutModel model, Workshop workshop, Optional<Packing> best) {
    this.model = model;
    this.workshop = workshop;
    this.wanted = model.demand().clone();
    this.left = model.limit().clone();
    this.best = best;
  }

  /**
   * Returns the best packing found, or {@code best} where none is better.
   *
   * @param root relaxation of the whole model
   * @param roundUp fractions at least this large are rounded up, the largest one in any case
   */
  static Optional<Packing> from(
      CutModel model,
      Workshop workshop,
      Relaxation.Result root,
      double roundUp,
      Optional<Packing> best) {
    Dive dive = new Dive(model, workshop, best);
    dive.run(root, roundUp);
    return dive.best;
  }

  private void run(Relaxation.Result root, double roundUp) {
    Relaxation.Result lp = root;
    while (lp.complete() && !isHopeless(lp.bound()) && !workshop.steps().areSpent()) {
      round(lp, roundUp);
      complete();
      if (IntStream.of(wanted).allMatch(w -> w == 0)) {
        return;
      }
      CutModel rest = model.withDemand(wanted.clone()).withLimit(left.clone());
      lp = Relaxation.solve(rest, workshop, lp.columns());
    }
  }

  private boolean isHopeless(OptionalLong bound) {
    return bound.isEmpty()
        || (best.isPresent() && fixedCost + bound.getAsLong() >= best.get().cost());
  }

  private void round(Relaxation.Result lp, double roundUp) {
    double[] fraction = new double[lp.times().length];
    boolean any = false;
    for (int j = 0; j < fraction.length; j++) {
      int whole = (int) Math.floor(lp.times()[j] + WHOLE);
      fraction[j] = lp.times()[j] - whole;
      any |= fix(lp.columns().get(j), whole);
    }
    List<Integer> largestFirst =
        IntStream.range(0, fraction.length)
            .filter(j -> fraction[j] > WHOLE)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer j) -> -fraction[j])
                    .thenComparing(j -> lp.columns().get(j), Column.ORDER))
            .toList();
    for (int j : largestFirst) {
      if (any && fraction[j] < roundUp) {
        break;
      }
      any |= fix(lp.columns().get(j), 1);
    }
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
  }
}
