package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.measure.Length;

class DepthOrderTest {

  /** The table of Student's t as every handbook of statistics prints it, to three decimals. */
  @ParameterizedTest
  @CsvSource({
    "90, 1, 3.078", "90, 2, 1.886", "90, 3, 1.638", "90, 4, 1.533", "90, 5, 1.476",
    "90, 10, 1.372", "90, 30, 1.310", "95, 10, 1.812", "95, 7, 1.895", "97.5, 30, 2.042",
    "99, 4, 3.747", "99.5, 2, 9.925", "75, 9, 0.703"
  })
  void studentsTIsThatOfTheTables(double percent, int degreesOfFreedom, double t) {
    assertEquals(t, DepthOrder.t(percent, degreesOfFreedom), 0.0005);
  }

  @Test
  void halfConfidenceOrdersWhatWasMeasured() {
    assertEquals(0, DepthOrder.t(50, 6), 1e-12);
  }

  @Test
  void anOrderAddsTheMarginThenWhatIsSpilt() {
    assertEquals(10.5 * 1.03, DepthOrder.orderM3(10, 0.5, 3), 1e-12);
  }

  @Test
  void thinIsMoreThanTheTolerance() {
    Length four = Length.ofInches(4);
    assertFalse(DepthOrder.isThinPoint(Length.ofInches(13, 4), four));
    assertTrue(DepthOrder.isThinPoint(Length.ofInches(51, 16), four));
    assertFalse(DepthOrder.isThinMean(Length.ofInches(29, 8), four));
    assertTrue(DepthOrder.isThinMean(Length.ofInches(57, 16), four));
  }

  @Test
  void fourChecksAreTooFew() {
    assertFalse(DepthOrder.areEnough(4));
    assertTrue(DepthOrder.areEnough(5));
  }
}
