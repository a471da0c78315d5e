package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Worked;

/** Worked examples of publications, compared at the precision that they are printed with. */
class SiteRulesPublishedTest {

  private static double flatM3(double areaM2, double thicknessM) {
    return SlabVolume.flat(Worked.of(areaM2), Worked.of(thicknessM)).value();
  }

  private static double footingM3(double areaM2, double depthM) {
    return SlabVolume.footing(Worked.of(areaM2), Worked.of(depthM)).value();
  }

  /** US Army subcourse EN 5466 Ed. A (1992), p. 2-45: retaining wall; read itself. */
  @Test
  void en5466RetainingWallWithTenPercentIs70Point1CubicYards() {
    // Footing 1.25 x 8.5 x 75 ft, printed 796.9 ft3
    double footingM3 = footingM3(Unit.FT2.toBase(1.25 * 75), Unit.FT.toBase(8.5));
    assertEquals(796.9, Unit.FT3.fromBase(footingM3), 0.05);

    // The project of 1,720.6 ft3, printed 63.7 yd3, x 1.10 printed 70.1 yd3
    double projectM3 = Unit.FT3.toBase(1720.6);
    assertEquals(63.7, Unit.YD3.fromBase(projectM3), 0.05);
    double percent = ConcreteOrder.wastePercent(projectM3);
    assertEquals(10, percent);
    assertEquals(70.1, Unit.YD3.fromBase(projectM3) * (1 + percent / 100), 0.05);
  }

  /** USDA Farmers' Bulletin 1279, Example 1: wall with a door, and its footing; read itself. */
  @Test
  void fb1279WallAndFootingAreTenAndThreeQuarterCubicYards() {
    // Footing 18 x 9 in x 30 ft, printed 33 3/4 ft3; wall 9 in x 12 x 30 ft less the door of
    // 3 x 6 ft, printed 256 1/2 ft3; together 290 1/4 ft3 = 10 3/4 yd3
    double footing = footingM3(Unit.FT2.toBase(1.5 * 30), Length.ofInches(9).metres());
    double wall =
        SlabVolume.flat(
                SlabVolume.ownArea(
                    Worked.of(Unit.FT2.toBase(12 * 30)), Worked.of(Unit.FT2.toBase(3 * 6))),
                Worked.of(Length.ofInches(9).metres()))
            .value();
    assertEquals(33.75, Unit.FT3.fromBase(footing), 1e-9); // printed as an exact fraction
    assertEquals(256.5, Unit.FT3.fromBase(wall), 1e-9);
    assertEquals(10.75, Unit.YD3.fromBase(footing + wall), 0.005);
  }

  /** USDA Farmers' Bulletin 1279, Example 2: pavement of two courses; read itself. */
  @Test
  void fb1279PavementIsOneAndTwoThirdsAndOneThirdOfACubicYard() {
    double areaM2 = Unit.FT2.toBase(27 * 4);
    double base = flatM3(areaM2, Length.ofInches(5).metres());
    double top = flatM3(areaM2, Length.ofInches(1).metres());
    assertEquals(45, Unit.FT3.fromBase(base), 1e-9); // exact in print
    assertEquals(5 / 3.0, Unit.YD3.fromBase(base), 1e-9);
    assertEquals(1 / 3.0, Unit.YD3.fromBase(top), 1e-9);
  }

  /**
   * USDA Farmers' Bulletin 1279, Example 3: round tank; read itself. It takes π as 22/7, so the
   * floor of 10 ft across and 6 in thick, printed 39 2/7 ft3, is compared to 0.05 %.
   */
  @Test
  void fb1279TankFloorIs39AndTwoSevenths() {
    double floor = flatM3(Unit.FT2.toBase(Math.PI * 5 * 5), Length.ofInches(6).metres());
    assertEquals(39 + 2 / 7.0, Unit.FT3.fromBase(floor), 39.3 * 0.0005);
  }

  /** Griffith, Carpentry (public domain): wall and topping; read in another's quotation of it. */
  @Test
  void griffithWallIs280AndToppingIs80CubicFeet() {
    double wall = flatM3(Unit.FT2.toBase(7 * 48), Length.ofInches(10).metres());
    double topping = flatM3(Unit.FT2.toBase(24 * 40), Length.ofInches(1).metres());
    assertEquals(280, Unit.FT3.fromBase(wall), 0.5);
    assertEquals(80, Unit.FT3.fromBase(topping), 0.5);
  }

  /**
   * The Concrete Producer, quoting ACI 302.1R-96: joints of a 4 in unreinforced floor 8 to 12 ft
   * apart (24 to 36 thicknesses).
   */
  @Test
  void jointsOfAFourInchFloorAreBetween8And12Feet() {
    Length four = Length.ofInches(4);
    Length largest = ControlJoints.largestSide(four);
    assertTrue(largest.feet() >= 8 && largest.feet() <= 12, largest.toString());
    assertFalse(CodeMinimums.isWide(Length.ofFeet(12), four));
    assertTrue(CodeMinimums.isWide(Length.ofInches(145), four));
  }

  /**
   * ACI 305R nomograph's own example (from memory): concrete 87 °F, air 80 °F, 50 %, wind 12 mph
   * reads 0.25 lb/ft2/h; the formula (quoted) gives 0.2435, which agrees as a chart reading.
   */
  @Test
  void evaporationAgreesWithTheChartReading() {
    assertEquals(0.25, PourWeather.evaporation(87, 80, 50, 12), 0.01);
  }

  /** Computed from the quoted formula, not published: concrete/air °F, humidity, mph. */
  @Test
  void evaporationIsWhatTheFormulaGivesByHand() {
    assertEquals(0.243468, PourWeather.evaporation(87, 80, 50, 12), 5e-7);
    assertEquals(0.192108, PourWeather.evaporation(90, 90, 50, 10), 5e-7);
    assertEquals(0.102491, PourWeather.evaporation(70, 70, 50, 10), 5e-7);
    assertEquals(0.179683, PourWeather.evaporation(70, 40, 50, 10), 5e-7);
    assertEquals(0, PourWeather.evaporation(40, 90, 100, 10));
  }

  /** TM 9-2320-366-10-1, Table 2-15: crushed limestone 2,700, gravel 2,970 lb a loose yd3. */
  @Test
  void looseStoneWeighsWhatTheTruckTableSays() {
    assertEquals(2700, 2000 * CompactedBase.stone("clean stone").orElseThrow().tonPerYd3(), 0.5);
    assertEquals(2970, 2000 * CompactedBase.stone("Crusher run").orElseThrow().tonPerYd3(), 0.5);
  }
}
