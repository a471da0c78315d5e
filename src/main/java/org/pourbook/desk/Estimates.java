package org.pourbook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import org.pourbook.buy.Bought;
import org.pourbook.buy.CutOrBought;
import org.pourbook.cut.CutPlanner;
import org.pourbook.cut.RememberedPlans;
import org.pourbook.job.Job;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.Alike;
import org.pourbook.takeoff.TakeOff;
import org.pourbook.takeoff.TakeOffs;

/** The builder's desk. */
public final class Estimates {

  private Estimates() {}

  /**
   * Returns the estimate of a batch: jobs taken off, then bought together. Jobs that come to more
   * than can be counted are left out.
   *
   * @param problems of the input, to which those of buying are added
   * @param progress told how many jobs are taken off, by any thread
   */
  public static Estimate estimate(
      Batch batch,
      List<Problem> problems,
      CutPlanner planner,
      String version,
      IntConsumer progress) {
    Checked<List<TakeOff>> within = JobsWithin.of(takeOffs(batch, progress), batch.prices());
    CutOrBought.Result result =
        CutOrBought.buy(
            within.value(), batch.prices(), RememberedPlans.of(planner), batch.onHand());
    Bought bought = result.bought();
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(within.problems());
    all.addAll(bought.problems());
    all.sort(Comparator.comparing(Problem::place));
    List<Job> jobs = result.takeOffs().stream().map(TakeOff::job).toList();
    return new Estimate(batch.of(jobs), result.takeOffs(), bought, all, version);
  }

  private static List<TakeOff> takeOffs(Batch batch, IntConsumer progress) {
    Alike alike = new Alike();
    AtomicInteger done = new AtomicInteger();
    return batch.jobs().parallelStream()
        .map(
            job -> {
              TakeOff takeOff = alike.of(TakeOffs.of(job, batch.prices()));
              progress.accept(done.incrementAndGet());
              return takeOff;
            })
        .toList();
  }
}
