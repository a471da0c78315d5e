package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;

class DevelopmentLengthsTest {

  private static final double GRADE_60 = 60_000;

  /**
   * Grade 60, uncoated bottom bars: ACI 318-19 Table 25.4.2.3 with 25.5.2.1, worked out by hand to
   * the hundredth of an inch.
   */
  @ParameterizedTest
  @CsvSource({
    "#3, 2500, 18.00, 23.40",
    "#3, 3000, 16.43, 21.36",
    "#3, 4000, 14.23, 18.50",
    "#4, 2500, 24.00, 31.20",
    "#4, 3000, 21.91, 28.48",
    "#4, 4000, 18.97, 24.67",
    "#5, 2500, 30.00, 39.00",
    "#5, 3000, 27.39, 35.60",
    "#5, 4000, 23.72, 30.83",
    "#6, 2500, 36.00, 46.80",
    "#6, 3000, 32.86, 42.72",
    "#6, 4000, 28.46, 37.00"
  })
  void developmentAndClassBLapsAreThoseOfTheTable(
      String bar, double strength, double development, double lap) {
    double ld = DevelopmentLengths.developmentIn(named(bar), GRADE_60, strength, 1);
    // The figures are printed to two decimals.
    assertEquals(development, ld, 0.005);
    assertEquals(lap, DevelopmentLengths.classBLapIn(ld), 0.005);
  }

  /**
   * ACI 318-19 Eq. 25.4.2.4a, a published calculation: #3, fy 40,000, f'c 3,000, ψtψe 1.7, ψs 0.8,
   * (cb + Ktr)/db 2.5 gives 11.174 in. The simplified form is that equation with ψs 0.8 and 1.5.
   */
  @Test
  void theSimplifiedFormIsTheGeneralOneWithConfinementOneAndAHalf() {
    double simplified = DevelopmentLengths.developmentIn(named("#3"), 40_000, 3000, 1.7);
    assertEquals(11.174, simplified * 1.5 / 2.5, 0.0005);
  }

  @Test
  void barsLargerThanNumberSixTakeTheOtherFormula() {
    // 60,000 / (20 × √4000) × 0.875
    assertEquals(41.505, DevelopmentLengths.developmentIn(named("#7"), GRADE_60, 4000, 1), 0.0005);
  }

  @Test
  void aLapIsNeverShorterThanTwelveInches() {
    assertEquals(12, DevelopmentLengths.classBLapIn(9.2));
    assertTrue(DevelopmentLengths.classBLapIn(9.3) > 12);
  }

  @Test
  void theRootOfTheStrengthIsLimitedToAHundred() {
    assertEquals(
        DevelopmentLengths.developmentIn(named("#4"), GRADE_60, 10_000, 1),
        DevelopmentLengths.developmentIn(named("#4"), GRADE_60, 12_000, 1));
  }

  @ParameterizedTest
  @CsvSource({"40, 1.0", "60, 1.0", "420, 1.0", "80, 1.15", "500, 1.15", "100, 1.3"})
  void theGradeFactorFollowsTheGrade(double grade, double factor) {
    assertEquals(factor, DevelopmentLengths.gradeFactor(DevelopmentLengths.yieldPsi(grade)));
  }

  @Test
  void barsOverMoreThanTwelveInchesOfFreshConcreteAreTopBars() {
    assertEquals(1.0, DevelopmentLengths.placeFactor(Length.ofInches(12)));
    assertEquals(1.3, DevelopmentLengths.placeFactor(Length.ofInches(193, 16)));
  }

  @ParameterizedTest
  @CsvSource({
    "3000 psi, 3000",
    "'4,000 psi air', 4000",
    "5 bag 3500 psi, 3500",
    "4000, 4000",
    "25 MPa, 3625.9425",
    "C25 30 MPa, 4351.131"
  })
  void theStrengthIsTheNumberInTheMix(String mix, double psi) {
    assertEquals(psi, DevelopmentLengths.strengthPsi(mix).orElseThrow(), 1e-9);
  }

  @Test
  void aMixNamedByItsCementHasNoStrength() {
    assertTrue(DevelopmentLengths.strengthPsi("5 bag mix").isEmpty());
  }

  private static BarSize named(String bar) {
    return BarSize.named(bar).orElseThrow();
  }
}
