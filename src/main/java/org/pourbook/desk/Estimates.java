package org.pourbook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import org.pourbook.buy.Bought;
import org.pourbook.buy.Buyer;
import org.pourbook.cut.CutPlanner;
import org.pourbook.job.Job;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.OnOffer;
import org.pourbook.takeoff.TakeOff;

/** The builder's desk. */
public final class Estimates {

  private Estimates() {}

  /**
   * Returns the estimate of a batch: jobs taken off, then bought together.
   *
   * @param problems of the input, to which those of buying are added
   * @param takeOff of one job, with what is on offer
   */
  public static Estimate estimate(
      Batch batch,
      List<Problem> problems,
      BiFunction<Job, OnOffer, TakeOff> takeOff,
      CutPlanner planner,
      String version) {
    List<TakeOff> takeOffs =
        batch.jobs().stream().map(job -> takeOff.apply(job, batch.prices())).toList();
    Bought bought = Buyer.buy(takeOffs, batch.prices(), planner);
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(bought.problems());
    all.sort(Comparator.comparing(Problem::place));
    return new Estimate(batch, takeOffs, bought, all, version);
  }
}
