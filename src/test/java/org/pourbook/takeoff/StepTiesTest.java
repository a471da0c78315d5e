package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SteelTakeoffTest.amount;
import static org.pourbook.takeoff.SteelTakeoffTest.caution;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.BarMat;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.job.Where;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.BarMark.BarShape;
import org.pourbook.takeoff.SteelFixture.SectionBuilder;

/**
 * A wash bay 6' × 4' in a floor of 20' × 12' × 6" with #4 @ 12 EW, drawn by hand: its corner 4'
 * from both axes, its top 6" lower.
 *
 * <pre>
 *   floor bar ─────────┐  29" leg
 *                      │  riser 6" + 1/2"
 *            29" leg   └───────── bay bar
 * </pre>
 */
class StepTiesTest {

  private static final Length FOOT = Length.ofFeet(1);
  private static final Length SIX_INCHES = Length.ofInches(6);

  private final SteelFixture job = new SteelFixture();
  private final SectionBuilder floor =
      job.slab("F1", Length.ofFeet(20), Length.ofFeet(12), SIX_INCHES).bars("#4", FOOT);

  private SectionBuilder bay(Length drop) {
    return job.slab("B1", Length.ofFeet(6), Length.ofFeet(4), SIX_INCHES).recessIn("F1", drop);
  }

  /**
   * Along: 13 bars, 11-1/2" apart from 3"; the 5 between 45" and 99" leave 3" to 45" and 123" to
   * 237". Across: 21 bars, 11.7" apart; the 7 between 45" and 123" leave 3" to 45" and 99" to 141".
   */
  @Test
  void aPlacedBayInterruptsTheFloorsBarsAtTheCover() {
    bay(SIX_INCHES).at(Length.ofFeet(4), Length.ofFeet(4)).bars("#4", FOOT);
    Part part = job.takeOff();
    assertEquals(8 * 19.5 + 5 * (3.5 + 9.5), amount(part, "bars along"), 1e-9);
    assertEquals(14 * 11.5 + 7 * (3.5 + 3.5), amount(part, "bars across"), 1e-9);
  }

  /** Of 13 × 21 crossings 5 × 7 lie in the bay; every second of 238 is tied. */
  @Test
  void noCrossingIsTiedWithinABay() {
    bay(SIX_INCHES).at(Length.ofFeet(4), Length.ofFeet(4)).bars("#4", FOOT);
    assertEquals(119 * 0.0104, amount(job.takeOff(), "tie wire"), 1e-9);
  }

  /**
   * Rows of supports at 3", 49", 95" and 141", each 19'-6" long: 6 at 4'. A bay of 12' × 6' with
   * its cover leaves 3" to 45" and 195" to 237" of the middle two: 2 and 2. Bars that run on below
   * a bay are held there too.
   */
  @Test
  void noSupportsOfTheFloorStandInABay() {
    SectionBuilder bay = bay(SIX_INCHES).at(Length.ofFeet(4), Length.ofFeet(4));
    bay.shape = new Shape.Rectangle(Length.ofFeet(12), Length.ofFeet(6));
    assertEquals(6 + 2 * (2 + 2) + 6, amount(job.takeOff(), "bar supports"));

    bay.drop = Length.ofInches(2);
    assertEquals(6 * 4, amount(job.takeOff(), "bar supports"));
  }

  @Test
  void aBarJustOutsideTheCoverOfABayRunsOn() {
    // The bay begins at 40-1/2": the bar at 37-1/2" touches its cover, and so does that at 95".
    bay(SIX_INCHES).at(Length.ofFeet(4), Length.ofInches(81, 2)).bars("#4", FOOT).shape =
        new Shape.Rectangle(Length.ofFeet(6), Length.ofInches(103, 2));
    assertEquals(9 * 19.5 + 4 * (3.5 + 9.5), amount(job.takeOff(), "bars along"), 1e-9);
  }

  @Test
  void likeBaysInOneFloorAreTakenByTheirArea() {
    bay(SIX_INCHES).at(Length.ofFeet(4), Length.ofFeet(4)).bars("#4", FOOT).count = 2;
    Part part = job.takeOff();
    // 48 of 240 ft2; every second of 0.8 × 273 crossings
    assertEquals(0.8 * 13 * 19.5, amount(part, "bars along"), 1e-6);
    assertEquals(110 * 0.0104, amount(part, "tie wire"), 1e-9);
    // and of 6 × 4 supports, in whole ones
    assertEquals(20, amount(part, "bar supports"));
  }

  @Test
  void aBayOutsideLiesLowerByItsCover() {
    bay(SIX_INCHES).bars("#4", FOOT).where = Where.OUTSIDE;
    assertEquals(Optional.of(Length.ofInches(7)), steps(job.takeOff()).get(0).b());
  }

  @Test
  void aBaysInnerSidesMayBeGivenAsARun() {
    bay(SIX_INCHES).bars("#4", FOOT).formed = Sides.ofRun(Length.ofFeet(14));
    assertEquals(15, steps(job.takeOff()).stream().mapToInt(BarMark::count).sum());
  }

  @Test
  void theBarsThatMeetASideGoOnInItsTies() {
    // Along Length #3 at 12", across #4 at 24": sides W take #3, sides L take #4.
    floor.bars =
        Optional.of(
            new BarMat(
                BarSize.named("#3").orElseThrow(),
                FOOT,
                BarSize.named("#4").orElseThrow(),
                Length.ofInches(24)));
    bay(SIX_INCHES).bars("#4", FOOT);
    job.joint(step("L1", Length.ofFeet(6), Length.ZERO));
    Part part = job.takeOff();
    assertEquals(2 * 5, ties(part, "B1", "#3"));
    assertEquals(4, ties(part, "B1", "#4"));
    assertEquals(4, ties(part, "J1", "#4"));
  }

  private static int ties(Part part, String section, String bar) {
    return steps(part).stream()
        .filter(tie -> tie.section().equals(section))
        .filter(tie -> tie.size().designation().equals(bar))
        .mapToInt(BarMark::count)
        .sum();
  }

  @Test
  void tiesOfOnePourAreNotCappedAndTiedToBothMats() {
    bay(SIX_INCHES).bars("#4", FOOT);
    job.joint(step("L1", Length.ofFeet(6), Length.ZERO));
    Part part = job.takeOff();
    assertTrue(part.quantities().stream().noneMatch(q -> q.what().equals("bar caps")));
    // 7 ties, two laps each with two ties of wire
    double joint =
        part.quantities().stream()
            .filter(q -> q.section().equals("J1") && q.what().equals("tie wire"))
            .mapToDouble(Quantity::amount)
            .sum();
    assertEquals(28 * 0.0104, joint, 1e-9);
    // The bay's own mat: ⌈42/12⌉ + 1 = 5 by ⌈66/12⌉ + 1 = 7 bars, 18 ties; 17 step ties, 68.
    double bay =
        part.quantities().stream()
            .filter(q -> q.section().equals("B1") && q.what().equals("tie wire"))
            .mapToDouble(Quantity::amount)
            .sum();
    assertEquals((18 + 68) * 0.0104, bay, 1e-9);
  }

  /** #4 @ 12 along X, #3 @ 18 across: a drawn bay's side 1 runs along X, its side 2 along Y. */
  @Test
  void aStepJointOnADrawnSideContinuesTheBarsThatMeetIt() {
    floor.bars =
        Optional.of(
            new BarMat(
                BarSize.named("#4").orElseThrow(),
                FOOT,
                BarSize.named("#3").orElseThrow(),
                Length.ofInches(18)));
    bay(SIX_INCHES).shape = Plan.outline(Plan.box(4, 4, 6, 4));
    job.joint(step("1", Length.ofFeet(6), Length.ZERO));
    job.joint(step("2", Length.ofFeet(4), Length.ZERO));

    assertEquals(
        List.of("#3 step ties @ 18\"", "#4 step ties @ 12\""),
        job.takeOff().joints().stream().map(JointLine::barText).toList());
  }

  @Test
  void aDrilledStepTiesUpperLegIsItsEmbedment() {
    Joint plain = step("L1", Length.ofFeet(20), SIX_INCHES);
    job.joint(
        new Joint(
            plain.code(),
            plain.section(),
            plain.side(),
            plain.kind(),
            plain.length(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            true,
            Optional.of(Length.ofInches(8)),
            plain.drop(),
            Optional.empty(),
            plain.place()));
    Part part = job.takeOff();
    assertEquals(Length.ofInches(8), steps(part).get(0).a());
    assertEquals(Optional.of(Length.ofInches(29)), steps(part).get(0).c());
    assertEquals("drilled 8\" deep, hole 5/8\"", part.joints().get(0).note());
  }

  @Test
  void aBayWithoutAPlaceTakesItsShareOfTheArea() {
    bay(SIX_INCHES).bars("#4", FOOT);
    Part part = job.takeOff();
    // 24 of 240 ft2
    assertEquals(0.9 * 13 * 19.5, amount(part, "bars along"), 1e-6);
    assertEquals(0.9 * 21 * 11.5, amount(part, "bars across"), 1e-6);
  }

  @Test
  void stubsBesideABayAreLeftOut() {
    // 1'-2" from the axis: what is left of 3" to 11" is under 12".
    bay(SIX_INCHES).at(Length.ofInches(14), Length.ofFeet(4)).bars("#4", FOOT);
    assertEquals(
        8 * 19.5 + 5 * (237 - 14 - 72 - 3) / 12.0, amount(job.takeOff(), "bars along"), 1e-9);
  }

  /** ⌈72/12⌉ + 1 = 7 on each side L, ⌈48/12⌉ + 1 = 5 on each side W. */
  @Test
  void tiesStandOnAllInnerSidesAtTheFloorsSpacing() {
    bay(SIX_INCHES).bars("#4", FOOT);
    Part part = job.takeOff();
    List<BarMark> ties = steps(part);
    assertEquals(24, ties.stream().mapToInt(BarMark::count).sum());
    BarMark tie = ties.get(0);
    assertEquals(Length.ofInches(29), tie.a());
    assertEquals(Optional.of(Length.ofInches(13, 2)), tie.b());
    assertEquals(Optional.of(Length.ofInches(29)), tie.c());
    // 29 + 6.5 + 29 less 2 × (8 − 7π/4) × 0.5
    assertEquals(64.5 - 8 + 7 * Math.PI / 4, tie.cutLength().inches(), 1e-6);
    double feet =
        part.quantities().stream()
            .filter(q -> q.what().equals("step ties"))
            .mapToDouble(Quantity::amount)
            .sum();
    assertEquals(24 * (64.5 - 8 + 7 * Math.PI / 4) / 12, feet, 1e-6);
  }

  @Test
  void aSideOnTheFloorsOuterEdgeHasNoTies() {
    bay(SIX_INCHES).bars("#4", FOOT).formed = Sides.of(List.of("L1", "W1", "W2"));
    assertEquals(17, steps(job.takeOff()).stream().mapToInt(BarMark::count).sum());
  }

  @Test
  void barsRunOnUnderABayLowerByLessThanEightDiameters() {
    SectionBuilder bay = bay(Length.ofInches(63, 16)).at(Length.ofFeet(4), Length.ofFeet(4));
    assertTrue(job.takeOff().cautions().isEmpty());
    bay.bars("#4", FOOT);
    Part part = job.takeOff();
    assertTrue(caution(part, "its own bars come besides"));
    assertEquals(13 * 19.5, amount(part, "bars along"), 1e-9);
    assertTrue(steps(part).isEmpty());
  }

  @Test
  void aBayWithoutBarsOfItsOwnIsTold() {
    bay(SIX_INCHES);
    assertTrue(caution(job.takeOff(), "has none of its own"));
  }

  @Test
  void aStepJointReplacesTheTiesOfItsSide() {
    bay(SIX_INCHES).bars("#4", FOOT);
    job.joint(step("L1", Length.ofFeet(6), Length.ZERO));
    Part part = job.takeOff();
    List<BarMark> ties = steps(part);
    assertEquals(24, ties.stream().mapToInt(BarMark::count).sum());
    BarMark joint = ties.stream().filter(t -> t.section().equals("J1")).findFirst().orElseThrow();
    assertEquals(7, joint.count());
    assertEquals(Optional.of(Length.ofInches(13, 2)), joint.b());
    assertEquals(7, part.joints().get(0).bars());
  }

  @Test
  void aStepJointTooLowToBendIsTiedStraight() {
    job.joint(step("L1", Length.ofFeet(20), Length.ofInches(2)));
    Part part = job.takeOff();
    // ⌈240/12⌉ bars of two laps
    assertEquals(20 * 58 / 12.0, amount(part, "tie bars"), 1e-9);
    assertTrue(caution(part, "too low to bend #4"));
  }

  @Test
  void aWrittenBarLengthIsWhatIsCutAndItsShortLegsAreTold() {
    Joint plain = step("L1", Length.ofFeet(20), SIX_INCHES);
    job.joint(
        new Joint(
            plain.code(),
            plain.section(),
            plain.side(),
            plain.kind(),
            plain.length(),
            Optional.of("#4"),
            Optional.of(FOOT),
            Optional.of(Length.ofInches(48)),
            false,
            Optional.empty(),
            plain.drop(),
            Optional.empty(),
            plain.place()));
    Part part = job.takeOff();
    BarMark tie = steps(part).get(0);
    // To the nanometre: half of an odd number of them.
    assertEquals(48, tie.cutLength().inches(), 1e-6);
    // (48 + 2 × 1.2511 − 6.5)/2
    assertEquals(22.0011, tie.a().inches(), 0.00005);
    assertTrue(caution(part, "are under the lap of 29\""));
  }

  @Test
  void tiesLeftStandingBetweenTwoPoursAreCapped() {
    bay(SIX_INCHES).bars("#4", FOOT).pour = 2;
    job.pours = 2;
    double caps =
        job.takeOff().quantities().stream()
            .filter(q -> q.what().equals("bar caps"))
            .mapToDouble(Quantity::amount)
            .sum();
    assertEquals(24, caps);
  }

  @Test
  void aPartsTiesCountForEachOfItsParents() {
    bay(SIX_INCHES).bars("#4", FOOT).count = 2;
    floor.count = 3;
    assertEquals(6 * 24, steps(job.takeOff()).stream().mapToInt(BarMark::count).sum());
  }

  private static Joint step(String side, Length length, Length drop) {
    Joint plain = SteelFixture.joint(JointKind.STEP, side.isEmpty() ? "" : section(drop), length);
    return new Joint(
        plain.code(),
        plain.section(),
        Optional.of(side),
        plain.kind(),
        plain.length(),
        plain.bar(),
        plain.spacing(),
        plain.barLength(),
        false,
        Optional.empty(),
        drop,
        Optional.empty(),
        plain.place());
  }

  /** A joint with a drop of its own lies on the floor's side, one without on the bay's. */
  private static String section(Length drop) {
    return drop.isZero() ? "B1" : "F1";
  }

  private static List<BarMark> steps(Part part) {
    return part.barMarks().stream().filter(mark -> mark.shape() == BarShape.STEP).toList();
  }
}
