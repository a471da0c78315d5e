package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Small invented jobs with runs; the seed is in every message. */
class RunProperties {
  private static final int JOBS = 120;

  /** Butted and lapped runs, kerfs, limits, free offcuts, courses, chains of three runs. */
  @Test
  void smallRunsCostWhatExhaustiveSearchFinds() {
    int impossible = 0;
    int proven = 0;
    int cheaper = 0;
    for (long seed = 0; seed < JOBS; seed++) {
      CutJob job = job(seed);
      long least = ExhaustiveRuns.leastCost(job);
      CutResult result = OptimalPlanner.proving().plan(job);
      if (least == ExhaustiveSearch.NONE) {
        assertInstanceOf(CutResult.Impossible.class, result, "seed " + seed);
        impossible++;
        continue;
      }
      CutResult.Planned plan = planned(result, seed);
      assertEquals(least, plan.costMicros(), "cost, seed " + seed);
      assertTrue(plan.anywhereMicros() <= least, "bound, seed " + seed);
      proven += plan.isProvenAnywhere() ? 1 : 0;
      cheaper += fullFirst(job) > least ? 1 : 0;
    }
    assertTrue(impossible > 0, "some jobs have too little stock");
    assertTrue(cheaper > 0.1 * JOBS, "cheaper than full lengths first: " + cheaper);
    assertTrue(proven + impossible >= 0.85 * JOBS, "proven " + proven + " of " + JOBS);
  }

  @Test
  void theUsualEffortIsNeverDearerThanFullLengthsFirst() {
    for (long seed = 0; seed < 3 * JOBS; seed++) {
      CutJob job = job(seed);
      if (OptimalPlanner.usual().plan(job) instanceof CutResult.Planned plan) {
        assertTrue(plan.costMicros() <= fullFirst(job), "seed " + seed);
      }
    }
  }

  /** Boards as jobs have them: butted runs in whole inches beside pieces. */
  @Test
  void jobsOfRealSizeAreCheaperAndWithinTheirBound() {
    long before = 0;
    long after = 0;
    for (long seed = 0; seed < 6; seed++) {
      CutJob job = boards(seed);
      CutResult.Planned plan = planned(OptimalPlanner.usual().plan(job), seed);
      assertTrue(plan.anywhereMicros() > 0.9 * plan.costMicros(), "bound, seed " + seed);
      before += fullFirst(job);
      after += plan.costMicros();
    }
    assertTrue(after < 0.995 * before, "after " + after + ", before " + before);
  }

  private static CutResult.Planned planned(CutResult result, long seed) {
    return assertInstanceOf(CutResult.Planned.class, result, "seed " + seed);
  }

  /** Returns what the best plan of runs divided full lengths first costs. */
  private static long fullFirst(CutJob job) {
    CutResult result =
        RunPlans.plan(job, model -> CutSearch.find(model, Effort.PROVING), Optional.empty());
    return result instanceof CutResult.Planned plan ? plan.costMicros() : Long.MAX_VALUE;
  }

  /** One to three runs of two or three pieces, some capped, beside up to four pieces. */
  private static CutJob job(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    CutJobs job = new CutJobs().kerf(random.nextInt(3));
    int stocks = 1 + random.nextInt(3);
    long longest = 0;
    for (int k = 0; k < stocks; k++) {
      boolean free = random.nextInt(5) == 0;
      int limit = random.nextInt(3) == 0 || free ? 1 + random.nextInt(3) : Integer.MAX_VALUE;
      long length = 12L + random.nextInt(14);
      longest = Math.max(length, longest);
      job.stock(length, free ? 0 : 20 + random.nextInt(30), limit);
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      job.piece(3 + random.nextInt(9), 1 + random.nextInt(2), "p" + i);
    }
    SplittableRandom caps = new SplittableRandom(~seed);
    long cap = caps.nextInt(3) == 0 ? longest - caps.nextInt(5) : CutJobs.ANY;
    longest = Math.min(longest, cap);
    boolean chain = random.nextInt(3) == 0;
    int runs = chain ? 3 : 1 + random.nextInt(2);
    for (int i = 0; i < runs; i++) {
      int joints = !chain && random.nextInt(3) == 0 ? 2 : 1;
      long lap = random.nextBoolean() ? 0 : 1 + random.nextInt(2);
      long shortest = 2 * lap + random.nextInt(4);
      long most = (joints + 1) * longest - joints * lap;
      long length = most - random.nextInt((int) longest - 2);
      int courses = chain || random.nextInt(4) > 0 ? 1 : 2;
      job.run(length, joints, lap, shortest, cap, courses, 1, "run" + i);
    }
    return job.build();
  }

  private static CutJob boards(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    CutJobs job = new CutJobs().kerf(2).stock(CutJobs.feet(8), 615).stock(CutJobs.feet(12), 935);
    job = job.stock(CutJobs.feet(16), 1270).stock(CutJobs.feet(20), 1700);
    for (int i = 0; i < 3; i++) {
      job.piece(16L * (24 + random.nextInt(200)), 1 + random.nextInt(8), "p" + i);
    }
    for (int i = 0; i < 4; i++) {
      int joints = 1 + random.nextInt(2);
      long inches = 240L * joints + 48 + random.nextInt(180);
      job.run(16 * inches, joints, 0, CutJobs.feet(4), 1 + random.nextInt(12));
    }
    return job.build();
  }
}
