package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Edge;
import org.pourbook.job.JointKind;
import org.pourbook.job.Kind;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.job.Where;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.BarMark.BarShape;
import org.pourbook.takeoff.SteelFixture.SectionBuilder;

class SteelTakeoffTest {

  private static final Length FOOT = Length.ofFeet(1);
  private static final Length FOUR_INCHES = Length.ofInches(4);

  private final SteelFixture job = new SteelFixture();

  /**
   * By hand, 24' × 16' with #4 @ 16 EW: (24' − 6") = 23'-6" long, (16' − 6") = 15'-6" across.
   * Along: ⌈186/16⌉ + 1 = 13 bars of 23'-6"; across: ⌈282/16⌉ + 1 = 19 bars of 15'-6". From 20 ft
   * stock the long bars have one lap of 29" (class B in 3000 psi, 28.48 up): 20' + 5'-11".
   */
  @Test
  void aSmallSlabIsWorkedOutAsByHand() {
    slab24x16();
    Part part = job.takeOff();
    assertEquals(13 * 23.5, amount(part, "bars along"), 1e-9);
    assertEquals(19 * 15.5, amount(part, "bars across"), 1e-9);
    assertEquals(13 * 29 / 12.0, amount(part, "laps of bars along"), 1e-9);
    assertEquals("13 × 23'-6\" = 305.50 ft", find(part, "bars along").working());
    assertEquals("13 laps × 29\" = 31.42 ft", find(part, "laps of bars along").working());
    double feet = 13 * 23.5 + 19 * 15.5 + 13 * 29 / 12.0;
    assertEquals(feet * 0.668, amount(part, "weight of #4 bars"), 1e-9);
    Map<Length, Integer> pieces = pieces(part, "#4");
    assertEquals(
        Map.of(Length.ofFeet(20), 13, Length.ofInches(71), 13, Length.ofInches(186), 19), pieces);
    // 13 × 19 crossings, every second tied, and two a lap: (124 + 26) × 1 ft × 0.0104 lb/ft
    assertEquals(150 * 0.0104, amount(part, "tie wire"), 1e-9);
    assertEquals("150 ties × 12\" × 0.0104 lb/ft = 1.56 lb", find(part, "tie wire").working());
    assertEquals("631.42 ft × 0.668 lb/ft = 421.79 lb", find(part, "weight of #4 bars").working());
    // ⌈23.5/4⌉ + 1 = 7 by ⌈15.5/4⌉ + 1 = 5, 4 − 1-1/2 − 2 × 1/2 in high
    assertEquals(35, amount(part, "bar supports"));
    assertEquals(Material.BAR_SUPPORT.of("1-1/2 in"), key(part, "bar supports"));
  }

  /** As often as that, but elsewhere if the cut plan pays: no piece under two laps of 29". */
  @Test
  void thePiecesOfALappedRunSayWhatRunTheyAreOf() {
    slab24x16();
    Joined joined =
        new Joined(
            Length.ofInches(282),
            1,
            Length.ofInches(29),
            Length.ofInches(58),
            Length.ofFeet(20),
            1);
    List<PieceNeed> lapped =
        job.takeOff().pieces().stream().filter(piece -> piece.joined().isPresent()).toList();
    assertEquals(
        List.of(Length.ofFeet(20), Length.ofInches(71)),
        lapped.stream().map(PieceNeed::length).toList());
    assertTrue(lapped.stream().allMatch(piece -> piece.joined().get().equals(joined)));
  }

  /** 21 ft = 20' + 3'-5": shorter than two laps, so no piece of another division is shorter. */
  @Test
  void aShortRestOfFullBarsIsTheShortestPiece() {
    job.slab("F1", Length.ofInches(258), Length.ofFeet(16), FOUR_INCHES)
        .bars("#4", Length.ofInches(16));
    Joined joined =
        job.takeOff().pieces().stream()
            .flatMap(piece -> piece.joined().stream())
            .findFirst()
            .orElseThrow();
    assertEquals(Length.ofInches(41), joined.shortest());
  }

  @Test
  void theLongestBarOnOfferDecidesTheLaps() {
    slab24x16();
    job.stock.put("#4", Length.ofFeet(40));
    assertTrue(job.takeOff().quantities().stream().noneMatch(q -> q.rule().equals("BAR-2")));
  }

  @Test
  void threeLikeSlabsTakeThreeTimesTheSteel() {
    slab24x16().count = 3;
    Part part = job.takeOff();
    assertEquals(3 * 13 * 23.5, amount(part, "bars along"), 1e-9);
    assertEquals("13 × 23'-6\" × 3 = 916.50 ft", find(part, "bars along").working());
    assertEquals("39 laps × 29\" = 94.25 ft", find(part, "laps of bars along").working());
    assertEquals(105, amount(part, "bar supports"));
    assertEquals(450 * 0.0104, amount(part, "tie wire"), 1e-9);
    assertEquals(39, pieces(part, "#4").get(Length.ofFeet(20)));
  }

  @Test
  void aLapRuleInDiametersOrALengthIsFollowedAndItsShortLapsTold() {
    slab24x16();
    assertEquals(13 * 20 / 12.0, laps("40 db"), 1e-9);
    assertEquals(13 * 18 / 12.0, laps("18 in"), 1e-9);
    assertEquals(13 * 30 / 12.0, laps("2'-6\""), 1e-9);
    job.set(Setting.LAP_RULE, "40 db");
    assertTrue(caution(job.takeOff(), "under the 29\" of a class B lap"));
    job.set(Setting.LAP_RULE, "60 db");
    assertTrue(job.takeOff().cautions().isEmpty());
  }

  private double laps(String rule) {
    return amount(job.set(Setting.LAP_RULE, rule).takeOff(), "laps of bars along");
  }

  @Test
  void aWrittenStrengthBeatsTheMix() {
    slab24x16();
    // 24.67, up to 25
    job.set(Setting.STRENGTH_PSI, 4000);
    assertEquals(13 * 25 / 12.0, amount(job.takeOff(), "laps of bars along"), 1e-9);
  }

  @Test
  void aShortLapIsToldOnceForAllSections() {
    slab24x16();
    job.slab("F2", Length.ofFeet(24), Length.ofFeet(16), FOUR_INCHES)
        .bars("#4", Length.ofInches(16));
    assertEquals(1, job.set(Setting.LAP_RULE, "40 db").takeOff().cautions().size());
  }

  @Test
  void stockNoLongerThanItsLapIsToldAndTheUsualTaken() {
    slab24x16();
    job.stock.put("#4", Length.ofInches(29));
    Part part = job.takeOff();
    assertEquals(13 * 29 / 12.0, amount(part, "laps of bars along"), 1e-9);
    assertTrue(caution(part, "offered no longer than its lap of 29\""));
  }

  @Test
  void coverThinnerThanAgainstGroundIsTold() {
    slab24x16();
    job.set(Setting.EDGE_COVER, Length.ofInches(2));
    Part part = job.takeOff();
    assertTrue(caution(part, "Edge cover is 2\""));
    // ⌈(192 − 4)/16⌉ + 1 = 13 of 284 in
    assertEquals(13 * 284 / 12.0, amount(part, "bars along"), 1e-9);
  }

  @Test
  void outsideTheBarsLieLower() {
    slab24x16().where = Where.OUTSIDE;
    assertEquals(Material.BAR_SUPPORT.of("1 in"), key(job.takeOff(), "bar supports"));
  }

  @Test
  void aFootingsMatLiesOnBlocksAndItsBarsAreNoTopBars() {
    SectionBuilder footing =
        job.slab("W", Length.ofFeet(24), Length.ofFeet(16), Length.ofInches(24));
    footing.bars("#4", Length.ofInches(16)).kind = Kind.FOOTING;
    Part part = job.takeOff();
    assertEquals(13 * 29 / 12.0, amount(part, "laps of bars along"), 1e-9);
    assertEquals(Material.BAR_SUPPORT.of("3 in"), key(part, "bar supports"));
  }

  @Test
  void aPierNoDeeperThanItsCoverHasNoBars() {
    SectionBuilder pier = job.slab("P", FOOT, FOOT, Length.ofInches(3));
    pier.kind = Kind.PIER;
    pier.edgeBars = Optional.of(SteelFixture.run(4, "#4"));
    Part part = job.takeOff();
    assertTrue(part.pieces().isEmpty());
    assertTrue(part.quantities().stream().noneMatch(q -> q.what().equals("pier bars")));
  }

  @Test
  void barsOfTwoLengthsAreAddedBeforeTheyAreMultiplied() {
    job.slab("F1", Length.ofFeet(20), Length.ofFeet(10), FOUR_INCHES)
            .edge(Sides.ALL, SteelFixture.run(2, "#4"))
            .count =
        2;
    assertEquals(
        "(4 × 19'-6\" + 4 × 9'-6\") × 2 = 232 ft", find(job.takeOff(), "edge bars").working());
  }

  @Test
  void aJobWithoutSectionsTakesNoSteel() {
    job.joint(SteelFixture.joint(JointKind.TIE, "", FOOT));
    assertTrue(job.takeOff().quantities().isEmpty());
  }

  @Test
  void aMixWithoutItsStrengthLapsForTheWeakest() {
    slab24x16().mix = "house mix";
    Part part = job.takeOff();
    assertEquals(13 * 32 / 12.0, amount(part, "laps of bars along"), 1e-9);
    assertTrue(caution(part, "does not name its strength"));
  }

  /**
   * By hand, 20' × 10' edge all round, 2 #4: 19'-6" and 9'-6" runs, two of each side, all within 20
   * ft; four corners × 2 bars with legs of the 29" lap: 2 × 29 − 2.5022 × 0.5 in.
   */
  @Test
  void edgeBarsRunToTheCoverAndMeetInCornerBars() {
    job.slab("F1", Length.ofFeet(20), Length.ofFeet(10), FOUR_INCHES)
        .edge(Sides.ALL, SteelFixture.run(2, "#4"));
    Part part = job.takeOff();
    assertEquals(2 * 2 * (19.5 + 9.5), amount(part, "edge bars"), 1e-9);
    double corner = (2 * 29 - (8 - 7 * Math.PI / 4) * 0.5) / 12;
    assertEquals(8 * corner, amount(part, "corner bars"), 1e-6);
    // ⌈19.5/4⌉ + ⌈9.5/4⌉ = 5 + 3, twice
    assertEquals(16, amount(part, "edge blocks"));
    assertEquals(Material.BAR_SUPPORT.of("3 in"), key(part, "edge blocks"));
    BarMark mark = bent(part);
    assertEquals(BarShape.CORNER, mark.shape());
    assertEquals(8, mark.count());
    assertEquals(Length.ofInches(29), mark.a());
    assertEquals(Optional.of(Length.ofInches(29)), mark.b());
    // 16 × 2 + 4 of 8 corner bars: 2 × (5 + 3) × 2 bars, and two laps of two ties a corner bar
    assertEquals((32 + 32) * 0.0104, amount(part, "tie wire"), 1e-9);
  }

  @Test
  void cornerBarsStandOnlyBetweenTwoTurnedDownSides() {
    SectionBuilder slab =
        job.slab("F1", Length.ofFeet(20), Length.ofFeet(10), FOUR_INCHES)
            .edge(Sides.of(List.of("L1", "W2")), SteelFixture.run(2, "#4"));
    assertEquals(2, bent(job.takeOff()).count());
    slab.edge(Sides.of(List.of("L1", "L2")), SteelFixture.run(2, "#4"));
    Part part = job.takeOff();
    assertEquals(2 * 2 * 19.5, amount(part, "edge bars"), 1e-9);
    assertTrue(part.barMarks().stream().allMatch(mark -> mark.shape() == BarShape.STRAIGHT));
  }

  @Test
  void aRoundEdgeHasOneBarRoundItWithAClosingLap() {
    SectionBuilder slab =
        job.slab("F1", FOOT, FOOT, FOUR_INCHES).edge(Sides.ALL, SteelFixture.run(1, "#4"));
    slab.shape = new Shape.Round(Length.ofFeet(6));
    Part part = job.takeOff();
    assertEquals((Math.PI * 66 + 29) / 12, amount(part, "edge bars"), 1e-6);
  }

  @Test
  void footingBarsRunItsLengthAndPierBarsStandInIt() {
    SectionBuilder footing = job.slab("W", Length.ofFeet(60), FOOT, FOOT);
    footing.kind = Kind.FOOTING;
    footing.edgeBars = Optional.of(SteelFixture.run(2, "#4"));
    SectionBuilder pier = job.slab("P", FOOT, FOOT, Length.ofInches(36));
    pier.kind = Kind.PIER;
    pier.count = 2;
    pier.edgeBars = Optional.of(SteelFixture.run(4, "#4"));
    Part part = job.takeOff();
    assertEquals(2 * 59.5, amount(part, "footing bars"), 1e-9);
    // ⌈(714 − 29)/(240 − 29)⌉ − 1 = 3 laps in each
    assertEquals(2 * 3 * 29 / 12.0, amount(part, "laps of footing bars"), 1e-9);
    assertEquals(2 * 4 * 33 / 12.0, amount(part, "pier bars"), 1e-9);
    assertEquals(8, amount(part, "bar caps"));
    assertEquals(15, amount(part, "edge blocks"));
  }

  @Test
  void edgeBarsWithoutAnEdgeAreToldNotCounted() {
    SectionBuilder slab = job.slab("F1", Length.ofFeet(20), Length.ofFeet(10), FOUR_INCHES);
    slab.edgeBars = Optional.of(SteelFixture.run(2, "#4"));
    Part part = job.takeOff();
    assertTrue(part.quantities().isEmpty());
    assertTrue(caution(part, "no turned-down edge"));
  }

  @Test
  void aTurnedDownRunOfAGivenLengthIsOneStraightRun() {
    SectionBuilder slab = job.slab("F1", Length.ofFeet(20), Length.ofFeet(10), FOUR_INCHES);
    slab.edge = Optional.of(new Edge(FOOT, FOOT, Sides.ofRun(Length.ofFeet(15))));
    slab.edgeBars = Optional.of(SteelFixture.run(2, "#4"));
    assertEquals(2 * 14.5, amount(job.takeOff(), "edge bars"), 1e-9);
  }

  @Test
  void barsInANarrowStripLieInItsMiddle() {
    job.slab("F1", Length.ofFeet(20), Length.ofInches(6), FOUR_INCHES).bars("#4", FOOT);
    Part part = job.takeOff();
    assertEquals(19.5, amount(part, "bars along"), 1e-9);
    assertTrue(part.quantities().stream().noneMatch(q -> q.what().equals("bars across")));
  }

  @Test
  void aRoundSlabsBarsAreItsChordsWithoutStubs() {
    SectionBuilder slab = job.slab("F1", FOOT, FOOT, FOUR_INCHES).bars("#4", FOOT);
    slab.shape = new Shape.Round(Length.ofInches(126));
    Part part = job.takeOff();
    // Radius 60 in inside the cover, lines at 0, 12, … 120 in: 2·√(60² − y²) for y = 0, ±12 … ±48
    double feet = 0;
    for (int y = -48; y <= 48; y += 12) {
      feet += 2 * Math.sqrt(3600 - y * y) / 12;
    }
    // Chords are held to the micrometre.
    assertEquals(feet, amount(part, "bars along"), 1e-4);
    assertEquals(amount(part, "bars along"), amount(part, "bars across"));
    assertEquals("9 bars, 10'-0\" to 6'-0\" = 75.93 ft", find(part, "bars along").working());
    // All 9 × 9 cross but the four corners at (±48, ±48). Supports: ⌈120/48⌉ = 3 spaces of 40 in;
    // two of the rows are chords, 2·√(3600 − 400) = 113.1 in: 4 supports each.
    assertEquals(39 * 0.0104, amount(part, "tie wire"), 1e-9);
    assertEquals(8, amount(part, "bar supports"));
  }

  @Test
  void thickSlabsBendTheirTopBarsOverDeepConcrete() {
    job.slab("F1", Length.ofFeet(24), Length.ofFeet(16), Length.ofInches(24))
        .bars("#4", Length.ofInches(16));
    // 1.3 × 28.48 = 37.03, up to 38
    assertEquals(13 * 38 / 12.0, amount(job.takeOff(), "laps of bars along"), 1e-9);
  }

  @Test
  void barsThatDoNotFitAreTold() {
    job.slab("F1", Length.ofFeet(24), Length.ofFeet(16), Length.ofInches(2))
        .bars("#4", Length.ofInches(24));
    Part part = job.takeOff();
    assertTrue(caution(part, "do not fit into 2\""));
    assertTrue(caution(part, "Bars 24\" apart"));
  }

  private SectionBuilder slab24x16() {
    return job.slab("F1", Length.ofFeet(24), Length.ofFeet(16), FOUR_INCHES)
        .bars("#4", Length.ofInches(16));
  }

  private static BarMark bent(Part part) {
    return part.barMarks().stream()
        .filter(mark -> mark.shape() != BarShape.STRAIGHT)
        .findFirst()
        .orElseThrow();
  }

  static boolean caution(Part part, String words) {
    return part.cautions().stream().anyMatch(caution -> caution.says().contains(words));
  }

  static Quantity find(Part part, String what) {
    return part.quantities().stream()
        .filter(quantity -> quantity.what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + what + " in " + part.quantities()));
  }

  static double amount(Part part, String what) {
    return find(part, what).amount();
  }

  static MaterialKey key(Part part, String what) {
    return find(part, what).material().orElseThrow();
  }

  static Map<Length, Integer> pieces(Part part, String bar) {
    Map<Length, Integer> pieces = new TreeMap<>();
    part.pieces().stream()
        .filter(piece -> piece.material().equals(Material.BAR.of(bar)))
        .forEach(piece -> pieces.merge(piece.length(), piece.count(), Integer::sum));
    return pieces;
  }
}
