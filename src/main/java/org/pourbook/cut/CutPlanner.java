package org.pourbook.cut;

/** Plans how pieces are cut from stock. Deterministic: the same job gives the same plan. */
@FunctionalInterface
public interface CutPlanner {

  /** Returns a plan for the job, or why there is none. */
  CutResult plan(CutJob job);
}
