package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;

class BarBendsTest {

  @ParameterizedTest
  @ValueSource(strings = {"#3", "#4", "#5", "#6", "#7", "#8", "10M", "25 mm"})
  void aBendTakesOffTwoAndAHalfDiameters(String name) {
    BarSize bar = named(name);
    double diameters = BarBends.deduction(bar).metres() / bar.diameter().metres();
    // 8 − 7π/4; lengths are held to the nanometre.
    assertEquals(8 - 7 * Math.PI / 4, diameters, 1e-6);
  }

  @Test
  void largeBarsBendAboutEightDiameters() {
    BarSize bar = named("#9");
    assertEquals(bar.diameter().times(8), BarBends.insideDiameter(bar));
    // 2(4 + 1) − 9π/4
    assertEquals(
        10 - 9 * Math.PI / 4, BarBends.deduction(bar).metres() / bar.diameter().metres(), 1e-6);
  }

  @Test
  void aBentBarIsAsLongAsItsCentreLine() {
    // Legs 29, 6 and 29 in of #4: straight parts 29 − 2, 6 − 4 and 29 − 2, two arcs of radius 1.75.
    double centreLine = 27 + 2 + 27 + 2 * Math.PI / 2 * 1.75;
    Length cut = BarBends.cutLength(Length.ofInches(29 + 6 + 29), 2, named("#4"));
    assertEquals(centreLine, cut.inches(), 1e-6);
  }

  @Test
  void aStepOfFourInchesIsTheLowestThatNumberFourIsBentFor() {
    assertTrue(StepTieBars.isBent(Length.ofInches(4), named("#4")));
    assertFalse(StepTieBars.isBent(Length.ofInches(63, 16), named("#4")));
  }

  @Test
  void theRiserIsTheDifferenceOfLevelsAndOneBar() {
    assertEquals(Length.ofInches(13, 2), StepTieBars.riser(Length.ofInches(6), named("#4")));
  }

  private static BarSize named(String bar) {
    return BarSize.named(bar).orElseThrow();
  }
}
