package org.pourbook.cut;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Chooses where the joints of runs lie: full lengths first; then what the linear program over
 * divisions suggests; then changes of single kinds of runs, as long as they make a cheaper plan.
 * Full lengths first stand where nothing is found that is cheaper.
 */
final class RunSearch {
  private static final int LEAST_DIVISIONS = 12;

  /** Ways to round the linear program over divisions. */
  private static final int ROUNDINGS = 3;

  /** A plan of so many lengths counts as one; of more it takes longer, so fewer are made. */
  private static final int LENGTHS = 40;

  private final CutJob job;
  private final List<RunKind> kinds;
  private final RunPlans plans;
  private final Effort effort;
  private final Set<RunChoice> tried = new HashSet<>();
  private RunChoice best;
  private CutResult.@Nullable Planned plan;

  private RunSearch(
      CutJob job, List<RunKind> kinds, RunPlans plans, Effort effort, RunChoice first) {
    this.job = job;
    this.kinds = kinds;
    this.plans = plans;
    this.effort = effort;
    this.best = first;
  }

  /**
   * Returns a choice that is no dearer than the first one.
   *
   * @param plan of the first choice, if there is one
   * @param boundMicros of the cost wherever joints lie: where it is reached the search ends
   */
  static RunChoice from(
      RunChoice first,
      Optional<CutResult.Planned> plan,
      long boundMicros,
      CutJob job,
      List<RunKind> kinds,
      RunPlans plans,
      Effort effort) {
    RunSearch search = new RunSearch(job, kinds, plans, effort, first);
    search.plan = plan.orElse(null);
    search.run(boundMicros);
    return search.best;
  }

  private long cost() {
    return plan == null ? Long.MAX_VALUE : plan.costMicros();
  }

  private void run(long boundMicros) {
    for (int gathering = 0;
        gathering < effort.runs().gatherings() && cost() > boundMicros;
        gathering++) {
      RunChoice before = best;
      List<List<List<Long>>> divisions = divisions();
      Optional<RunRelaxation.Result> lp = RunRelaxation.solve(job, kinds, divisions, effort);
      if (lp.isPresent() && attainable(lp.get().costMicros()) >= cost()) {
        return;
      }
      double[][] times = lp.map(RunRelaxation.Result::times).orElse(new double[kinds.size()][]);
      for (int way = 0; way < ROUNDINGS && lp.isPresent() && cost() > boundMicros; way++) {
        tries(RunRounding.of(kinds, divisions, times, way));
      }
      int left = effort.runs().plans() * LENGTHS / Math.max(LENGTHS, lengths(divisions));
      while (left > 0 && cost() > boundMicros) {
        int made = improve(divisions, times, left);
        left = made > 0 ? left - made : 0;
      }
      if (best.equals(before)) {
        return;
      }
    }
  }

  /** Returns the least cost from here on that prices can add up to at all. */
  private long attainable(double costMicros) {
    BigInteger unit = BigInteger.ZERO;
    for (CutJob.Stock stock : job.stock()) {
      unit = unit.gcd(BigInteger.valueOf(stock.costMicros()));
    }
    double each = Math.max(1, unit.longValueExact());
    return (long) (Math.ceil(costMicros / each - RunRounding.WHOLE) * each);
  }

  private List<List<List<Long>>> divisions() {
    List<CutJob.Piece> pieces = new ArrayList<>(job.pieces());
    pieces.addAll(RunChoice.pieces(best.divisions(kinds)));
    Set<Long> marks = new LinkedHashSet<>();
    if (plan != null) {
      marks.addAll(RunMarks.of(job, plan));
    }
    marks.addAll(RunMarks.of(job, pieces));
    int most = Math.max(LEAST_DIVISIONS, effort.runs().divisions() / kinds.size());
    List<List<List<Long>>> divisions = new ArrayList<>();
    for (int r = 0; r < kinds.size(); r++) {
      Set<List<Long>> all = new LinkedHashSet<>(best.times().get(r).keySet());
      all.addAll(RunDivisions.of(kinds.get(r), job, marks, most));
      divisions.add(List.copyOf(all));
    }
    return divisions;
  }

  private int lengths(List<List<List<Long>>> divisions) {
    Set<Long> lengths = new HashSet<>();
    job.pieces().forEach(piece -> lengths.add(piece.length().nanometres()));
    best.times().forEach(kind -> kind.keySet().forEach(lengths::addAll));
    return lengths.size() + divisions.size();
  }

  /**
   * Tries to divide some runs of a kind otherwise; returns how many plans were made, 0 at an end.
   */
  private int improve(List<List<List<Long>>> divisions, double[][] times, int most) {
    int made = 0;
    RunChoice from = best;
    for (int r = 0; r < kinds.size(); r++) {
      List<List<Long>> order = likelyFirst(divisions.get(r), times[r]);
      for (Map.Entry<List<Long>, Integer> now : from.times().get(r).entrySet()) {
        for (List<Long> to : order) {
          for (int runs : amounts(now.getValue())) {
            if (made >= most) {
              return made;
            }
            if (!to.equals(now.getKey())) {
              made += tries(from.moved(r, now.getKey(), to, runs)) ? 1 : 0;
            }
            if (!best.equals(from)) {
              return made;
            }
          }
        }
      }
    }
    return 0;
  }

  private static List<List<Long>> likelyFirst(
      List<List<Long>> divisions, double @Nullable [] times) {
    if (times == null) {
      return divisions;
    }
    return IntStream.range(0, divisions.size())
        .boxed()
        .sorted(Comparator.comparingDouble((Integer d) -> -times[d]).thenComparing(d -> d))
        .map(divisions::get)
        .toList();
  }

  private static Collection<Integer> amounts(int all) {
    return new LinkedHashSet<>(Arrays.asList(all, (all + 1) / 2, 1));
  }

  /** Takes a choice where its plan is cheaper; returns whether it was not tried before. */
  private boolean tries(RunChoice choice) {
    if (!tried.add(choice)) {
      return false;
    }
    Optional<CutResult.Planned> made = plans.quick(choice);
    if (made.isPresent() && made.get().costMicros() < cost()) {
      best = choice;
      plan = made.get();
    }
    return true;
  }
}
