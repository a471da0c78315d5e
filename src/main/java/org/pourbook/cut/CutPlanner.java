package org.pourbook.cut;

/** Plans how pieces are cut from stock. Deterministic: the same job gives the same plan. */
@FunctionalInterface
public interface CutPlanner {

  /**
   * Returns a plan for the job, or why there is none. Where no stock has a price, total length of
   * stock is kept low instead and cost and bound are zero; {@link CutJob#pricedByLength} tells how
   * good such a plan is.
   */
  CutResult plan(CutJob job);
}
