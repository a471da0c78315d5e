package org.pourbook.cut;

import java.util.Optional;

/**
 * Plans by column generation with a bound certified in whole numbers, so a plan it calls proven is
 * the cheapest there is. Never dearer than {@link FirstFitPlanner}.
 */
public final class OptimalPlanner implements CutPlanner {
  private final Effort effort;

  private OptimalPlanner(Effort effort) {
    this.effort = effort;
  }

  /** Returns a planner that stops at a plan which is cheapest or a few cents from it. */
  public static OptimalPlanner usual() {
    return new OptimalPlanner(Effort.USUAL);
  }

  /** Returns a planner that goes on where a proof is still missing. */
  public static OptimalPlanner proving() {
    return new OptimalPlanner(Effort.PROVING);
  }

  @Override
  public CutResult plan(CutJob job) {
    return Planning.plan(job, model -> CutSearch.find(model, effort), Optional.of(effort));
  }
}
