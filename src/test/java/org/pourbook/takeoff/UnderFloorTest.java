package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.bare;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.thickening;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Kind;
import org.pourbook.job.Setting;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

/** Base, digging and retarder against hand figures. */
class UnderFloorTest {

  /** Hand figures in US units: only the rounding of doubles lies between them. */
  private static final double ROUNDING = 1e-9;

  @Test
  void baseIsMovedOutByItsMarginAtFormedSides() {
    Job job = new SiteJob().with(slab("A")).build();

    // 37 ft x 25 ft x 4 in = 308.3333 ft3 = 11.4198 yd3; x 1.10 x 1.35 ton = 16.9583 ton
    double yd3 = 37 * 25 / 3.0 / 27;
    Quantity base = base(job);
    assertEquals(yd3, row(BaseTakeoff.of(job, Offer.NOTHING), "compacted base"), ROUNDING);
    assertEquals(yd3 * 1.10 * 1.35, base.amount(), ROUNDING);
    assertEquals("11.42 yd3 × 1.1 × 1.35 ton/yd3 = 16.96 ton", base.working());
  }

  @Test
  void baseOfAMetricJobIsInTonnes() {
    Job job = new SiteJob().metric().with(slab("A")).build();

    // 16.9583 short ton x 0.90718474
    assertEquals(37 * 25 / 3.0 / 27 * 1.10 * 1.35 * 0.90718474, base(job).amount(), ROUNDING);
    assertEquals("t", base(job).unit().label());
  }

  @Test
  void baseHasNoMarginAtTurnedDownOrUnformedSides() {
    Job edge = new SiteJob().with(slab("A").edge("16", "12", Sides.ALL)).build();
    Job unformed =
        new SiteJob().with(slab("A").formed(Sides.of(List.of("L1", "W1", "W2")))).build();

    // The edge takes the upper 4 in of its own 12 in from the base: rings from z = 8 to 12 in,
    // inset 20, 22, 24 in: 864 - 98/3 x 62/3 = 1700/9 ft2 and so on
    double low = 864 - (36 - 10 / 3.0) * (24 - 10 / 3.0);
    double middle = 864 - (36 - 11 / 3.0) * (24 - 11 / 3.0);
    double high = 864 - 32 * 20.0;
    double displaced = (low + 4 * middle + high) / 6 / 3;
    assertEquals((864 / 3.0 - displaced) / 27, compacted(edge), ROUNDING);
    // L2 is open: 37 ft x (24.5) ft
    assertEquals(37 * 24.5 / 3 / 27, compacted(unformed), ROUNDING);
  }

  @Test
  void aSideSharedWithAnotherSlabHasNoMargin() {
    Job job =
        new SiteJob()
            .with(slab("A").at(feet(0), feet(0)))
            .with(slab("B").at(feet(36), feet(4)).size(feet(10), feet(10)))
            .build();

    // A: W2 touches B: 36.5 x 25 ft; B: W1 touches A: 10.5 x 11 ft
    assertEquals(36.5 * 25 / 3 / 27, compacted(job), ROUNDING);
    assertEquals(
        10.5 * 11 / 3 / 27,
        BaseTakeoff.of(job, Offer.NOTHING).quantities().get(2).amount(),
        ROUNDING);
  }

  @Test
  void recessesThickeningsAndFootingsTakeTheirShareOfTheBase() {
    Job job =
        new SiteJob()
            .with(slab("A").at(feet(0), feet(0)))
            .with(recess("R", "A", inches("2.5")).size(feet(6), feet(4)))
            .with(thickening("T", "A").size(feet(20), feet(1)).thick("12"))
            .with(
                bare("F", Kind.FOOTING)
                    .size(feet(36), feet(2))
                    .thick("8")
                    .at(feet(0), Length.ofFeet(-1)))
            .build();

    // T, 8 in below, upper 4 in (z from 1/3 to 2/3 ft): 20 x (1 x 1/3 + (4/9 - 1/9))
    // F lies 36 x 1 ft under the slab and takes the 4 in of base: 36 x 1/3
    double displaced = 20 * (1 / 3.0 + 1 / 3.0) + 36 / 3.0;
    assertEquals(((37 * 25 - 24) / 3.0 - displaced) / 27, compacted(job), ROUNDING);
    // The recess has its own base, without a margin inside its slab
    assertEquals(
        24 / 3.0 / 27, BaseTakeoff.of(job, Offer.NOTHING).quantities().get(2).amount(), ROUNDING);
  }

  /** A pad of 3 x 2 ft in which edges 12 in wide meet. */
  @Test
  void aBaseThatEdgesTakeWholeIsToldAndNotListed() {
    Job job =
        new SiteJob()
            .with(slab("A").size(feet(3), feet(2)).thick("4").edge("16", "12", Sides.ALL))
            .build();
    Part part = BaseTakeoff.of(job, Offer.NOTHING);

    assertEquals(List.of(), part.quantities());
    assertTrue(part.cautions().get(0).says().startsWith("No base is ordered"));
    assertEquals("BASE-1", part.cautions().get(0).rule());
  }

  @Test
  void aFloorThatIsAllRecessHasNoRowOfItsOwnTop() {
    Job job =
        new SiteJob()
            .with(slab("A").size(feet(12), feet(10)).at(feet(0), feet(0)).formed(Sides.NONE))
            .with(
                recess("R", "A", inches("2"))
                    .size(feet(12), feet(10))
                    .at(feet(0), feet(0))
                    .base("4"))
            .build();
    TakeOff all = TakeOffs.of(job, Offer.NOTHING);

    assertEquals(List.of(), all.quantities().stream().filter(q -> q.amount() == 0).toList());
    assertTrue(all.quantities().stream().anyMatch(q -> q.what().equals("trowel finish")));
  }

  @Test
  void baseMaterialIsAskedForByNameOnlyWhereItIsListedSo() {
    Job job = new SiteJob().with(Setting.BASE_MATERIAL, "crusher run").with(slab("A")).build();
    MaterialKey listed = Material.BASE_GRAVEL.of("Crusher Run");

    assertEquals(Material.BASE_GRAVEL.of(""), base(job).material().orElseThrow());
    assertEquals(
        listed, BaseTakeoff.of(job, Offer.of(listed)).quantities().get(1).material().orElseThrow());
    assertEquals(37 * 25 / 3.0 / 27 * 1.20 * 1.485, base(job).amount(), ROUNDING);
  }

  @Test
  void anUnknownBaseMaterialIsTold() {
    Job job = new SiteJob().with(Setting.BASE_MATERIAL, "slag").with(slab("A")).build();

    assertTrue(BaseTakeoff.of(job, Offer.NOTHING).cautions().get(0).says().contains("\"slag\""));
  }

  @Test
  void diggingIsListedAsItLiesAndLoose() {
    Job job =
        new SiteJob()
            .with(slab("A"))
            .with(recess("R", "A", inches("2.5")).size(feet(6), feet(4)))
            .with(bare("F", Kind.FOOTING).size(feet(60), feet(2)).thick("12"))
            .build();
    Part digging = DiggingTakeoff.of(job);

    assertEquals(24 * 2.5 / 12 / 27, row(digging, "digging, recess, bank"), ROUNDING);
    assertEquals(120 / 27.0, row(digging, "digging, footing, bank"), ROUNDING);
    assertEquals(120 / 27.0 * 1.25, row(digging, "digging, footing, loose"), ROUNDING);
    assertTrue(digging.quantities().stream().allMatch(q -> q.material().isEmpty()));
  }

  @Test
  void retarderIsLaidInLappedStripsTheBetterWay() {
    Job job = new SiteJob().with(slab("A")).build();
    Part retarder = RetarderTakeoff.of(job, Offer.roll(100, 15));

    // Along Length: 1 + (24 - 15) / 14.5 up = 2 strips of 36 ft; along Width: 1 + 21 / 14.5 up = 3
    // strips of 24 ft. Both 72 ft of a roll of 100 ft: along Length, 72 x 15 ft; side lap 36 ft.
    assertEquals(72 * 15, row(retarder, "vapor retarder, along Length"), ROUNDING);
    assertEquals(36, row(retarder, "seam tape"), ROUNDING);
    assertEquals("10 mil", retarder.quantities().get(0).material().orElseThrow().size());
    assertEquals("2 × 36'-0\" × 15'-0\" = 1080 ft2", retarder.quantities().get(0).working());
  }

  @Test
  void rollsAreLappedEndToEnd() {
    Job job = new SiteJob().with(slab("A").size(feet(60), feet(29))).build();
    Part retarder = RetarderTakeoff.of(job, Offer.roll(50, 15));

    // Along Length 2 strips of 60 = 120 ft: 1 + (120 - 50) / 49.5 up = 3 rolls, 2 end laps of
    // 6 in: 121 x 15 ft. Along Width 1 + 45/14.5 up = 5 strips of 29 = 145 ft is more.
    assertEquals(121 * 15, row(retarder, "vapor retarder, along Length"), ROUNDING);
    assertEquals(60 + 2 * 15, row(retarder, "seam tape"), ROUNDING);
  }

  @Test
  void retarderGoesDownTheBankAndUpAtIsolationJoints() {
    Job edge =
        new SiteJob().with(slab("A").size(feet(20), feet(10)).edge("16", "12", Sides.ALL)).build();
    Job isolated =
        new SiteJob()
            .with(slab("A").size(feet(20), feet(10)))
            .with(isolation("L1", feet(20)))
            .build();

    // Each end is (sqrt 2 - 1) x 12 in longer than the plan: 10.83 ft across is one strip
    assertEquals(
        (20 + 2 * (Math.sqrt(2) - 1)) * 15,
        row(RetarderTakeoff.of(edge, Offer.roll(100, 15)), "vapor retarder, along Length"),
        1e-6); // lengths are held to the nanometre
    // Up the wall 10.5 ft; along Length 2 strips of 20 ft, along Width 1 + 10 / 9.5 up = 3 of 10.5
    assertEquals(
        3 * 10.5 * 10,
        row(RetarderTakeoff.of(isolated, Offer.roll(100, 10)), "vapor retarder, along Width"),
        ROUNDING);
  }

  @Test
  void aLowerRecessTakesMoreSheetDownItsBanks() {
    Job job =
        new SiteJob()
            .with(slab("A"))
            .with(recess("R", "A", inches("2.5")).size(feet(6), feet(4)))
            .build();

    assertEquals(
        20 * 2.5 / 12 * (Math.sqrt(2) - 1),
        row(RetarderTakeoff.of(job, Offer.roll(100, 15)), "vapor retarder down the bank"),
        ROUNDING);
  }

  static Joint isolation(String side, Length length) {
    return new Joint(
        "I1",
        Optional.of("A"),
        Optional.of(side),
        JointKind.ISOLATION,
        length,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Length.ZERO,
        Optional.empty(),
        SiteJob.PLACE);
  }

  private static Quantity base(Job job) {
    return BaseTakeoff.of(job, Offer.NOTHING).quantities().get(1);
  }

  private static double compacted(Job job) {
    return BaseTakeoff.of(job, Offer.NOTHING).quantities().get(0).amount();
  }

  private static double row(Part part, String what) {
    return part.quantities().stream()
        .filter(quantity -> quantity.what().equals(what))
        .findFirst()
        .orElseThrow()
        .amount();
  }
}
