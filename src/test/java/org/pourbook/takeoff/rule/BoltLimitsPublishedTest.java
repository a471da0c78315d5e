package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.pourbook.measure.Length;

/**
 * Limits of IRC R403.1.6, as a copy of the section quotes it: bolts of at least 1/2 in, at most 6
 * ft on center, embedded at least 7 in; at least two a plate section, one not more than 12 in and
 * not less than seven bolt diameters from each end; walls of 24 in or less one bolt, of 12 in or
 * less none.
 */
class BoltLimitsPublishedTest {

  private static final Length JUST = new Length(1);
  private static final Length HALF = Length.ofInches(1, 2);

  @Test
  void halfAnInchIsThickEnough() {
    assertTrue(BoltLimits.isThickEnough(HALF));
    assertFalse(BoltLimits.isThickEnough(HALF.minus(JUST)));
  }

  @Test
  void sixFeetIsCloseEnough() {
    assertTrue(BoltLimits.isCloseEnough(Length.ofFeet(6)));
    assertFalse(BoltLimits.isCloseEnough(Length.ofFeet(6).plus(JUST)));
  }

  @Test
  void sevenInchesIsDeepEnough() {
    assertTrue(BoltLimits.isDeepEnough(Length.ofInches(7)));
    assertFalse(BoltLimits.isDeepEnough(Length.ofInches(7).minus(JUST)));
  }

  @Test
  void theEndBoltStandsFromSevenDiametersToTwelveInches() {
    assertTrue(BoltLimits.isEndSound(Length.ofInches(12), HALF));
    assertFalse(BoltLimits.isEndSound(Length.ofInches(12).plus(JUST), HALF));
    assertTrue(BoltLimits.isEndSound(Length.ofInches(7, 2), HALF));
    assertFalse(BoltLimits.isEndSound(Length.ofInches(7, 2).minus(JUST), HALF));
  }

  /** A 12 ft plate with end bolts at 12 in: two alone would be 10 ft apart. */
  @Test
  void twoBoltsAreTheFewestAndMoreFollowTheSpacing() {
    Length foot = Length.ofInches(12);
    Length six = Length.ofFeet(6);
    assertEquals(2, BoltLayout.positions(Length.ofFeet(8), HALF, foot, six).size());
    assertEquals(3, BoltLayout.positions(Length.ofFeet(12), HALF, foot, six).size());
    assertEquals(3, BoltLayout.positions(Length.ofFeet(14), HALF, foot, six).size());
    assertEquals(4, BoltLayout.positions(Length.ofFeet(14).plus(JUST), HALF, foot, six).size());
  }
}
