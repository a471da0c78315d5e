package org.pourbook.desk;

import java.util.List;
import org.pourbook.buy.Bought;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.TakeOff;

/**
 * A priced order for a batch of jobs: everything that the order workbook holds.
 *
 * @param takeOffs one a sound job, in the batch's order
 * @param problems of the input and of buying, sorted by place
 * @param version of the tool
 */
public record Estimate(
    Batch batch, List<TakeOff> takeOffs, Bought bought, List<Problem> problems, String version) {
  public Estimate {
    takeOffs = List.copyOf(takeOffs);
    problems = List.copyOf(problems);
  }
}
