package org.pourbook.buy;

import java.util.List;
import org.pourbook.problem.Problem;

/**
 * Everything bought for a batch of jobs.
 *
 * @param lines rows of Materials: by job in the batch's order, then material, size
 * @param offcuts what lies in the yard after the cutting
 * @param totals one a job, in the batch's order
 * @param problems materials that cannot be cut from what is on offer, and the like; with places in
 *     the price book or the job
 */
public record Bought(
    List<Line> lines,
    List<Order> orders,
    List<Load> loads,
    List<CutSheet> cutSheets,
    List<OnHand> offcuts,
    List<JobTotals> totals,
    List<BuyCaution> cautions,
    List<Problem> problems) {
  public Bought {
    lines = List.copyOf(lines);
    orders = List.copyOf(orders);
    loads = List.copyOf(loads);
    cutSheets = List.copyOf(cutSheets);
    offcuts = List.copyOf(offcuts);
    totals = List.copyOf(totals);
    cautions = List.copyOf(cautions);
    problems = List.copyOf(problems);
  }

  /** A caution that buying found, of a job. */
  public record BuyCaution(String job, String section, String says, String rule) {}
}
