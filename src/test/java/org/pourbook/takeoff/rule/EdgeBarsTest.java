package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;

class EdgeBarsTest {

  private static final Length COVER = Length.ofInches(3);
  private static final Length SIDE = Length.ofFeet(20);

  @Test
  void anEdgeBarStopsACoverShortOfOutsideCorners() {
    assertEquals(Length.ofInches(234), EdgeBars.alongSide(SIDE, COVER, 90, 90));
  }

  @Test
  void anEdgeBarRunsACoverPastAReentrantCorner() {
    assertEquals(Length.ofInches(240), EdgeBars.alongSide(SIDE, COVER, 90, 270));
  }

  @Test
  void anEdgeBarIsNotShortenedWhereItsSideGoesStraightOn() {
    assertEquals(Length.ofInches(237), EdgeBars.alongSide(SIDE, COVER, 180, 90));
  }

  @Test
  void anEdgeBarAtASharpCornerStopsOnTheMitre() {
    // 3 / tan(30°) = 5.19615 in
    assertEquals(240 - 3 - 5.19615, EdgeBars.alongSide(SIDE, COVER, 90, 60).inches(), 0.000005);
  }

  @Test
  void aBarRoundATenFootEdgeClosesWithItsLap() {
    // π × (120 − 6) + 29 = 387.1416 in
    assertEquals(
        387.1416, EdgeBars.round(Length.ofFeet(10), COVER, Length.ofInches(29)).inches(), 0.00005);
  }

  @Test
  void pierBarsAreThreeInchesShorterThanThePier() {
    assertEquals(Length.ofInches(33), EdgeBars.upright(Length.ofInches(36)));
  }

  @Test
  void supportsStandAsHighAsTheLowerBarLessPartsOfAQuarterInch() {
    // 4 − 1.5 − 2 × 0.625 = 1.25; with #4: 1.5; with one of #5 and one of #4: 1.375, down to 1.25.
    Length four = Length.ofInches(4);
    Length cover = Length.ofInches(3, 2);
    UnitSystem units = UnitSystem.FT_IN;
    assertEquals(
        Length.ofInches(5, 4), BarSupports.height(four, cover, Length.ofInches(5, 4), units));
    assertEquals(Length.ofInches(3, 2), BarSupports.height(four, cover, Length.ofInches(1), units));
    assertEquals(
        Length.ofInches(5, 4), BarSupports.height(four, cover, Length.ofInches(9, 8), units));
  }

  @Test
  void supportsInMillimetresComeInFives() {
    // 100 − 38.1 − 2 × 11.3 = 39.3
    Length height =
        BarSupports.height(
            Length.ofMillimetres(100),
            Length.ofInches(3, 2),
            BarSize.named("10M").orElseThrow().diameter().times(2),
            UnitSystem.M);
    assertEquals(Length.ofMillimetres(35), height);
  }

  @Test
  void lapsOfMetricBarsAreRoundedUpToTenMillimetres() {
    BarSize bar = BarSize.named("10M").orElseThrow();
    assertEquals(Length.ofMillimetres(740), BarLaps.roundedUp(Length.ofMillimetres(731), bar));
    assertEquals(Length.ofMillimetres(730), BarLaps.roundedUp(Length.ofMillimetres(730), bar));
  }

  @Test
  void finelySpacedMeshLapsSixInches() {
    assertEquals(Length.ofInches(6), MeshSheets.lap(Length.ofInches(2)));
    assertEquals(Length.ofInches(8), MeshSheets.lap(Length.ofInches(6)));
  }

  @Test
  void everySecondOfFifteenCrossingsIsEight() {
    assertEquals(8, TieWire.atCrossings(15));
    assertEquals(8, TieWire.atCrossings(16));
  }

  @Test
  void twoMeshEndPiecesOfFiveFeetComeFromOneSheet() {
    // Strips of 14 ft from 10 ft sheets lapped 1 ft: one whole and 5 ft; 3 strips take 3 + 2.
    Length ten = Length.ofFeet(10);
    Length lap = Length.ofFeet(1);
    assertEquals(5, MeshSheets.sheets(3, Length.ofFeet(14), ten, lap));
    assertEquals(6, MeshSheets.sheets(3, Length.ofInches(169), ten, lap));
  }
}
