package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

class BarWeightsTest {

  /** CRSI Manual of Standard Practice, 27th ed., inside cover (after ASTM A615), lb/ft. */
  @ParameterizedTest
  @CsvSource({
    "#3, 0.376",
    "#4, 0.668",
    "#5, 1.043",
    "#6, 1.502",
    "#7, 2.044",
    "#8, 2.670",
    "#9, 3.400",
    "#10, 4.303",
    "#11, 5.313"
  })
  void aThousandFeetWeighTheTabulatedPounds(String bar, double poundsPerFoot) {
    double kg = BarWeights.massKg(BarSize.named(bar).orElseThrow(), Length.ofFeet(1000));
    assertEquals(1000 * poundsPerFoot, Unit.LB.fromBase(kg), 1e-9);
  }

  /** CSA G30.18 and ISO 6935-2 nominal masses (from memory), kg/m. */
  @ParameterizedTest
  @CsvSource({"10M, 0.785", "15M, 1.570", "20M, 2.355", "12 mm, 0.888", "16 mm, 1.578"})
  void aMetreOfMetricBarWeighsItsNominalMass(String bar, double kgPerM) {
    assertEquals(
        kgPerM,
        BarWeights.massKg(BarSize.named(bar).orElseThrow(), Length.ofMillimetres(1000)),
        1e-12);
  }
}
