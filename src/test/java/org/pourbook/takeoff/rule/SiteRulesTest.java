package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

class SiteRulesTest {

  @Test
  void theAllowanceFallsWithoutAStepFrom200YardsTo5Percent() {
    assertEquals(10, ConcreteOrder.wastePercent(Unit.YD3.toBase(200)), 1e-9); // unit factor
    assertEquals(2000 / 201.0, ConcreteOrder.wastePercent(Unit.YD3.toBase(201)), 1e-9);
    assertEquals(5, ConcreteOrder.wastePercent(Unit.YD3.toBase(400)), 1e-9);
    assertEquals(5, ConcreteOrder.wastePercent(Unit.YD3.toBase(4000)));
  }

  @Test
  void stepsAreRoundedUpButNotByTheRoundingOfDoubles() {
    assertEquals(13.75, ConcreteOrder.orderedM3(12.5 * 1.1, 0.25));
    assertEquals(14, ConcreteOrder.orderedM3(13.7501, 0.25));
    assertEquals(0, ConcreteOrder.orderedM3(0, 0.25));
  }

  @Test
  void aYardTakes45BagsAndAHalf22AndAHalfRoundedUp() {
    assertEquals(45, ConcreteOrder.bags(Unit.YD3.toBase(1)));
    assertEquals(23, ConcreteOrder.bags(Unit.YD3.toBase(0.5)));
  }

  @Test
  void aPrismatoidIsExactForAQuadraticAreaAndSplitsAtAKink() {
    Prismatoid pyramid = Prismatoid.of(z -> z * z, 9, 0, 3);
    Prismatoid kinked = Prismatoid.of(z -> z < 1 ? z : 2 * z - 1, 100, 0, 3);

    assertEquals(9, pyramid.volumeM3(), 1e-12); // rounding
    assertEquals(1, pyramid.slices().size());
    // 1/2 + [z2 - z] from 1 to 3
    assertEquals(0.5 + 6, kinked.volumeM3(), 1e-9); // tolerance of its slices
    assertEquals(0, Prismatoid.of(z -> z, 9, 2, 2).volumeM3());
  }

  @Test
  void aPrismatoidIsFullFromWhereTheInsetVanishes() {
    Prismatoid body = Prismatoid.of(z -> Math.min(4, 2 * z), 4, 0, 3);

    assertEquals(2, body.slices().size());
    assertEquals(4 + 4, body.volumeM3(), 1e-12); // rounding
    assertTrue(body.slices().get(1).isStraight());
  }

  @Test
  void theFewestWellShapedPanelsAreCutLeast() {
    assertEquals(panels(4, 3), of(36, 24, 10));
    assertEquals(panels(1, 1), of(10, 10, 10));
    // 40 ft at 10 ft is 4, not 5
    assertEquals(panels(4, 4), of(40, 40, 10));
    // A walk of 60 x 2 ft: no panel over 3 ft long
    assertEquals(panels(20, 1), of(60, 2, 10));
    assertEquals(panels(1, 20), of(2, 60, 10));
    // 16 x 10 ft: 1.6 is too long, two of 8 x 10
    assertEquals(panels(2, 1), of(16, 10, 20));
    assertEquals(panels(1, 1), of(15, 10, 20));
  }

  @Test
  void jointsAreAQuarterDeepAndAtLeastAnInch() {
    assertEquals(Length.ofInches(1), ControlJoints.depth(Length.ofInches(3)));
    assertEquals(Length.ofInches(3, 2), ControlJoints.depth(Length.ofInches(6)));
    assertEquals(Length.ofFeet(15), ControlJoints.largestSide(Length.ofInches(8)));
    assertEquals(Length.ofFeet(10), ControlJoints.largestSide(Length.ofInches(4)));
  }

  @Test
  void stripsAreCountedExactly() {
    assertEquals(3, PlacingTime.strips(Length.ofFeet(30), Length.ofFeet(10)));
    assertEquals(4, PlacingTime.strips(Length.ofInches(361), Length.ofFeet(10)));
    Length lap = Length.ofInches(6);
    Length roll = Length.ofFeet(10);
    // Two strips of 10 ft lapped 6 in cover 19.5 ft
    assertEquals(1, RetarderStrips.count(roll, roll, lap));
    assertEquals(2, RetarderStrips.count(Length.ofInches(234), roll, lap));
    assertEquals(3, RetarderStrips.count(Length.ofInches(235), roll, lap));
    assertEquals(0, RetarderStrips.endLaps(roll, roll, lap));
    assertEquals(1, RetarderStrips.endLaps(Length.ofInches(234), roll, lap));
  }

  @Test
  void concreteIsTooOldAfterNinetyMinutes() {
    assertFalse(PlacingTime.isTooOld(30, 60, 90));
    assertTrue(PlacingTime.isTooOld(30, 60.1, 90));
    assertEquals(6, PlacingTime.rateM3PerHour(10, 3));
    assertEquals(20, PlacingTime.minutes(2, 6));
  }

  /** JOINT-1: the fewest of 7-1/2 in are 1600 × 1440; no product of others is taken for less. */
  @Test
  void millionsOfPanelsAreStillTheFewest() {
    assertEquals(
        panels(1_600, 1_440),
        ControlJoints.panels(Length.ofFeet(1_000), Length.ofFeet(900), Length.ofInches(15, 2)));
  }

  private static ControlJoints.Panels of(int length, int width, int largest) {
    return ControlJoints.panels(
        Length.ofFeet(length), Length.ofFeet(width), Length.ofFeet(largest));
  }

  private static ControlJoints.Panels panels(int alongLength, int alongWidth) {
    return new ControlJoints.Panels(alongLength, alongWidth);
  }
}
