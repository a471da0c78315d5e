package org.pourbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DressedLumberPublishedTest {

  /** Minimum dressed sizes of dry lumber in inches: NIST PS 20, Table 3 (from memory). */
  @ParameterizedTest
  @CsvSource({
    "1x4, 3/4, 3-1/2",
    "2x3, 1-1/2, 2-1/2",
    "2x4, 1-1/2, 3-1/2",
    "2x6, 1-1/2, 5-1/2",
    "2x8, 1-1/2, 7-1/4",
    "2x10, 1-1/2, 9-1/4",
    "2x12, 1-1/2, 11-1/4",
    "4x4, 3-1/2, 3-1/2"
  })
  void nominalBoardsHaveTheirDressedSize(String nominal, String thickness, String width) {
    LumberSize board = LumberSize.named(nominal).orElseThrow();
    assertEquals(thickness + "\"", LengthFormat.inches(board.thickness()));
    assertEquals(width + "\"", LengthFormat.inches(board.width()));
  }

  /** EN1136, lesson 5, worked in dressed widths: a 1x6 covers 5-1/2 in (W11). */
  @Test
  void theTakeOffOfAFloorUsesTheDressedWidth() {
    assertEquals(Length.ofInches(11, 2), LumberSize.named("1x6").orElseThrow().width());
  }

  /**
   * EN5155, p. 1-28: four boards 1 in thick, 8 in wide, 14 ft long are 37 1/3 board feet, of the
   * nominal size (W13).
   */
  @Test
  void boardMeasureUsesTheNominalSize() {
    LumberSize board = LumberSize.named("1x8").orElseThrow();
    double boardFeet = 4 * board.nominalThicknessIn() * board.nominalWidthIn() * 14 / 12;
    assertEquals(37 + 1 / 3.0, boardFeet, 1e-12);
  }
}
