package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.rule.Dowels.Across;

class DowelsTest {

  /** UFC 3-260-02 Table 12-8; where it gives a range of diameters, the greatest. */
  @ParameterizedTest
  @CsvSource({
    "5, 3/4, 0.75, 16, 12",
    "7.75, 3/4, 0.75, 16, 12",
    "8, 1, 1, 16, 12",
    "11.5, 1, 1, 16, 12",
    "12, 1-1/4, 1.25, 20, 15",
    "15.5, 1-1/4, 1.25, 20, 15",
    "16, 1-1/2, 1.5, 20, 18",
    "20.5, 1-1/2, 1.5, 20, 18",
    "21, 2, 2, 24, 18",
    "25.5, 2, 2, 24, 18",
    "26, 3, 3, 30, 18"
  })
  void dowelsAreThoseOfThePavingTable(
      double thickness, String name, double diameter, long length, long spacing) {
    Across expected =
        new Across(
            name, Length.ofInches(diameter), Length.ofInches(length), Length.ofInches(spacing));
    assertEquals(expected, Dowels.byThickness(Length.ofInches(thickness)));
  }

  @Test
  void aSlabUnderFiveInchesIsTied() {
    assertTrue(Dowels.isDowelled(Length.ofInches(5)));
    assertFalse(Dowels.isDowelled(Length.ofInches(79, 16)));
  }

  @Test
  void twentyFeetAtAFootTakeTwentyDowels() {
    assertEquals(20, Dowels.across(Length.ofFeet(20), Length.ofInches(12)));
    assertEquals(21, Dowels.across(Length.ofInches(3841, 16), Length.ofInches(12)));
  }

  @Test
  void aTieIsEmbeddedSixInchesOrTenDiameters() {
    assertEquals(Length.ofInches(6), Dowels.tieEmbedment(Length.ofInches(1, 2)));
    assertEquals(Length.ofInches(15, 2), Dowels.tieEmbedment(Length.ofInches(3, 4)));
  }

  @Test
  void adhesiveFillsTheAnnulusOneAndAHalfTimes() {
    // #4 in a 5/8 in hole 6 in deep: π/4 × (0.625² − 0.5²) × 6 × 1.5 = 0.994 in3
    double in3 = Dowels.adhesiveM3(Length.ofInches(1, 2), Length.ofInches(6), 1.5) / 1.6387064e-5;
    assertEquals(0.9940, in3, 0.00005);
  }
}
