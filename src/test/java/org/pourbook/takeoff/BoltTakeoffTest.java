package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.FormTakeoffTest.amount;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.Plate;
import org.pourbook.job.Position;
import org.pourbook.job.Sides;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;

class BoltTakeoffTest {

  private static final MaterialKey HALF_INCH = Material.ANCHOR_BOLT.of("1/2 x 10");

  @Test
  void aLongWallIsLaidInPiecesEachWithItsBolts() {
    Part part = of(plate("1/2 x 10", feet(40), Optional.of(feet(4)), 2));

    // 16 + 16 + 8 ft: (192 − 18) ÷ 48 → 4 spaces, 5 bolts; (96 − 18) ÷ 48 → 2 spaces, 3 bolts.
    assertEquals(
        List.of("1 16'-0\" 10", "2 16'-0\" 10", "3 8'-0\" 6"),
        part.boltPieces().stream()
            .map(p -> p.piece() + " " + p.length() + " " + p.bolts())
            .toList());
    assertEquals(
        List.of(inches("9"), inches("48"), inches("87")), part.boltPieces().get(2).positions());
    assertEquals(inches("7.5"), part.boltPieces().get(0).embedment());
    // Spares: max(2, ⌈26 × 5 %⌉) = 2 of each.
    assertEquals(28, amount(part, HALF_INCH));
    assertEquals(28, amount(part, Material.NUT.of("1/2")));
    assertEquals(28, amount(part, Material.PLATE_WASHER.of("1/2")));
    assertEquals("(5 + 5 + 3) × 2 = 26", part.quantities().get(0).working());
    assertEquals(List.of(), part.cautions());
  }

  @Test
  void theSpareBoltsAreARowOfTheirOwn() {
    Part part = of(plate("1/2 x 10", feet(16), Optional.of(feet(4)), 12));
    // 5 × 12 = 60: 5 % is 3 exactly.
    Quantity spare =
        part.quantities().stream()
            .filter(q -> q.what().equals("spare bolts"))
            .findFirst()
            .orElseThrow();
    assertEquals(3, spare.amount());
    assertEquals("max(2, ⌈60 × 5 %⌉) = 3", spare.working());
    assertEquals(Optional.of(HALF_INCH), spare.material());
  }

  @Test
  void aBlankSpacingIsTheCodesSixFeetLessTheTolerance() {
    // (192 − 18) ÷ 70 → 3 spaces; at 72 in too, but 12 ft + 18 in would have only 2 at 72 in.
    assertEquals(4, bolts(of(plate("1/2 x 10", feet(16), Optional.empty(), 1))));
    assertEquals(4, bolts(of(plate("1/2 x 10", inches("162"), Optional.empty(), 1))));
    assertEquals(3, bolts(of(plate("1/2 x 10", inches("162"), Optional.of(feet(6)), 1))));
  }

  @Test
  void aTwentyFourInchPieceHasNoTwoBoltsInOnePlace() {
    Part part = of(plate("1/2 x 10", inches("24"), Optional.empty(), 1));
    assertEquals(List.of(inches("6"), inches("18")), part.boltPieces().get(0).positions());
    assertEquals(List.of(), part.cautions());
  }

  @Test
  void aShortPieceHasOneBoltOrNoneWithACaution() {
    Part one = of(plate("1/2 x 10", inches("20"), Optional.empty(), 1));
    assertEquals(List.of(inches("10")), one.boltPieces().get(0).positions());
    assertEquals("BOLT-2, IRC R403.1.6", one.cautions().get(0).rule());
    assertTrue(one.cautions().get(0).says().contains("one bolt, in its middle third"));

    Part none = of(plate("1/2 x 10", inches("12"), Optional.empty(), 1));
    assertEquals(0, none.boltPieces().get(0).bolts());
    assertEquals(List.of(), none.quantities());
    assertTrue(none.cautions().get(0).says().contains("no bolt"));
  }

  @Test
  void aBoltTooShortIsToldWithTheShortestOnOfferThatPasses() {
    Shelf shelf =
        Shelf.empty()
            .each(Material.ANCHOR_BOLT, "1/2 x 12", "2")
            .each(Material.ANCHOR_BOLT, "3/8 x 10", "1")
            .each(Material.ANCHOR_BOLT, "1/2 x 10", "1")
            .each(Material.ANCHOR_BOLT, "1/2 x 8", "1");
    Part part = BoltTakeoff.of(job(plate("1/2 x 8", feet(8), Optional.empty(), 1)), shelf);
    assertEquals(
        List.of(
            new Caution(
                "P",
                "Bolt 1/2 x 8 is embedded 5-1/2\", the code asks at least 7\":"
                    + " the shortest in the price book that passes is 1/2 x 10.",
                "BOLT-3, IRC R403.1.6")),
        part.cautions());
  }

  @Test
  void aThinBoltAndAWideSpacingAreTold() {
    Part part = of(plate("3/8 x 10", feet(16), Optional.of(feet(8)), 1));
    assertEquals(
        List.of("BOLT-4, IRC R403.1.6", "BOLT-4, IRC R403.1.6"),
        part.cautions().stream().map(Caution::rule).toList());
    assertTrue(part.cautions().get(1).says().contains("8'-0\" apart"));
  }

  @Test
  void aThickBoltNearTheEndIsTold() {
    // 7 × 1-1/2 = 10-1/2 in, but the bolts stand 9 in from the ends.
    Part part = of(plate("1-1/2 x 12", feet(16), Optional.of(feet(4)), 1));
    assertEquals(1, part.cautions().size());
    assertTrue(part.cautions().get(0).says().contains("10-1/2\""));
  }

  @Test
  void aBoltDeeperThanTheConcreteIsTold() {
    SiteJob job = new SiteJob().with(slab("F").thick("10")).with(inSection(Optional.empty()));
    Part part = BoltTakeoff.of(job.build(), Shelf.empty());
    assertEquals(1, part.cautions().size());
    assertTrue(part.cautions().get(0).says().contains("10-1/2\""));

    SiteJob deep = new SiteJob().with(slab("F").thick("10.5")).with(inSection(Optional.empty()));
    assertEquals(List.of(), BoltTakeoff.of(deep.build(), Shelf.empty()).cautions());
  }

  @Test
  void aPlateOnTheTurnedDownEdgeHasTheEdgesDepth() {
    SiteJob.SectionBuilder floor =
        slab("F").thick("4").edge("16", "12", Sides.ALL).at(feet(0), feet(0));
    SiteJob unknown = new SiteJob().with(floor).with(inSection(Optional.empty()));
    SiteJob onEdge =
        new SiteJob().with(floor).with(inSection(Optional.of(new Position(feet(2), inches("3")))));
    SiteJob within =
        new SiteJob().with(floor).with(inSection(Optional.of(new Position(feet(2), feet(9)))));
    assertEquals(List.of(), BoltTakeoff.of(unknown.build(), Shelf.empty()).cautions());
    assertEquals(List.of(), BoltTakeoff.of(onEdge.build(), Shelf.empty()).cautions());
    assertEquals(1, BoltTakeoff.of(within.build(), Shelf.empty()).cautions().size());
  }

  private static Part of(Plate plate) {
    return BoltTakeoff.of(job(plate), Shelf.empty());
  }

  private static Job job(Plate plate) {
    return new SiteJob().with(plate).build();
  }

  private static int bolts(Part part) {
    return part.boltPieces().stream().mapToInt(BoltPiece::bolts).sum();
  }

  private static Plate inSection(Optional<Position> start) {
    return plate("1/2 x 10", feet(16), Optional.of(feet(4)), 1, Optional.of("F"), start);
  }

  static Plate plate(String bolt, Length length, Optional<Length> spacing, int count) {
    return plate(bolt, length, spacing, count, Optional.empty(), Optional.empty());
  }

  private static Plate plate(
      String bolt,
      Length length,
      Optional<Length> spacing,
      int count,
      Optional<String> section,
      Optional<Position> start) {
    return new Plate(
        "P",
        section,
        length,
        count,
        BoltSize.named(bolt).orElseThrow(),
        spacing,
        inches("1.5"),
        inches("2.5"),
        feet(16),
        Optional.empty(),
        start,
        start.isPresent() ? OptionalDouble.of(0) : OptionalDouble.empty(),
        SiteJob.PLACE);
  }
}
