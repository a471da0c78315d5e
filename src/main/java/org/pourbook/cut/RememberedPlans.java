package org.pourbook.cut;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans by another planner and remembers what was asked last: jobs of a season that are built after
 * one plan want the same pieces. Since a planner gives the same plan for the same job, whatever is
 * forgotten, or planned by two threads at once, changes no plan. Threads may share it.
 */
public final class RememberedPlans implements CutPlanner {

  /** Pieces, runs, stock and cuts of all that is remembered: some megabytes. */
  private static final int MOST_PARTS = 100_000;

  private final CutPlanner planner;
  private final int mostParts;
  private final Map<CutJob, CutResult> plans = new LinkedHashMap<>(16, 0.75f, true);
  private int parts;

  RememberedPlans(CutPlanner planner, int mostParts) {
    this.planner = planner;
    this.mostParts = mostParts;
  }

  /** Returns a planner that asks {@code planner} for what it has not been asked of late. */
  public static RememberedPlans of(CutPlanner planner) {
    return new RememberedPlans(planner, MOST_PARTS);
  }

  @Override
  public CutResult plan(CutJob job) {
    return remembered(job)
        .orElseGet(
            () -> {
              CutResult result = planner.plan(job);
              remember(job, result);
              return result;
            });
  }

  private synchronized Optional<CutResult> remembered(CutJob job) {
    return Optional.ofNullable(plans.get(job));
  }

  private synchronized void remember(CutJob job, CutResult result) {
    if (plans.putIfAbsent(job, result) == null) {
      parts += parts(job, result);
    }
    Iterator<Map.Entry<CutJob, CutResult>> oldestFirst = plans.entrySet().iterator();
    while (parts > mostParts && oldestFirst.hasNext()) {
      Map.Entry<CutJob, CutResult> oldest = oldestFirst.next();
      parts -= parts(oldest.getKey(), oldest.getValue());
      oldestFirst.remove();
    }
  }

  private static int parts(CutJob job, CutResult result) {
    List<CutResult.Pattern> patterns =
        result instanceof CutResult.Planned plan ? plan.patterns() : List.of();
    return job.pieces().size()
        + job.runs().size()
        + job.stock().size()
        + patterns.stream().mapToInt(pattern -> 1 + pattern.cuts().size()).sum();
  }
}
