package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cheapest choice of a {@link StopProblem}.
 *
 * <p>Up to twelve stops, every set of stops is bounded from below by each item's cheapest way
 * within it and each stop's least cost; sets are taken by their bound until none can be better.
 * Where fees hang on the goods (free-from limits, minimums), a set is searched by branch and bound.
 * With more stops all of them are one set, whose stops need not all be used.
 */
final class StopSearch {

  /** Stops of which all sets are tried. */
  static final int MOST_STOPS = 12;

  /**
   * What was found.
   *
   * @param chosen index of the way of each item
   * @param boundMicros no choice costs less; equal to the cost when proven
   */
  record Found(List<Integer> chosen, long costMicros, long boundMicros) {
    Found {
      chosen = List.copyOf(chosen);
    }

    boolean isProven() {
      return costMicros == boundMicros;
    }
  }

  private record StopSet(boolean[] stops, long boundMicros) {}

  private final StopProblem problem;
  private final StopBranch.Best best;

  private StopSearch(StopProblem problem, int nodeLimit) {
    this.problem = problem;
    this.best = new StopBranch.Best(problem, nodeLimit);
  }

  /** Returns the cheapest choice, the same for the same problem. */
  static Found cheapest(StopProblem problem, int nodeLimit) {
    StopSearch search = new StopSearch(problem, nodeLimit);
    if (problem.stops().size() <= MOST_STOPS) {
      search.sets();
    } else {
      search.all();
    }
    return search.best.found();
  }

  private void sets() {
    List<StopSet> sets = new ArrayList<>();
    for (int mask = 0; mask < 1 << problem.stops().size(); mask++) {
      boolean[] stops = stopsOf(mask);
      StopBranch branch = new StopBranch(problem, stops, true, best);
      if (branch.isPossible()) {
        sets.add(new StopSet(stops, branch.rootBound()));
      }
    }
    sets.sort(Comparator.comparingLong(StopSet::boundMicros));
    for (StopSet set : sets) {
      if (set.boundMicros() >= best.costMicros()) {
        return;
      }
      new StopBranch(problem, set.stops(), true, best).search();
    }
  }

  private boolean[] stopsOf(int mask) {
    boolean[] stops = new boolean[problem.stops().size()];
    for (int stop = 0; stop < stops.length; stop++) {
      stops[stop] = (mask >> stop & 1) == 1;
    }
    return stops;
  }

  /** Closes stops one by one while that saves, then searches with all of them open. */
  private void all() {
    boolean[] open = new boolean[problem.stops().size()];
    IntStream.range(0, open.length).forEach(stop -> open[stop] = true);
    new StopBranch(problem, open, false, best).offerCheapestWays();
    boolean saved = true;
    while (saved) {
      saved = false;
      for (int stop = 0; stop < open.length; stop++) {
        saved |= open[stop] && closingSaves(open, stop);
      }
    }
    IntStream.range(0, open.length).forEach(stop -> open[stop] = true);
    new StopBranch(problem, open, false, best).search();
  }

  private boolean closingSaves(boolean[] open, int stop) {
    long before = best.costMicros();
    open[stop] = false;
    StopBranch branch = new StopBranch(problem, open, false, best);
    if (branch.isPossible()) {
      branch.offerCheapestWays();
    }
    boolean saves = best.costMicros() < before;
    open[stop] = !saves;
    return saves;
  }
}
