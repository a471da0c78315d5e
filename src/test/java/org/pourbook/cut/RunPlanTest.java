package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.cut.CutJobs.feet;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Runs small enough to plan by hand. */
class RunPlanTest {
  private final CutPlanner planner = OptimalPlanner.usual();

  @Test
  void aButtLiesWhereStockIsCheapest() {
    // 24 ft: 12 + 12 at $10 each; full lengths first would be 16 + 8, $14 + $10.
    CutJob job =
        new CutJobs().stock(feet(12), 1000).stock(feet(16), 1400).run(feet(24), 1, 0, 0, 1).build();
    CutResult.Planned plan = planned(job);
    assertEquals(20_000_000, plan.costMicros());
    assertEquals(List.of(feet(12), feet(12)), pieces(plan.divisions().get(0)));
    assertTrue(plan.isProvenAnywhere());
  }

  @Test
  void aLapIsCutTwice() {
    // 22 ft with a lap of 2 ft is 24 ft of bar, 24 ft with that lap 26 ft: no longer 12 + 12.
    CutJobs stock = new CutJobs().stock(feet(12), 1000).stock(feet(20), 1800);
    assertEquals(20_000_000, planned(stock.run(feet(22), 1, feet(2), 0, 1).build()).costMicros());
    CutJobs other = new CutJobs().stock(feet(12), 1000).stock(feet(20), 1800);
    assertEquals(28_000_000, planned(other.run(feet(24), 1, feet(2), 0, 1).build()).costMicros());
  }

  @Test
  void anOffcutOnHandTakesTheRestOfARun() {
    // 27 ft = 16 + 11 of hand, $8; full lengths first would be 20 ($11) and 7 of hand.
    CutJob job =
        new CutJobs()
            .stock(feet(16), 800)
            .stock(feet(20), 1100)
            .stock(feet(11), 0, 1)
            .run(feet(27), 1, 0, feet(4), 1)
            .build();
    assertEquals(8_000_000, planned(job).costMicros());
  }

  @Test
  void aKerfInASharedBoardCounts() {
    // Two runs of 21 ft of three 14 ft boards: the shared one is cut into 7 + 7 but for the kerf.
    assertEquals(30_000_000, planned(twoRuns(0)).costMicros());
    assertEquals(40_000_000, planned(twoRuns(2)).costMicros());
  }

  private static CutJob twoRuns(long kerf) {
    return new CutJobs().kerf(kerf).stock(feet(14), 1000).run(feet(21), 1, 0, 0, 2).build();
  }

  @Test
  void noPieceIsUnderTheShortest() {
    // 18 ft of 16 and 8 ft: 16 + 2 would be too short; 8 + 10 or 14 + 4 take a 16 and an 8.
    CutJob job =
        new CutJobs()
            .stock(feet(8), 500)
            .stock(feet(16), 900)
            .run(feet(18), 1, 0, feet(4), 1)
            .build();
    CutResult.Planned plan = planned(job);
    assertEquals(14_000_000, plan.costMicros());
    assertTrue(pieces(plan.divisions().get(0)).stream().allMatch(piece -> piece >= feet(4)));
  }

  /** A run of 50 ft was given two laps for bars of 20 ft: 40 + 10 + 4 would be a lap too many. */
  @Test
  void noPieceIsLongerThanTheJointsWereCountedBy() {
    CutJob job =
        new CutJobs()
            .stock(feet(20), 1000)
            .stock(feet(40), 1800)
            .run(feet(50), 2, feet(2), feet(4), feet(20), 1, 1, "mat")
            .build();
    CutResult.Planned plan = planned(job);
    assertEquals(28_000_000, plan.costMicros());
    assertTrue(pieces(plan.divisions().get(0)).stream().allMatch(piece -> piece <= feet(20)));
    assertTrue(plan.isProvenAnywhere());
  }

  @Test
  void coursesAreButtedAtTheSamePlaces() {
    CutJob job =
        new CutJobs()
            .stock(feet(12), 1000)
            .stock(feet(16), 1400)
            .run(feet(24), 1, 0, 0, 2, 3, "wall")
            .build();
    CutResult.Planned plan = planned(job);
    assertEquals(120_000_000, plan.costMicros());
    assertEquals(1, plan.divisions().size());
    assertEquals(3, plan.divisions().get(0).times());
  }

  @Test
  void fullLengthsFirstStandWhereNothingIsCheaper() {
    CutJob job = new CutJobs().stock(feet(16), 1400).run(feet(24), 1, 0, feet(4), 1).build();
    assertEquals(List.of(feet(16), feet(8)), pieces(planned(job).divisions().get(0)));
  }

  @Test
  void aRunThatNoStockReachesIsRefused() {
    CutJob job = new CutJobs().stock(feet(10), 900).run(feet(24), 1, 0, feet(4), 1).build();
    CutResult.Impossible none = assertInstanceOf(CutResult.Impossible.class, planner.plan(job));
    assertTrue(none.certain());
    assertTrue(none.why().contains("2 pieces"), none.why());
    CutJob nothing = new CutJobs().run(feet(24), 1, 0, feet(4), 1).build();
    assertInstanceOf(CutResult.Impossible.class, planner.plan(nothing));
  }

  @Test
  void withoutPricesLeastLengthIsOpened() {
    CutJob job =
        new CutJobs().stock(feet(12), 0).stock(feet(16), 0).run(feet(24), 1, 0, feet(4), 1).build();
    CutResult.Planned plan = planned(job);
    assertEquals(0, plan.costMicros());
    assertEquals(List.of(feet(12), feet(12)), pieces(plan.divisions().get(0)));
  }

  private CutResult.Planned planned(CutJob job) {
    return assertInstanceOf(CutResult.Planned.class, planner.plan(job));
  }

  private static List<Long> pieces(CutResult.Division division) {
    long step = CutJobs.STEP.nanometres();
    return division.pieces().stream().map(piece -> piece.nanometres() / step).toList();
  }
}
