package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.takeoff.BoardEnd;
import org.pourbook.takeoff.rule.BoardStack.Board;
import org.pourbook.takeoff.rule.FormReuse.Lot;
import org.pourbook.takeoff.rule.FormReuse.Served;

class FormRulesTest {

  private static final Length GAP = Length.ofInches(3, 4);

  /** The hand figures: 8 − 3/4 = 7-1/4 in is a dressed 2x8, and so on; 16 − 3/4 takes two. */
  @ParameterizedTest
  @CsvSource({
    "4, 2x4",
    "5, 2x6",
    "6, 2x6",
    "8, 2x8",
    "10, 2x10",
    "12, 2x12",
    "16, 2x10 2x8",
    "17, 2x10 2x8",
    "20, 2x12 2x10",
    "24, 2x10 2x8 2x8",
    "0.5, 2x4"
  })
  void aFaceTakesTheSmallestBoardOrTheFewest(BigDecimal inches, String boards) {
    Length reach = BoardStack.reach(Length.ofInches(inches), GAP);
    BoardStack stack = BoardStack.reaching(reach, boards("2x12 2x4 2x8 2x6 2x10"));
    assertEquals(
        Arrays.asList(boards.split(" ")),
        stack.boards().stream().map(LumberSize::designation).toList());
  }

  @Test
  void stacksOfOneHeightAreChosenByCost() {
    // 13 in: 2x4 + 2x10 and 2x6 + 2x8 are both 12-3/4 in high, 1/2 in over 12-1/4 in.
    List<Board> boards =
        List.of(board("2x4", "1"), board("2x6", "3"), board("2x8", "4"), board("2x10", "5"));
    BoardStack stack = BoardStack.reaching(Length.ofInches(49, 4), boards);
    assertEquals("[2x10, 2x4]", stack.boards().toString());
  }

  @Test
  void ofTheFewestBoardsTheCheapestAreTaken() {
    // 15-1/4 in: 2x10 + 2x8 is 1-1/4 in over, 2x12 + 2x6 1-1/2 in and here cheaper; three of 2x6,
    // the cheapest of all, are one board more.
    List<Board> boards =
        List.of(board("2x6", "1"), board("2x8", "4"), board("2x10", "5"), board("2x12", "6"));
    BoardStack stack = BoardStack.reaching(Length.ofInches(61, 4), boards);
    assertEquals("[2x12, 2x6]", stack.boards().toString());
    // One board is the smallest that reaches, whatever it costs.
    List<Board> dear = List.of(board("2x10", "1"), board("2x8", "4"));
    assertEquals("[2x8]", BoardStack.reaching(Length.ofInches(7), dear).boards().toString());
  }

  @Test
  void aBoardLapsStopsShortOrEndsWithItsSide() {
    Length side = Length.ofFeet(10);
    Length t = Length.ofInches(3, 2);
    assertEquals("10'-1 1/2\"", BoardLength.of(side, t, BoardEnd.LAPS).toString());
    assertEquals("9'-10 1/2\"", BoardLength.of(side, t, BoardEnd.STOPS_SHORT).toString());
    assertEquals(side, BoardLength.of(side, t, BoardEnd.OPEN));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 10",
    "16, 16",
    "20, 16 4",
    "18, 14 4",
    "32, 16 16",
    "33, 16 13 4",
    "3, 3",
  })
  void noPieceIsLongerThanTheLongestOrShorterThanTheShortestBoard(long run, String pieces) {
    List<Length> expected =
        Arrays.stream(pieces.split(" ")).map(Long::parseLong).map(Length::ofFeet).toList();
    assertEquals(expected, BoardPieces.of(Length.ofFeet(run), Length.ofFeet(16), Length.ofFeet(4)));
  }

  @Test
  void twoPiecesThatCannotBothBeLongEnoughAreMadeEqual() {
    assertEquals(
        List.of(Length.ofInches(42), Length.ofInches(42)),
        BoardPieces.of(Length.ofFeet(7), Length.ofFeet(6), Length.ofFeet(4)));
  }

  @Test
  void stakesAreCountedExactlyAtMultiplesOfTheSpacing() {
    assertEquals(11, FormStakes.count(Length.ofFeet(40), Length.ofFeet(4), 0));
    assertEquals(12, FormStakes.count(Length.ofFeet(40).plus(new Length(1)), Length.ofFeet(4), 0));
    assertEquals(13, FormStakes.count(Length.ofFeet(40), Length.ofFeet(4), 2));
  }

  @Test
  void aFaceOverSixInchesHasCloserAndLongerStakes() {
    Length six = Length.ofInches(6);
    Length over = Length.ofInches(25, 4);
    Length three = Length.ofFeet(3);
    Length two = Length.ofFeet(2);
    assertEquals(three, FormStakes.spacing(six, three, two));
    assertEquals(two, FormStakes.spacing(over, three, two));
    assertEquals(Length.ofInches(24), FormStakes.length(six, Length.ofInches(24)));
    assertEquals(Length.ofInches(97, 4), FormStakes.length(over, Length.ofInches(24)));
  }

  @ParameterizedTest
  @CsvSource({"8, 9, 0", "8.25, 9, 5", "16, 10, 5", "16, 2, 2", "16.25, 9, 9"})
  void bracesStandAtEverySecondStakeAndAboveSixteenInchesAtEvery(
      BigDecimal inches, int stakes, int braces) {
    assertEquals(braces, FormBraces.count(Length.ofInches(inches), stakes));
  }

  @ParameterizedTest
  @CsvSource({"10, 36", "12, 36", "16, 42", "24, 54"})
  void aBraceIsLongEnoughForItsFace(long face, long length) {
    assertEquals(
        Length.ofInches(length), FormBraces.length(Length.ofInches(face), Length.ofInches(36)));
  }

  @Test
  void releaseCoversFourHundredSquareFeetAGallon() {
    assertEquals(0.003785411784, FormRelease.volumeM3(400 * 0.09290304), 1e-15);
    assertEquals(9.82, FormRelease.m2ALitre(), 0.005); // as the Rules sheet prints it
  }

  @Test
  void screwsAreCountedByStakesBracesSplicesAndCorners() {
    assertEquals(2 * 10 + 4 * 3 + 8 * 2, FormScrews.count(10, 3, 2));
    assertEquals(12, FormScrews.atCorners(4));
  }

  @Test
  void formsServeOnAnotherDayOnly() {
    LocalDate monday = LocalDate.of(2026, 5, 4);
    assertFalse(FormReuse.isStripped(monday, monday, 0));
    assertTrue(FormReuse.isStripped(monday, monday.plusDays(1), 1));
    assertFalse(FormReuse.isStripped(monday, monday.plusDays(1), 2));
    assertFalse(FormReuse.isStripped(monday, monday.minusDays(3), 1));
  }

  @Test
  void theLossIsRoundedUpAndTakesTheLongest() {
    List<Lot> used = List.of(lot(4, 10), lot(16, 1));
    assertEquals(List.of(lot(4, 9)), FormReuse.kept(used, 10)); // ⌈1.1⌉ = 2
    assertEquals(List.of(lot(4, 9)), FormReuse.kept(List.of(lot(4, 10)), 10)); // 1 exactly
    assertEquals(List.of(lot(16, 1), lot(4, 10)), FormReuse.kept(used, 0));
  }

  @Test
  void aUsedPieceServesOneNoLongerThanItself() {
    List<Served> served =
        FormReuse.serve(List.of(lot(8, 2), lot(12, 2)), List.of(lot(10, 1), lot(16, 2)));
    assertEquals(
        List.of(
            new Served(Length.ofFeet(12), Length.ofFeet(16), 2),
            new Served(Length.ofFeet(8), Length.ofFeet(10), 1)),
        served);
  }

  private static Lot lot(long feet, int count) {
    return new Lot(Length.ofFeet(feet), count);
  }

  private static List<Board> boards(String names) {
    return Arrays.stream(names.split(" ")).map(name -> board(name, "1")).toList();
  }

  private static Board board(String name, String price) {
    return new Board(LumberSize.named(name).orElseThrow(), new BigDecimal(price));
  }
}
