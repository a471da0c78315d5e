package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.job.ExtraKind;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Joined;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.PieceNeed;

/** Runs of boards and bars, joined where their plan says. */
class RunOrdersTest {
  private static final Length STEP = Length.ofInches(1, 16);

  private static final PriceBook BOARDS =
      book(
          List.of(),
          price("form board", "2x6", "S", "each", "10").stock(Length.ofFeet(12)),
          price("form board", "2x6", "S", "each", "14").stock(Length.ofFeet(16)));

  /** A run of 24 ft as take-off lists it: 16 ft and 8 ft. */
  private static Given run(String code, int courses, int count) {
    Joined joined =
        new Joined(Length.ofFeet(24), 1, Length.ZERO, Length.ofFeet(4), Length.ofFeet(16), courses);
    return job(code)
        .pour("2027-04-13")
        .joined(Material.FORM_BOARD, "2x6", Length.ofFeet(16), count, "F side L1", joined)
        .joined(Material.FORM_BOARD, "2x6", Length.ofFeet(8), count, "F side L1", joined);
  }

  private static Bought buy(Given... jobs) {
    return Buyer.buy(Stream.of(jobs).map(Given::takeOff).toList(), BOARDS, OptimalPlanner.usual());
  }

  @Test
  void whatIsOrderedIsWhatTheChosenPiecesAreCutFrom() {
    // Two boards of 12 ft, 20.00; of 16 and 8 ft as listed, 24.00.
    Bought bought = buy(run("A", 1, 1));
    assertEquals("20.00", bought.orders().get(0).total().toString());
    CutSheet sheet = bought.cutSheets().get(0);
    assertEquals("20.00", sheet.cost().toString());
    assertEquals("20.00", sheet.anywhere().toString());
    assertEquals(List.of("1 F side L1 144.0 144.0"), divisions(sheet));
  }

  @Test
  void anExtraGivenByLengthComesInThePiecesThatAreCheapest() {
    // 24 ft: two boards of 12 ft, 20.00; whole stock first would be 16 and 8 ft, 24.00.
    Bought bought =
        buy(job("A").pour("2027-04-13").extra("form board", "2x6", 24, "ft", ExtraKind.MATERIAL));
    assertEquals("20.00", bought.orders().get(0).total().toString());
    assertEquals(24, bought.lines().get(0).net().orElseThrow(), 1e-9);
  }

  @Test
  void thePlanOfSeveralJobsSaysWhoseRunItIs() {
    CutSheet sheet =
        buy(run("A", 1, 1).deliverTo("yard"), run("B", 2, 2).deliverTo("yard")).cutSheets().get(0);
    assertEquals(
        List.of("1 A: F side L1 144.0 144.0", "2 B: F side L1 144.0 144.0"), divisions(sheet));
    assertEquals("100.00", sheet.cost().toString());
  }

  private static List<String> divisions(CutSheet sheet) {
    return sheet.divisions().stream()
        .map(
            division ->
                division.times()
                    + " "
                    + division.run().goesTo()
                    + " "
                    + division.pieces().get(0).inches()
                    + " "
                    + division.pieces().get(1).inches())
        .toList();
  }

  @Test
  void listedPiecesAreGatheredToRuns() {
    Joined joined =
        new Joined(Length.ofFeet(50), 2, Length.ofFeet(2), Length.ofFeet(4), Length.ofFeet(20), 1);
    List<CutJob.Run> runs =
        CutRuns.of(List.of(piece(20, 6, joined), piece(14, 3, joined)), Length.ofFeet(20), STEP);
    assertEquals(
        List.of(
            new CutJob.Run(
                Length.ofFeet(50),
                2,
                Length.ofFeet(2),
                Length.ofFeet(4),
                Length.ofFeet(20),
                1,
                3,
                "0")),
        runs);
  }

  @Test
  void aRunOfWholeStockButForStepsIsWholeStock() {
    // Two bars of 6 m and a lap of 600 mm: 11.4 m; on steps of 1/16 in a bar is 5999.1625 mm.
    Length bar = Length.ofMillimetres(6000);
    Joined joined =
        new Joined(Length.ofMillimetres(11_400), 1, Length.ofMillimetres(600), Length.ZERO, bar, 1);
    List<PieceNeed> needs =
        List.of(new PieceNeed(Material.BAR.of("10M"), bar, 2, "F", "", 1, Optional.of(joined)));
    List<CutJob.Run> runs =
        CutRuns.of(needs.stream().map(RunOrdersTest::ofJob).toList(), bar, STEP);
    assertEquals(bar.roundedDownTo(STEP).times(2), runs.get(0).total());
  }

  /** Bars of 6 m lapped twice, with 12 m of the usual stock beside them: see the test above. */
  @Test
  void aRunOfWholePiecesNoLongerThanItsJointsWereCountedByIsNotShortOfSteps() {
    Length bar = Length.ofMillimetres(6000);
    Joined joined =
        new Joined(Length.ofMillimetres(11_400), 1, Length.ofMillimetres(600), Length.ZERO, bar, 1);
    PieceNeed need = new PieceNeed(Material.BAR.of("10M"), bar, 2, "F", "", 1, Optional.of(joined));
    List<CutJob.Run> runs = CutRuns.of(List.of(ofJob(need)), bar.times(2), STEP);
    assertEquals(bar.roundedDownTo(STEP).times(2), runs.get(0).total());
  }

  @Test
  void aRunThatLacksPiecesIsADefect() {
    Joined joined =
        new Joined(Length.ofFeet(30), 1, Length.ZERO, Length.ofFeet(4), Length.ofFeet(20), 1);
    List<CutPiece> pieces = List.of(piece(20, 2, joined), piece(10, 1, joined));
    assertThrows(IllegalStateException.class, () -> CutRuns.of(pieces, Length.ofFeet(20), STEP));
  }

  private static CutPiece piece(long feet, int count, Joined joined) {
    return ofJob(
        new PieceNeed(
            Material.BAR.of("#4"), Length.ofFeet(feet), count, "F", "", 1, Optional.of(joined)));
  }

  private static CutPiece ofJob(PieceNeed need) {
    Lot lot =
        Lots.of(
                List.of(
                    job("A")
                        .pour("2027-04-13")
                        .pieces(Material.BAR, "#4", Length.ofFeet(1), 1, "F")
                        .takeOff()),
                BOARDS)
            .get(0);
    return new CutPiece(lot.portions().get(0), need);
  }
}
