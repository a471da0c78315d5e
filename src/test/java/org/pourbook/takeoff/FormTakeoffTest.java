package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.bare;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Kind;
import org.pourbook.job.Placing;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

class FormTakeoffTest {

  /** Floating point of sums of feet; every count is compared exactly. */
  private static final double SUM = 1e-9;

  private static final SiteJob.SectionBuilder FLOOR = slab("F").size(feet(24), feet(16));

  @Test
  void aFourInchSlabIsFormedByTwoByFoursThatLapRoundOneWay() {
    Part part = FormTakeoff.of(new SiteJob().with(FLOOR).build(), Shelf.empty());

    // 2 × (24'-0" + 1-1/2") + 2 × (16'-0" + 1-1/2")
    assertEquals(80.5, amount(part, Material.FORM_BOARD.of("2x4")), SUM);
    assertEquals(
        "2 × 24'-1 1/2\" + 2 × 16'-1 1/2\" = 80.50 ft", row(part, "form boards 2x4").working());
    // No board over 16 ft, none under 4 ft: 16 + 8'-1 1/2", and 12'-1 1/2" + 4.
    assertEquals(
        List.of("F side L1 2x4 16'-0\" 1", "F side L1 2x4 8'-1 1/2\" 1"), pieces(part, "side L1"));
    assertEquals(
        List.of("F side W2 2x4 12'-1 1/2\" 1", "F side W2 2x4 4'-0\" 1"), pieces(part, "side W2"));
    assertEquals(4, amount(part, Material.SPLICE.of("2x4")));
    // 3 ft apart: 2 × (8 + 1 + 1 at the butt) + 2 × (6 + 1 + 1)
    assertEquals(36, amount(part, Material.STAKE.of("24 in")));
    assertEquals(0, amount(part, Material.BRACE.of("2x4")));
    // 2 × 36 + 8 × 4; 3 × 4 corners
    assertEquals(104, amount(part, Material.FORM_SCREW.of("2-1/2 in")));
    assertEquals(12, amount(part, Material.FORM_SCREW.of("3 in")));
    // 80 ft × 4 in ÷ 400 ft2/gal
    assertEquals(80.0 / 3 / 400, amount(part, Material.FORM_RELEASE.of("")), SUM);
    assertEquals(List.of(), part.cautions());
  }

  @Test
  void aSixteenInchEdgeIsFormedByTwoBoardsWithCloseStakesAndBraces() {
    SiteJob job =
        new SiteJob().with(slab("F").size(feet(36), feet(24)).edge("16", "12", Sides.ALL));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    // 16 − 3/4 = 15-1/4 in: 2x10 + 2x8 = 16-1/2 in is the least that reaches it with two boards.
    Quantity boards = row(part, "form boards 2x10, let into the grade by 1/2\"");
    assertEquals(120.5, boards.amount(), SUM);
    assertEquals(120.5, amount(part, Material.FORM_BOARD.of("2x8")), SUM);
    // 2 ft apart: 2 × (18 + 1 + 2 butts) + 2 × (12 + 1 + 1 butt), 16 + 18 in long
    assertEquals(70, row(part, "stakes, 34\" long").amount());
    // 2 × ⌈21 ÷ 2⌉ + 2 × ⌈14 ÷ 2⌉, a heel stake each; max(36, 1.5 × 16 + 18) in long
    assertEquals(36, row(part, "braces, 42\" long").amount());
    assertEquals(36, row(part, "heel stakes, 24\" long").amount());
    assertEquals(6, amount(part, Material.SPLICE.of("2x8")));
    assertEquals(6, amount(part, Material.SPLICE.of("2x10")));
    // 2 × 70 × 2 boards + 4 × 36 + 8 × 12 = 520; 3 × 4 corners × 2 boards
    assertEquals(520, amount(part, Material.FORM_SCREW.of("2-1/2 in")));
    assertEquals(24, amount(part, Material.FORM_SCREW.of("3 in")));
  }

  @Test
  void onlyTurnedDownSidesAreAsHighAsTheEdge() {
    SiteJob job =
        new SiteJob()
            .with(slab("F").size(feet(12), feet(8)).edge("12", "12", Sides.of(List.of("L1"))));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    assertEquals(12.125, amount(part, Material.FORM_BOARD.of("2x12")), SUM);
    assertEquals(12.125 + 2 * 8.125, amount(part, Material.FORM_BOARD.of("2x4")), SUM);
  }

  @Test
  void aSideThatMeetsNoOtherFormHasABoardOfItsOwnLength() {
    SiteJob job = new SiteJob().with(FLOORS_EDGE);
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    // W1 laps L1, L1 laps W2, W2 ends at the unformed L2.
    assertEquals(2 * 8 + 12 + 2 * 0.125, amount(part, Material.FORM_BOARD.of("2x4")), SUM);
    assertEquals(6, amount(part, Material.FORM_SCREW.of("3 in")));
  }

  private static final SiteJob.SectionBuilder FLOORS_EDGE =
      slab("F").size(feet(12), feet(8)).formed(Sides.of(List.of("L1", "W1", "W2")));

  /** 24 ft at 1/4 in a foot fall 6 in: the face is 10 in high where the base is level. */
  @Test
  void aTopThatFallsOverALevelBaseIsCautionedWhereItsFormIsTooLow() {
    assertEquals(1, cautionsOfFall(falling(false)));
    assertEquals(0, cautionsOfFall(falling(true)));
    assertEquals(0, cautionsOfFall(falling(false).edge("10", "12", Sides.ALL)));
  }

  private static SiteJob.SectionBuilder falling(boolean follows) {
    return slab("F").size(feet(24), feet(16)).fall(1 / 48.0, follows);
  }

  private static long cautionsOfFall(SiteJob.SectionBuilder floor) {
    return FormTakeoff.of(new SiteJob().with(floor).build(), Shelf.empty()).cautions().stream()
        .filter(caution -> caution.says().contains("the face is 10\" at the high end"))
        .count();
  }

  @Test
  void buttedBoardsSayWhatRunTheyArePiecesOf() {
    Part part = FormTakeoff.of(new SiteJob().with(FLOOR).build(), Shelf.empty());
    Joined l1 =
        new Joined(feet(24).plus(Length.ofInches(3, 2)), 1, Length.ZERO, feet(4), feet(16), 1);
    assertEquals(List.of(l1, l1), joined(part, "side L1"));

    // Two courses of one size are one run, butted at the same places.
    Shelf low = Shelf.empty().boards("2x4", feet(16), "1");
    Part high =
        FormTakeoff.of(
            new SiteJob().with(slab("F").size(feet(24), feet(16)).thick("6")).build(), low);
    assertEquals(2, joined(high, "side L1").get(0).courses());
  }

  @Test
  void coursesOfTwoSizesAreTiedToEachOther() {
    // 17 in: a 2x10 and a 2x8, which are bought apart and must be butted alike.
    Shelf shelf =
        Shelf.empty()
            .boards("2x4", feet(16), "1")
            .boards("2x8", feet(16), "2")
            .boards("2x10", feet(16), "3");
    Part part =
        FormTakeoff.of(
            new SiteJob().with(slab("F").size(feet(24), feet(16)).thick("17")).build(), shelf);
    assertEquals(4, pieces(part, "side L1").size());
    Joined tied =
        new Joined(
            feet(24).plus(Length.ofInches(3, 2)), 1, Length.ZERO, feet(4), feet(16), 1, true);
    assertEquals(List.of(tied, tied, tied, tied), joined(part, "side L1"));
    // One butt a side, and one board more in each: a stake more where the other board is butted.
    assertEquals(
        List.of(
            "Boards one above the other are butted at the same places, each with a stake there."
                + " Butts set apart are stiffer: turn every other course end for end, and have 4"
                + " stakes more."),
        part.cautions().stream().map(Caution::says).toList());
  }

  private static List<Joined> joined(Part part, String place) {
    return part.pieces().stream()
        .filter(piece -> piece.goesTo().endsWith(place))
        .flatMap(piece -> piece.joined().stream())
        .toList();
  }

  @Test
  void aGivenLengthIsOneStraightRun() {
    SiteJob job = new SiteJob().with(slab("F").formed(Sides.ofRun(feet(10))));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    assertEquals(10, amount(part, Material.FORM_BOARD.of("2x4")), SUM);
    assertEquals(List.of("F run 2x4 10'-0\" 1"), pieces(part, "run"));
    assertEquals(5, amount(part, Material.STAKE.of("24 in")));
    assertEquals(0, amount(part, Material.FORM_SCREW.of("3 in")));
  }

  @Test
  void aRecessHasAnInnerFormAsHighAsItsDropAndShorterByTheBoards() {
    SiteJob job =
        new SiteJob()
            .with(FLOOR)
            .with(recess("R", "F", inches("2.5")).size(feet(6), feet(4)).at(feet(3), feet(3)));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    Quantity boards =
        part.quantities().stream()
            .filter(q -> q.section().equals("R") && q.what().startsWith("form boards"))
            .findFirst()
            .orElseThrow();
    assertEquals("form boards 2x4, ripped by 1\"", boards.what());
    assertEquals(20 - 4 * 0.125, boards.amount(), SUM);
  }

  @Test
  void aRecessAtTheSlabsEdgeHasNoInnerFormThere() {
    SiteJob job =
        new SiteJob()
            .with(FLOOR)
            .with(recess("R", "F", inches("4")).size(feet(6), feet(4)).at(feet(0), feet(3)));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    // L1 and W2 stop short of the next board, L2 ends at the floor's own form.
    assertEquals(6 + 4 + 6 - 2 * 0.125, row(part, "R", "form boards 2x4").amount(), SUM);
  }

  @Test
  void everySectionOfACountIsFormed() {
    SiteJob job = new SiteJob().with(slab("F").size(feet(12), feet(8)).count(3));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    assertEquals(3 * 40.5, amount(part, Material.FORM_BOARD.of("2x4")), SUM);
    assertEquals(
        "3 × (2 × 12'-1 1/2\" + 2 × 8'-1 1/2\") = 121.50 ft",
        row(part, "form boards 2x4").working());
    assertEquals(List.of("F side L1 2x4 12'-1 1/2\" 3"), pieces(part, "side L1"));
  }

  @Test
  void stakesAreBoughtInTheNextLengthOnOffer() {
    Shelf shelf =
        Shelf.empty()
            .each(Material.STAKE, "24 in", "1.00")
            .each(Material.STAKE, "48 in", "2.50")
            .each(Material.STAKE, "36 in", "1.50");
    SiteJob job = new SiteJob().with(FLOOR.thick("8"));
    Part part = FormTakeoff.of(job.build(), shelf);
    FLOOR.thick("4");

    // 8 + 18 = 26 in
    assertTrue(amount(part, Material.STAKE.of("36 in")) > 0);
    assertEquals(0, amount(part, Material.STAKE.of("24 in")));
  }

  @Test
  void stakesAreCutFromTwoByFourWhereThatIsCheaperOrNoneIsSold() {
    Shelf dear = Shelf.empty().boards("2x4", feet(16), "1.60").each(Material.STAKE, "24 in", "1");
    Shelf cheap = Shelf.empty().boards("2x4", feet(16), "1.70").each(Material.STAKE, "24 in", "1");
    Shelf none = Shelf.empty().boards("2x4", feet(16), "9.99");
    SiteJob job = new SiteJob().with(FLOOR);

    // 24 in of 2x4 costs 0.6096 × 1.60 = 0.98, or 1.04.
    Part cut = FormTakeoff.of(job.build(), dear);
    assertEquals(36, row(cut, "stakes, 24\" long").amount());
    assertEquals(72, row(cut, "2x4 for stakes").amount(), SUM);
    assertEquals(List.of("F stakes 2x4 2'-0\" 36"), pieces(cut, "stakes"));
    assertEquals(36, amount(FormTakeoff.of(job.build(), cheap), Material.STAKE.of("24 in")));
    assertEquals(72, row(FormTakeoff.of(job.build(), none), "2x4 for stakes").amount(), SUM);
  }

  @Test
  void boardsAreChosenFromWhatIsOnOffer() {
    Shelf shelf =
        Shelf.empty()
            .boards("2x8", feet(12), "3")
            .boards("2x12", feet(16), "5")
            .boards("1x4", feet(16), "1");
    Part part = FormTakeoff.of(new SiteJob().with(FLOOR).build(), shelf);

    assertEquals(80.5, amount(part, Material.FORM_BOARD.of("2x8")), SUM);
    // Boards of 12 ft: 24'-1 1/2" is 12 + 8'-1 1/2" + 4.
    assertEquals(
        List.of("F side L1 2x8 12'-0\" 1", "F side L1 2x8 8'-1 1/2\" 1", "F side L1 2x8 4'-0\" 1"),
        pieces(part, "side L1"));
    assertEquals(
        "form boards 2x8, let into the grade by 3-1/4\"",
        row(part, "F", "form boards 2x8, let into the grade by 3-1/4\"").what());
  }

  @Test
  void aMetricJobTakesMetricBoardsWhereBothAreOnOffer() {
    Shelf shelf = Shelf.empty().boards("2x6", feet(16), "2").boards("38x140", metres("4.8"), "2");
    SiteJob job =
        new SiteJob().metric().with(slab("F").size(metres("6"), metres("4")).thick(mm(150)));
    Part part = FormTakeoff.of(job.build(), shelf);

    assertEquals(20 + 4 * 0.038, amount(part, Material.FORM_BOARD.of("38x140")), SUM);
  }

  @Test
  void aSideSharedByTwoSectionsIsFormedOnceWithTheEarlierPour() {
    SiteJob job =
        new SiteJob()
            .with(slab("B").size(feet(10), feet(12)).at(feet(20), feet(0)).pour(2))
            .with(slab("A").size(feet(20), feet(16)).at(feet(0), feet(0)).pour(1))
            .with(SiteJob.pour(1, Placing.CHUTE))
            .with(SiteJob.pour(2, Placing.CHUTE));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    assertEquals(72, row(part, "A", "formed sides").amount(), SUM);
    assertEquals(32, row(part, "B", "formed sides").amount(), SUM);
    assertEquals(
        List.of(
            new Caution(
                "B",
                "side W1 lies on side W2 of A: 12'-0\" formed once, with A in pour 1",
                "FORM-1")),
        part.cautions());
    // B: L1 laps W2, W2 laps L2, L2 ends at A; A keeps its four laps.
    assertEquals(32.25, row(part, "B", "form boards 2x4").amount(), SUM);
  }

  @Test
  void whatASharedSideLeavesIsFormedBesideIt() {
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(10), feet(6)).at(feet(0), feet(5)))
            .with(slab("B").size(feet(8), feet(16)).at(feet(10), feet(0)).thick("3"));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    // B's W1 is 16 ft, 6 ft of it against A: 5 ft are left on either hand.
    assertEquals(48 - 6, row(part, "B", "formed sides").amount(), SUM);
    // The end of the last part of W1 laps L1; its first part ends at A.
    Quantity boards = row(part, "B", "form boards 2x4, let into the grade by 1/2\"");
    assertEquals(42 + 4 * 0.125, boards.amount(), SUM);
  }

  @Test
  void aRoundFormedPierTakesATubeAndABarePierNone() {
    Shape round = new Shape.Round(inches("18"));
    SiteJob job =
        new SiteJob()
            .with(bare("P", Kind.PIER).shape(round).thick("36").formed(Sides.ALL).count(4))
            .with(bare("Q", Kind.PIER).shape(round).thick("36").count(2));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    assertEquals(4, amount(part, Material.FORM_TUBE.of("18 in")));
    assertEquals(1, part.quantities().size());
  }

  @Test
  void aRoundSlabIsFormedAlongItsCurveWithACaution() {
    SiteJob job = new SiteJob().with(slab("F").shape(new Shape.Round(feet(10))));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    assertEquals(Math.PI * 10, amount(part, Material.FORM_BOARD.of("2x4")), 1e-7); // to the nm
    // Two boards close on themselves with two butts.
    assertEquals(2, amount(part, Material.SPLICE.of("2x4")));
    assertEquals(1, part.cautions().size());
  }

  @Test
  void anUnformedFootingNeedsNothing() {
    SiteJob job = new SiteJob().with(bare("T", Kind.FOOTING).size(feet(60), feet(2)));
    assertEquals(List.of(), FormTakeoff.of(job.build(), Shelf.empty()).quantities());
  }

  @Test
  void aLongerShortestBoardAndAWiderSpacingAreTakenFromPractice() {
    SiteJob job =
        new SiteJob()
            .with(Setting.SHORTEST_BOARD, "6")
            .with(Setting.STAKE_SPACING, "4")
            .with(FLOOR);
    Part part = FormTakeoff.of(job.build(), Shelf.empty());

    assertEquals(
        List.of("F side W2 2x4 10'-1 1/2\" 1", "F side W2 2x4 6'-0\" 1"), pieces(part, "side W2"));
    // 40 ft at 4 ft would be 10 spaces: 24 ft is 6 and 16 ft is 4.
    assertEquals(2 * (6 + 2) + 2 * (4 + 2), amount(part, Material.STAKE.of("24 in")));
  }

  private static Length metres(String metres) {
    return Length.ofMetres(new BigDecimal(metres));
  }

  private static Length mm(long mm) {
    return Length.ofMillimetres(mm);
  }

  static double amount(Part part, MaterialKey key) {
    return part.quantities().stream()
        .filter(q -> q.material().filter(key::equals).isPresent())
        .mapToDouble(Quantity::amount)
        .sum();
  }

  private static Quantity row(Part part, String what) {
    return row(part, "F", what);
  }

  private static Quantity row(Part part, String section, String what) {
    return part.quantities().stream()
        .filter(q -> q.section().equals(section) && q.what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError(what + " not among " + part.quantities()));
  }

  private static List<String> pieces(Part part, String place) {
    return part.pieces().stream()
        .filter(piece -> piece.goesTo().endsWith(place))
        .map(p -> p.goesTo() + " " + p.material().size() + " " + p.length() + " " + p.count())
        .toList();
  }
}
