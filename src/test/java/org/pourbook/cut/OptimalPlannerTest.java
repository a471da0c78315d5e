package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.cut.CutJobs.feet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pourbook.measure.Length;

class OptimalPlannerTest {
  private final CutPlanner planner = OptimalPlanner.usual();

  static List<Instance> instances() {
    return Instance.all();
  }

  @Test
  void allInstancesAreRead() {
    assertEquals(10, instances().size());
  }

  @ParameterizedTest
  @MethodSource("instances")
  void everyInstanceIsPlannedAtItsOptimum(Instance instance) {
    CutResult.Planned plan = planned(instance.job());
    assertEquals(instance.optimumMicros(), plan.costMicros());
    assertTrue(plan.boundMicros() <= instance.optimumMicros());
  }

  @ParameterizedTest
  @MethodSource("instances")
  void theProvingPlannerProvesEveryInstance(Instance instance) {
    CutResult plan = OptimalPlanner.proving().plan(instance.job());
    CutResult.Planned planned = assertInstanceOf(CutResult.Planned.class, plan);
    assertEquals(instance.optimumMicros(), planned.costMicros());
    assertEquals(instance.optimumMicros(), planned.boundMicros());
  }

  /** The 13-width paper-machine example of the encyclopedia article on cutting stock: 73 rolls. */
  @Test
  void thePaperMachineNeedsSeventyThreeRolls() {
    assertRolls(73, "T01-mill13");
  }

  /** V. Chvátal, Linear Programming, Freeman 1983, p. 198: 453 rolls, linear program 452.25. */
  @Test
  void chvatalsRawsAreFourHundredAndFiftyThree() {
    assertRolls(453, "T02-chvatal");
  }

  /**
   * M. Fieldhouse, The duality gap in trim problems, SICUP Bulletin 5(4), 1990: the linear program
   * over all patterns is 259/132, so rounding it up says 2, and 3 are needed.
   */
  @Test
  void fieldhousesGapIsClosedByPatternsWithinTheDemand() {
    assertRolls(3, "T03-fieldhouse");
    assertTrue(planned(instance("T03-fieldhouse").job()).isProven());
  }

  /**
   * US Army subcourse EN0069A, lesson 4: four brace stakes of 2 ft 4 in come from one 10 ft board
   * with 8 in left; a 12 ft board would leave 2 ft 8 in. The print counts no saw kerf.
   */
  @Test
  void theArmysFourBraceStakesComeFromATenFootBoard() {
    long stake = 28 * 16;
    CutResult.Planned four =
        planned(new CutJobs().piece(stake, 4).stock(feet(10), 10).stock(feet(12), 12).build());
    assertEquals(1, four.patterns().size());
    assertEquals(Length.ofFeet(10), four.patterns().get(0).stock().length());
    assertEquals(Length.ofInches(8), four.patterns().get(0).offcut());
    // The same lesson: boards are pieces over pieces a board, rounded up; nine stakes, four a board
    CutResult.Planned nine = planned(new CutJobs().piece(stake, 9).stock(feet(10), 10).build());
    assertEquals(3, nine.patterns().stream().mapToInt(CutResult.Pattern::times).sum());
  }

  @Test
  void theSameJobGivesTheSamePlan() {
    CutJob job = RandomJobs.job(RandomJobs.Family.SIX_SHORT, 10, 100, 7);
    assertEquals(planner.plan(job), OptimalPlanner.usual().plan(job));
  }

  @Test
  void amongPlansOfOneCostTheOneWithFewestBoardsIsTaken() {
    CutJob job = new CutJobs().stock(feet(8), 600).stock(feet(16), 1200).piece(feet(8), 4).build();
    assertEquals(2, planned(job).patterns().stream().mapToInt(CutResult.Pattern::times).sum());
  }

  @Test
  void scarceStockThatFirstFitWastesIsFound() {
    CutJob job =
        new CutJobs()
            .stock(feet(10), 500, 2)
            .piece(feet(5), 1)
            .piece(feet(4), 2)
            .piece(feet(3), 1)
            .piece(feet(2), 2)
            .build();
    CutResult quick = new FirstFitPlanner().plan(job);
    assertFalse(assertInstanceOf(CutResult.Impossible.class, quick).certain());
    assertEquals(10_000_000, planned(job).costMicros());
  }

  @Test
  void notEnoughStockIsProvenWhereTheRelaxationShowsIt() {
    CutJob job = new CutJobs().stock(feet(8), 500, 2).piece(feet(5), 3).piece(feet(1), 1).build();
    CutResult.Impossible none = assertInstanceOf(CutResult.Impossible.class, planner.plan(job));
    assertTrue(none.certain(), "three pieces of 5 ft cannot share two boards of 8 ft");
  }

  @Test
  void metricLengthsWithAnInchKerfArePlannedExactly() {
    CutJob job =
        new CutJob(
            List.of(
                new CutJob.Piece(Length.ofMillimetres(1197), 5, "a"),
                new CutJob.Piece(Length.ofMillimetres(803), 7, "b"),
                new CutJob.Piece(Length.ofMillimetres(455), 9, "c")),
            List.of(
                new CutJob.Stock("6 m", Length.ofMillimetres(6000), 31_000_000, 50),
                new CutJob.Stock("4 m", Length.ofMillimetres(4000), 20_500_000, 50)),
            Length.ofInches(1, 8),
            Length.ofMillimetres(1));
    CutResult.Planned plan = planned(job);
    assertTrue(plan.isProven());
    assertEquals(82_500_000, plan.costMicros());
  }

  /** A board holds 24,000 of the shortest: their worths must not overflow. */
  @Test
  void scarceStockOfVeryManyShortPiecesIsFound() {
    CutJob job =
        new CutJobs()
            .stock(24_000, 100, 2)
            .piece(11_200, 1)
            .piece(9_600, 1)
            .piece(8_000, 1)
            .piece(6_400, 2)
            .piece(4_800, 1)
            .piece(1, 1_600)
            .build();
    CutResult.Planned plan = planned(job);
    assertTrue(plan.isProven());
    assertEquals(2_000_000, plan.costMicros());
  }

  private void assertRolls(long rolls, String id) {
    assertEquals(rolls * 10_000, planned(instance(id).job()).costMicros());
  }

  private static Instance instance(String id) {
    return instances().stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
  }

  private CutResult.Planned planned(CutJob job) {
    return assertInstanceOf(CutResult.Planned.class, planner.plan(job));
  }

  /** A sum that an int does not hold is none, not a small or negative demand. */
  @Test
  void moreAlikePiecesThanAnIntCountsAreAnError() {
    CutJob.Piece half = new CutJob.Piece(Length.ofFeet(2), 1 << 30, "A");
    CutJob.Stock stock = new CutJob.Stock("8", Length.ofFeet(8), 1, Integer.MAX_VALUE);
    Length step = Length.ofInches(1, 16);
    CutJob most =
        new CutJob(
            List.of(new CutJob.Piece(Length.ofFeet(2), (1 << 30) - 1, "A"), half),
            List.of(stock),
            Length.ZERO,
            step);
    assertEquals(Integer.MAX_VALUE, Normalised.of(most).model().pieces());
    CutJob more = new CutJob(List.of(half, half), List.of(stock), Length.ZERO, step);
    assertThrows(ArithmeticException.class, () -> Normalised.of(more));
  }
}
