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
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Change;
import org.pourbook.job.ChangeState;
import org.pourbook.job.Extra;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Job;
import org.pourbook.job.JointSpacing;
import org.pourbook.job.Kind;
import org.pourbook.job.Placing;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Unit;

/** All families together: extras, the ready list, cautions, and the order of rows. */
class TakeOffsTest {

  @Test
  void rowsStandSectionBySectionAndTheJobsOwnLast() {
    Job job =
        new SiteJob().with(SiteJob.pour(1, Placing.PUMP)).with(slab("B")).with(slab("A")).build();

    List<String> sections =
        TakeOffs.of(job, Offer.NOTHING).quantities().stream()
            .map(Quantity::section)
            .distinct()
            .toList();

    assertEquals(List.of("B", "A", ""), sections);
  }

  @Test
  void anExtraKeepsItsOwnUnit() {
    Job job =
        new SiteJob()
            .with(slab("A"))
            .with(extra("blankets", "", 2, "day", ExtraKind.RENT))
            .with(extra("insulation", "2 in", 100, "sf", ExtraKind.MATERIAL))
            .build();

    Quantity rent = quantity(job, "blankets");
    assertEquals("day", rent.unitText());
    assertEquals("as written = 2 day", rent.working());
    assertEquals(Optional.of(new MaterialKey("blankets", "")), rent.material());
    assertEquals("ft2", quantity(job, "insulation 2 in").unitText());
    assertTrue(TakeOffs.of(job, Offer.NOTHING).isService(new MaterialKey("blankets", "")));
    assertFalse(TakeOffs.of(job, Offer.NOTHING).isService(new MaterialKey("insulation", "2 in")));
    assertTrue(TakeOffs.of(job, Offer.NOTHING).isService(Material.PUMP.of("")));
  }

  @Test
  void anExtraOfAKnownMaterialIsInItsOwnUnit() {
    Job job = new SiteJob().with(extra("base gravel", "", 3000, "lb", ExtraKind.MATERIAL)).build();

    Quantity gravel = quantity(job, "base gravel");
    assertEquals(1.5, gravel.amount(), 1e-12); // rounding of the factors
    assertEquals(Unit.TON, gravel.unit());
    assertEquals("3000 lb = 1.50 ton", gravel.working());
  }

  @Test
  void checksAreOnTheReadyListAloneAndWhatIsSetInOnBoth() {
    Job job =
        new SiteJob()
            .with(extra("floor drain", "3 in", 2, "each", ExtraKind.SET_IN))
            .with(extra("survey pins", "", 4, "each", ExtraKind.CHECK))
            .build();

    TakeOff takeOff = TakeOffs.of(job, Offer.NOTHING);
    assertEquals(
        List.of("floor drain 3 in"), takeOff.quantities().stream().map(Quantity::what).toList());
    assertTrue(takeOff.ready().contains(new ReadyItem("floor drain 3 in", "2 each", "set in")));
    assertTrue(takeOff.ready().contains(new ReadyItem("survey pins", "4 each", "check")));
  }

  @Test
  void openChangesStandFirstOnTheReadyList() {
    Job job =
        new SiteJob()
            .with(slab("A"))
            .with(change("C1", ChangeState.TAKEN_UP))
            .with(change("C2", ChangeState.OPEN))
            .build();

    List<ReadyItem> ready = TakeOffs.of(job, Offer.NOTHING).ready();
    assertEquals("C2: wider door", ready.get(0).what());
    assertEquals("Inspection booked and passed", ready.get(1).what());
    assertTrue(ready.stream().noneMatch(item -> item.what().startsWith("C1")));
  }

  @Test
  void anOpenChangeIsTheFirstCaution() {
    Job job =
        new SiteJob()
            .with(slab("A").thick("3"))
            .with(change("C1", ChangeState.DECLINED))
            .with(change("C2", ChangeState.OPEN))
            .build();

    List<Caution> cautions = TakeOffs.of(job, Offer.NOTHING).cautions();
    assertTrue(cautions.get(0).says().startsWith("Open change C2: wider door"));
    assertTrue(cautions.stream().noneMatch(caution -> caution.says().contains("C1")));
  }

  @Test
  void theReadyListHoldsWhatTheJobHolds() {
    Job job =
        new SiteJob().with(SiteJob.pour(1, Placing.PUMP)).with(slab("A")).with(slab("B")).build();

    List<ReadyItem> ready = TakeOffs.of(job, Offer.NOTHING).ready();
    // 2 x 864 / 200 ft2
    assertTrue(
        ready.contains(new ReadyItem("curing compound", "8.64 gal", "READY-1, FIN-1")),
        ready.toString());
    assertTrue(ready.contains(new ReadyItem("pump", "1 each", "READY-1, POUR-2")));
    assertTrue(
        ready.contains(
            new ReadyItem(
                "People here against crew needed, pour 1",
                "5 people",
                "placing times are for this crew")));
  }

  @Test
  void sizesUnderACodeMinimumAreTold() {
    Job job =
        new SiteJob()
            .with(Setting.RETARDER, "6 mil")
            .with(Setting.RETARDER_LAP, "4")
            .with(
                slab("A")
                    .thick("3")
                    .base("2")
                    .joints(new JointSpacing(false, Optional.of(feet(10))))
                    .edge("3", "12", Sides.ALL))
            .with(slab("B").retarder(false))
            .with(recess("R", "B", inches("2")).size(feet(6), feet(4)).thick("3.5"))
            .with(thickening("T", "B").size(feet(6), feet(1)).thick("4"))
            .with(bare("F", Kind.FOOTING).size(feet(60), feet(1)).thick("5"))
            .build();

    List<String> rules =
        CodeCautions.of(job).cautions().stream().map(c -> c.section() + " " + c.rule()).toList();

    // The recess has its own base of 4 in; 3 in x 36 = 9 ft
    assertEquals(
        List.of(
            "A CON-2, IRC R506.1, IBC 1910.1",
            "A BASE-1, IRC R506.2.2",
            "A JOINT-1, ACI 302.1R-96",
            "A CON-3",
            "B VR-1, IRC R506.2.3, IBC 1910.1",
            "R CON-4",
            "T CON-5",
            "F CON-5, IRC R403.1",
            " VR-1, IBC 1910.1",
            " VR-1, IRC R506.2.3 (2021)"),
        rules);
  }

  /** A bare 12 is feet. */
  @Test
  void aPierAsWideAsAPondIsAskedAbout() {
    SiteJob job = new SiteJob();
    job.with(bare("P", Kind.PIER).shape(new Shape.Round(feet(12))).thick("36"));
    job.with(bare("Q", Kind.PIER).shape(new Shape.Round(inches("36"))).thick("30"));
    job.with(bare("R", Kind.PIER).shape(new Shape.Round(feet(4))).thick("60"));

    assertEquals(
        List.of("The pier is 12'-0\" across and 36\" deep: is its diameter meant in another unit?"),
        CodeCautions.of(job.build()).cautions().stream().map(Caution::says).toList());
  }

  @Test
  void coversUnderTheCodeAndFloorsWithoutJointsAreTold() {
    SiteJob job =
        new SiteJob()
            .with(Setting.EDGE_COVER, "2")
            .with(Setting.TOP_COVER, "1")
            .with(Setting.TOP_COVER_OUTSIDE, "1")
            .with(slab("A").size(feet(36), feet(10)).bars("#4", "18").joints(JointSpacing.NONE))
            .with(slab("B").thick("8").joints(new JointSpacing(false, Optional.of(feet(19)))));

    // No bars outside; 36 ft of floor without a joint; 19 ft is over 18 though 36 x 8 in is 24 ft
    assertEquals(
        List.of(
            "A JOINT-1, ACI 302.1R-96",
            "B JOINT-1, ACI 302.1R-96",
            " BAR-1, ACI 318-19 Table 20.5.1.3.1",
            " BAR-7, ACI 318-19 Table 20.5.1.3.1"),
        CodeCautions.of(job.build()).cautions().stream()
            .map(c -> c.section() + " " + c.rule())
            .toList());
  }

  @Test
  void soundSectionsDrawNoCodeCaution() {
    Job job =
        new SiteJob()
            .with(slab("A").thick("3.5"))
            .with(recess("R", "A", inches("2")).size(feet(6), feet(4)).thick("3.5"))
            .with(thickening("T", "A").size(feet(6), feet(1)).thick("8"))
            .with(bare("F", Kind.FOOTING).size(feet(60), feet(1)).thick("6"))
            .build();

    assertEquals(List.of(), CodeCautions.of(job).cautions());
    Job barred = new SiteJob().with(slab("A").bars("#4", "18")).build();
    assertEquals(List.of(), CodeCautions.of(barred).cautions());
    Job plain = new SiteJob().with(Setting.EDGE_COVER, "2").with(slab("A")).build();
    assertEquals(List.of(), CodeCautions.of(plain).cautions());
  }

  @Test
  void safetyCautionsFollowTheJob() {
    Job plain = new SiteJob().with(slab("A").joints(JointSpacing.NONE)).build();
    Job pumped = new SiteJob().with(SiteJob.pour(1, Placing.PUMP)).with(slab("A")).build();

    List<String> always = safety(plain);
    List<String> more = safety(pumped);
    assertTrue(always.contains("29 CFR 1926.651(b), state law"));
    assertFalse(always.contains("29 CFR 1926.1153 (a)-(d)"));
    assertFalse(always.contains("29 CFR 1926.702(e), 1926.1408"));
    assertTrue(more.contains("29 CFR 1926.1153 (a)-(d)"));
    assertTrue(more.contains("29 CFR 1926.702(e), 1926.1408"));
  }

  private static List<String> safety(Job job) {
    return TakeOffs.of(job, Offer.NOTHING).cautions().stream().map(Caution::rule).toList();
  }

  private static Quantity quantity(Job job, String what) {
    return ExtrasTakeoff.of(job).quantities().stream()
        .filter(row -> row.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  private static Extra extra(
      String what, String size, double quantity, String unit, ExtraKind kind) {
    return new Extra(what, size, quantity, unit, 1, Optional.empty(), kind, "", SiteJob.PLACE);
  }

  private static Change change(String code, ChangeState state) {
    return new Change(
        code, Optional.empty(), "owner", "wider door", Optional.empty(), state, SiteJob.PLACE);
  }
}
