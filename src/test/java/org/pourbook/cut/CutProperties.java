package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Small invented jobs; the seed is in every message. */
class CutProperties {
  private static final int JOBS = 400;
  private final CutPlanner planner = OptimalPlanner.proving();

  @Test
  void smallJobsCostWhatExhaustiveSearchFinds() {
    int proven = 0;
    int impossible = 0;
    for (long seed = 0; seed < JOBS; seed++) {
      CutJob job = job(seed);
      long least = ExhaustiveSearch.leastCost(job);
      CutResult result = planner.plan(job);
      if (least == ExhaustiveSearch.NONE) {
        assertInstanceOf(CutResult.Impossible.class, result, "seed " + seed);
        impossible++;
        continue;
      }
      CutResult.Planned plan = assertInstanceOf(CutResult.Planned.class, result, "seed " + seed);
      assertEquals(least, plan.costMicros(), "cost, seed " + seed);
      assertTrue(plan.boundMicros() <= least, "bound, seed " + seed);
      proven += plan.isProven() ? 1 : 0;
    }
    assertTrue(impossible > 0, "some jobs have too little stock");
    assertTrue(proven + impossible >= 0.98 * JOBS, "proven " + proven + " of " + JOBS);
  }

  @Test
  void certainlyImpossibleJobsHaveNoPlan() {
    for (long seed = 0; seed < JOBS; seed++) {
      CutJob job = job(seed);
      if (planner.plan(job) instanceof CutResult.Impossible none && none.certain()) {
        assertEquals(ExhaustiveSearch.NONE, ExhaustiveSearch.leastCost(job), "seed " + seed);
      }
    }
  }

  @Test
  void noPlanIsDearerThanFirstFit() {
    for (RandomJobs.Family family : RandomJobs.Family.values()) {
      for (long seed = 0; seed < 5; seed++) {
        CutJob job = RandomJobs.job(family, 12, 60, seed);
        long quick = planned(new FirstFitPlanner().plan(job)).costMicros();
        CutResult.Planned usual = planned(OptimalPlanner.usual().plan(job));
        CutResult.Planned proving = planned(planner.plan(job));
        String where = family + " seed " + seed;
        assertTrue(usual.costMicros() <= quick, where);
        assertTrue(proving.boundMicros() <= usual.costMicros(), where);
        assertTrue(usual.boundMicros() <= proving.costMicros(), where);
      }
    }
  }

  /** Each was a board or some cents from its bound once. */
  @Test
  void oneLengthAndBarsOfManyLengthsAreProven() {
    // The linear program cuts more of some lengths than are wanted; solving what is left again
    // helps
    // as well.
    assertProven(RandomJobs.Family.ONE_LONG, 200, 10_000, 1);
    // The bound follows from linear programs of single purchases alone.
    assertProven(RandomJobs.Family.BARS_LONG, 200, 1_000, 1);
    // What is left must be solved again before more of it is rounded.
    assertProven(RandomJobs.Family.BARS_LONG, 200, 10_000, 1);
  }

  private static void assertProven(RandomJobs.Family family, int lengths, int pieces, long seed) {
    CutJob job = RandomJobs.job(family, lengths, pieces, seed);
    CutResult.Planned plan = planned(OptimalPlanner.usual().plan(job));
    assertEquals(plan.boundMicros(), plan.costMicros(), family + " " + lengths + " seed " + seed);
  }

  @Test
  void scalingAllLengthsChangesNothing() {
    for (long seed = 0; seed < JOBS; seed += 5) {
      CutJob job = job(seed);
      CutJob larger = scaled(job, 3);
      CutResult plan = planner.plan(job);
      CutResult largerPlan = planner.plan(larger);
      if (plan instanceof CutResult.Planned a && largerPlan instanceof CutResult.Planned b) {
        assertEquals(a.costMicros(), b.costMicros(), "seed " + seed);
        assertEquals(a.boundMicros(), b.boundMicros(), "seed " + seed);
        assertEquals(shape(a, 3), shape(b, 1), "seed " + seed);
      } else {
        assertEquals(plan.getClass(), largerPlan.getClass(), "seed " + seed);
      }
    }
  }

  @Test
  void moreStockToChooseFromNeverCostsMoreThanTheSlack() {
    for (long seed = 0; seed < 60; seed++) {
      CutJob job = RandomJobs.job(RandomJobs.Family.BARS_SHORT, 8, 40, seed);
      CutResult.Planned before = planned(OptimalPlanner.usual().plan(job));
      List<CutJob.Stock> more = new ArrayList<>(job.stock());
      more.add(new CutJob.Stock("30 ft", CutJobs.STEP.times(5760), 17_000_000, 5));
      CutResult.Planned after =
          planned(
              OptimalPlanner.usual().plan(new CutJob(job.pieces(), more, job.kerf(), job.step())));
      assertTrue(after.boundMicros() <= before.costMicros(), "seed " + seed);
      long slack = after.costMicros() - after.boundMicros();
      assertTrue(after.costMicros() <= before.costMicros() + slack, "seed " + seed);
    }
  }

  private static List<List<Object>> shape(CutResult.Planned plan, long factor) {
    return plan.patterns().stream()
        .map(
            p ->
                List.<Object>of(
                    p.stock().id(),
                    p.times(),
                    p.offcut().times(factor),
                    p.cuts().stream()
                        .map(c -> List.of(c.length().times(factor), c.count()))
                        .toList()))
        .toList();
  }

  private static CutJob scaled(CutJob job, long factor) {
    return new CutJob(
        job.pieces().stream()
            .map(p -> new CutJob.Piece(p.length().times(factor), p.count(), p.goesTo()))
            .toList(),
        job.stock().stream()
            .map(s -> new CutJob.Stock(s.id(), s.length().times(factor), s.costMicros(), s.limit()))
            .toList(),
        job.kerf().times(factor),
        job.step().times(factor));
  }

  /** Up to 9 pieces of up to 4 lengths; kerfs, limits and free offcuts come up. */
  private static CutJob job(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    CutJobs job = new CutJobs().kerf(random.nextInt(3));
    int stocks = 1 + random.nextInt(3);
    for (int k = 0; k < stocks; k++) {
      boolean free = random.nextInt(5) == 0;
      int limit = random.nextInt(3) == 0 || free ? 1 + random.nextInt(3) : Integer.MAX_VALUE;
      job.stock(20 + random.nextInt(30), free ? 0 : 50 + random.nextInt(60), limit);
    }
    int lengths = 1 + random.nextInt(4);
    for (int i = 0; i < lengths; i++) {
      job.piece(5 + random.nextInt(18), 1 + random.nextInt(i == 0 ? 3 : 2), "p" + i);
    }
    return job.build();
  }

  private static CutResult.Planned planned(CutResult result) {
    return assertInstanceOf(CutResult.Planned.class, result);
  }
}
