package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.bare;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.thickening;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Placing;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.ConcreteOrder;

class ConcreteTakeoffTest {

  /** Cubic feet by hand against the rules: only the rounding of doubles lies between them. */
  private static final double ROUNDING = 1e-9;

  @Test
  void aPlainSlabIsLengthTimesWidthTimesThickness() {
    Quantity row = concrete(new SiteJob().with(slab("A")).build()).get(0);

    // 36 ft x 24 ft x 4 in = 288 ft3 = 10.6667 yd3
    assertEquals(288, Unit.YD3.toBase(row.amount()) / Unit.FT3.toBase(1), ROUNDING);
    assertEquals("36'-0\" × 24'-0\" × 4\" = 10.67 yd3", row.working());
    assertEquals(10, row.allowancePercent().orElseThrow());
    assertEquals("concrete", row.material().orElseThrow().material());
  }

  @Test
  void theSlabWithEdgeRecessAndPiersIsTheHandFigure() {
    Job job =
        new SiteJob()
            .with(slab("A").edge("16", "12", Sides.ALL))
            .with(recess("R", "A", inches("2.5")).size(feet(6), feet(4)))
            .with(
                bare("P", Kind.PIER)
                    .shape(new Shape.Round(Length.ofInches(18)))
                    .thick("36")
                    .count(2))
            .build();

    // Plan slab              36 x 24 x 4/12                                 = 288.0000 ft3
    // Turned-down edge, 16 - 4 = 12 in below; rings between the outline and the outline moved in
    // 1 ft at the bottom, 1.5 ft half way, 2 ft at the underside:
    //   36x24 - 34x22 = 116; 36x24 - 33x21 = 171; 36x24 - 32x20 = 224 ft2
    //   1/6 x (116 + 4 x 171 + 224)                                         = 170.6667 ft3
    // Recess taken out       6 x 4 x 4/12                                   =  -8.0000 ft3
    // Recess                 6 x 4 x 4/12                                   =   8.0000 ft3
    // Bank, underside 2.5 in lower: 20 x (2.5/12)^2 / 2                     =   0.4340 ft3
    // Two piers              2 x pi/4 x 1.5^2 x 3                           =  10.6029 ft3
    // Sum 469.7036 ft3 / 27                                                 =  17.3964 yd3
    assertEquals(17.3964, net(job), 0.00005);
    assertEquals(170.0 + 2.0 / 3, ft3(job, "turned-down edge"), ROUNDING);
    assertEquals(20 * 2.5 * 2.5 / 144 / 2, ft3(job, "bank of the recess"), ROUNDING);
    assertEquals(-8, ft3(job, "recess R taken out"), ROUNDING);
    assertEquals(20, row(job, "pier").allowancePercent().orElseThrow());
  }

  @Test
  void aStoopWithAWideEdgeHoldsNoMoreThanTheSolidBlock() {
    Job job =
        new SiteJob().with(slab("A").size(feet(10), feet(2)).edge("8", "12", Sides.ALL)).build();

    // 12 in from both long sides is all of the 2 ft: 10 x 2 x 8/12 = 13.3333 ft3
    assertEquals(10 * 2 * 8 / 12.0, net(job) * 27, ROUNDING);
  }

  @Test
  void anEdgeWhoseBanksMeetHalfWayUpIsSplitThere() {
    Job job =
        new SiteJob().with(slab("A").size(feet(10), feet(2)).edge("16", "6", Sides.ALL)).build();

    // Half a foot wide at the bottom; the banks meet 0.5 ft up, above that all is concrete.
    // Rings: 20 - 9x1 = 11; 20 - 8.5x0.5 = 15.75; 20 - 8x0 = 20 ft2
    // 0.5/6 x (11 + 4 x 15.75 + 20) + 0.5 x 20 = 17.8333 ft3
    assertEquals(0.5 / 6 * (11 + 63 + 20) + 10, ft3(job, "turned-down edge"), ROUNDING);
    assertTrue(
        row(job, "turned-down edge")
            .working()
            .startsWith("6\"/6 × (11 + 4 × 15.75 + 20 ft2) + 6\" × 20 ft2"),
        row(job, "turned-down edge").working());
  }

  @Test
  void anEdgeOnSomeSidesCountsItsCornerOnce() {
    Job job = new SiteJob().with(slab("A").edge("16", "12", Sides.of(List.of("L1", "W1")))).build();

    // b = d = 1 ft, k = 1: 60 x (1 + 1/2) - 1 x (1 + 1 + 1/3) at the one corner between them
    assertEquals(60 * 1.5 - (1 + 1 + 1 / 3.0), ft3(job, "turned-down edge"), ROUNDING);
  }

  @Test
  void anEdgeAlongALengthIsOneStraightRun() {
    Job job = new SiteJob().with(slab("A").edge("16", "12", Sides.ofRun(feet(20)))).build();

    assertEquals(20 * 1.5, ft3(job, "turned-down edge"), ROUNDING);
  }

  @Test
  void anEdgeNoDeeperThanTheSlabAddsNothing() {
    Job job = new SiteJob().with(slab("A").edge("4", "12", Sides.ALL)).build();

    assertEquals(288, net(job) * 27, ROUNDING);
  }

  @Test
  void aRoundSlabHasARoundRing() {
    Job job =
        new SiteJob()
            .with(slab("A").shape(new Shape.Round(feet(10))).edge("16", "12", Sides.ALL))
            .build();

    // Rings pi (25 - 16), pi (25 - 12.25), pi (25 - 9): 1/6 x pi x (9 + 51 + 16)
    assertEquals(Math.PI * 76 / 6, ft3(job, "turned-down edge"), ROUNDING);
  }

  @Test
  void aFallOverALevelBaseIsAWedgeAboveTheLeastThickness() {
    Job level = new SiteJob().with(slab("A").fall(1 / 48.0, false)).build();
    Job follows = new SiteJob().with(slab("A").fall(1 / 48.0, true)).build();

    // 1/4 in per ft over 36 ft is 9 in: 864 x 0.75 / 2 = 324 ft3
    assertEquals(324, ft3(level, "fall of the top"), ROUNDING);
    assertEquals(288, net(follows) * 27, ROUNDING);
  }

  @Test
  void aThickeningHasTwoBanksBelowTheSlab() {
    Job job =
        new SiteJob()
            .with(slab("A"))
            .with(thickening("T", "A").size(feet(20), feet(1)).thick("12"))
            .build();

    // 12 - 4 = 8 in below: 20 x (1 x 8/12 + (8/12)^2)
    assertEquals(20 * (2 / 3.0 + 4 / 9.0), ft3(job, "thickening"), ROUNDING);
  }

  @Test
  void aPartCountsForEachOfItsParent() {
    Job job =
        new SiteJob()
            .with(slab("A").count(3))
            .with(recess("R", "A", inches("0")).size(feet(6), feet(4)).thick("6").count(2))
            .build();

    assertEquals(3 * 288, ft3(job, "plan slab"), ROUNDING);
    assertEquals(-3 * 2 * 8, ft3(job, "recess R taken out"), ROUNDING);
    assertEquals(3 * 2 * 12, ft3(job, "recess"), ROUNDING);
  }

  @Test
  void twentyFiveByTwentySevenBySixInchesWithTenPercentOrders1375() {
    Job job = new SiteJob().with(slab("A").size(feet(25), feet(27)).thick("6")).build();

    ConcreteNeed need = ConcreteTakeoff.of(job).concrete().get(0);

    // 25 x 27 x 0.5 / 27 = 12.5 yd3 x 1.10 = 13.75 yd3, a whole number of steps of 0.25 yd3
    double step = Unit.YD3.toBase(0.25);
    assertEquals(
        13.75, Unit.YD3.fromBase(ConcreteOrder.orderedM3(need.allowedM3(), step)), ROUNDING);
  }

  @Test
  void aPumpedPourLosesOnceWhatStaysInThePump() {
    Job job =
        new SiteJob()
            .with(SiteJob.pour(1, Placing.PUMP))
            .with(SiteJob.pour(2, Placing.CHUTE))
            .with(slab("A").mix("4000 psi"))
            .with(slab("B").size(feet(10), feet(10)))
            .with(slab("C").pour(2))
            .build();

    List<ConcreteNeed> needs = ConcreteTakeoff.of(job).concrete();

    assertEquals(3, needs.size());
    assertEquals(0.5, Unit.YD3.fromBase(needs.get(0).pumpLossM3()), ROUNDING);
    assertEquals(0, needs.get(1).pumpLossM3());
    assertEquals(0, needs.get(2).pumpLossM3());
    Quantity loss = row(job, "pump loss");
    assertEquals("4000 psi", loss.material().orElseThrow().size());
    assertEquals(0, loss.allowancePercent().orElseThrow());
  }

  @Test
  void aPourOfHalfAYardIsMixedFromBags() {
    Job half = new SiteJob().with(slab("A").size(feet(9), feet(3)).thick("6").waste(0)).build();
    Job more =
        new SiteJob().with(slab("A").size(feet(9), feet(3)).thick("6.0625").waste(0)).build();

    // 9 x 3 x 0.5 = 13.5 ft3 = 0.5 yd3; 13.5 / 0.60 = 22.5, so 23 bags
    assertTrue(ConcreteTakeoff.of(half).concrete().get(0).bagged());
    assertEquals(
        new MaterialKey("bagged concrete", "80 lb"),
        row(half, "plan slab").material().orElseThrow());
    assertEquals(23, row(half, "bags of 80 lb").amount());
    assertFalse(ConcreteTakeoff.of(more).concrete().get(0).bagged());
  }

  @Test
  void theAllowanceOfALargeJobFallsButAWrittenOneHolds() {
    SiteJob large = new SiteJob().with(slab("A").size(feet(270), feet(100)).thick("4"));
    SiteJob written =
        new SiteJob()
            .with(Setting.WASTE_ALLOWANCE, "7")
            .with(slab("A").size(feet(270), feet(100)).thick("4"));

    // 270 x 100 x 4/12 / 27 = 333.33 yd3: 2000 / 333.33 = 6 %
    assertEquals(6, row(large.build(), "plan slab").allowancePercent().orElseThrow(), ROUNDING);
    assertEquals(7, row(written.build(), "plan slab").allowancePercent().orElseThrow());
  }

  @Test
  void fiberIsItsDoseTimesTheOrderedVolume() {
    Job job =
        new SiteJob()
            .with(
                slab("A")
                    .size(feet(25), feet(27))
                    .thick("6")
                    .fiber(1.5 * 0.45359237 / 0.764554857984))
            .build();

    // 1.5 lb/yd3 x 13.75 yd3 = 20.625 lb
    Quantity fiber = row(job, "fiber");
    assertEquals(20.625, fiber.amount(), ROUNDING);
    assertEquals("1.50 lb/yd3 × 13.75 yd3 = 20.63 lb", fiber.working());
  }

  private static List<Quantity> concrete(Job job) {
    return ConcreteTakeoff.of(job).quantities();
  }

  private static Quantity row(Job job, String what) {
    return concrete(job).stream()
        .filter(quantity -> quantity.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  private static double ft3(Job job, String what) {
    return row(job, what).amount() * 27;
  }

  private static double net(Job job) {
    return concrete(job).stream()
        .filter(quantity -> quantity.material().isPresent())
        .mapToDouble(Quantity::amount)
        .sum();
  }
}
