package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.cut.CutJobs.feet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pourbook.measure.Length;

class FirstFitPlannerTest {
  private final CutPlanner planner = new FirstFitPlanner();

  static List<Instance> instances() {
    return Instance.all();
  }

  @ParameterizedTest
  @MethodSource("instances")
  void theOptimumLiesBetweenBoundAndCost(Instance instance) {
    CutResult.Planned plan = planned(instance.job());
    assertTrue(plan.boundMicros() <= instance.optimumMicros(), () -> plan.toString());
    assertTrue(plan.costMicros() >= instance.optimumMicros(), () -> plan.toString());
  }

  @Test
  void theBoardOfLeastCostForWhatItHoldsIsOpened() {
    CutJob job =
        new CutJobs()
            .stock(feet(8), 600)
            .stock(feet(16), 1350)
            .piece(feet(7), 3)
            .piece(feet(15), 1)
            .build();
    CutResult.Planned plan = planned(job);
    assertEquals(3 * 6_000_000 + 13_500_000, plan.costMicros());
    assertEquals(List.of(1, 3), plan.patterns().stream().map(CutResult.Pattern::times).toList());
  }

  @Test
  void aPlanWithoutWasteIsProvenByLengthAlone() {
    CutResult.Planned plan =
        planned(new CutJobs().stock(feet(8), 648).piece(feet(5), 2).piece(feet(3), 2).build());
    assertEquals(2 * 6_480_000, plan.costMicros());
    assertTrue(plan.isProven());
  }

  @Test
  void lengthsAreRoundedToTheStepBeforePlanning() {
    Length nearlyFour = Length.ofFeet(4).minus(new Length(1));
    CutJob job =
        new CutJob(
            List.of(new CutJob.Piece(nearlyFour, 2, "a")),
            List.of(
                new CutJob.Stock("8", Length.ofFeet(8).minus(new Length(2)), 1, 9),
                new CutJob.Stock("8+", Length.ofFeet(8).plus(new Length(2)), 3, 9)),
            Length.ZERO,
            CutJobs.STEP);
    CutResult.Planned plan = planned(job);
    assertEquals(
        List.of("8"), plan.patterns().stream().map(p -> p.stock().id()).distinct().toList());
    assertEquals(Length.ofFeet(4), plan.patterns().get(0).cuts().get(0).length());
    assertEquals(
        2, plan.patterns().get(0).times(), "rounded, two do not fit a board that is short");
  }

  @Test
  void piecesOfOneLengthKeepWhatTheyAreFor() {
    CutJob job =
        new CutJobs()
            .stock(feet(8), 648)
            .piece(feet(4), 3, "A")
            .piece(feet(2), 2, "C")
            .piece(feet(4), 2, "B")
            .build();
    List<CutResult.Pattern> patterns = planned(job).patterns();
    Length four = Length.ofFeet(4);
    assertEquals(
        List.of(
            List.of(new CutResult.Cut(four, 2, "A")),
            List.of(new CutResult.Cut(four, 1, "A"), new CutResult.Cut(four, 1, "B")),
            List.of(new CutResult.Cut(four, 1, "B"), new CutResult.Cut(Length.ofFeet(2), 2, "C"))),
        patterns.stream().map(CutResult.Pattern::cuts).toList());
  }

  @Test
  void theOffcutIsWhatTheLastKerfLeaves() {
    CutJob job = new CutJobs().kerf(2).stock(1536, 648).piece(700, 2).build();
    assertEquals(CutJobs.STEP.times(132), planned(job).patterns().get(0).offcut());
    CutJob edge = new CutJobs().kerf(2).stock(1536, 648).piece(767, 2).build();
    assertEquals(Length.ZERO, planned(edge).patterns().get(0).offcut(), "1536 = 2 x 767 + 2");
  }

  @Test
  void unpricedStockIsPlannedForLeastLength() {
    CutJob job = new CutJobs().stock(feet(8), 0).stock(feet(12), 0).piece(feet(5), 1).build();
    CutResult.Planned plan = planned(job);
    assertEquals(Length.ofFeet(8), plan.patterns().get(0).stock().length());
    assertEquals(0, plan.costMicros());
    assertEquals(feet(8) * 1_587_500 / 1000, planned(job.pricedByLength()).costMicros());
  }

  @Test
  void aFreeOffcutIsUsedFirst() {
    CutJob job = new CutJobs().stock(feet(8), 648).stock(feet(9), 0, 1).piece(feet(8), 2).build();
    assertEquals(6_480_000, planned(job).costMicros());
  }

  @Test
  void aPieceLongerThanAllStockIsCertainlyImpossible() {
    CutResult.Impossible none =
        impossible(new CutJobs().stock(feet(8), 648).piece(feet(8) + 1, 1).build());
    assertTrue(none.certain());
    assertTrue(none.why().contains("longer than the longest stock"), none.why());
  }

  @Test
  void tooLittleLengthIsCertainlyImpossible() {
    CutJob job = new CutJobs().stock(feet(8), 648, 2).piece(feet(4), 5).build();
    assertTrue(impossible(job).certain());
  }

  @Test
  void notFoundIsToldApartFromImpossible() {
    CutJob job = new CutJobs().stock(feet(8), 648, 2).piece(feet(5), 3).piece(feet(1), 1).build();
    assertFalse(impossible(job).certain());
  }

  @Test
  void scarceLongStockIsKeptForLongPieces() {
    CutJob job =
        new CutJobs()
            .stock(feet(8), 900)
            .stock(feet(16), 100, 1)
            .piece(feet(15), 1)
            .piece(feet(8), 2)
            .build();
    assertEquals(19_000_000, planned(job).costMicros());
  }

  @Test
  void nothingToCutNeedsNoStock() {
    assertEquals(List.of(), planned(new CutJobs().stock(feet(8), 1).build()).patterns());
  }

  private CutResult.Planned planned(CutJob job) {
    return assertInstanceOf(CutResult.Planned.class, planner.plan(job));
  }

  private CutResult.Impossible impossible(CutJob job) {
    return assertInstanceOf(CutResult.Impossible.class, planner.plan(job));
  }
}
