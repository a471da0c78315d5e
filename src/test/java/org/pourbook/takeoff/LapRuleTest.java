package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;

class LapRuleTest {

  @ParameterizedTest
  @CsvSource({
    "600 mm, M, 600",
    "60 cm, M, 600",
    "0.6 m, M, 600",
    "600, M, 600",
    "24, FT_IN, 609.6",
    "24 in, M, 609.6",
    "2 ft, FT_IN, 609.6",
    "2'-6\", FT_IN, 762",
    "2 ft 6 in, FT_IN, 762"
  })
  void aLengthIsReadInItsUnit(String written, UnitSystem units, BigDecimal millimetres) {
    assertEquals(
        Optional.of(new LapRule.Given(Length.ofMillimetres(millimetres))),
        LapRule.read(written, units));
  }

  @Test
  void diametersAndClassBAreRead() {
    assertEquals(
        Optional.of(new LapRule.Diameters(new BigDecimal("40"))),
        LapRule.read("40 db", UnitSystem.FT_IN));
    assertEquals(Optional.of(new LapRule.ClassB()), LapRule.read("Class B", UnitSystem.M));
  }

  @ParameterizedTest
  @ValueSource(strings = {"class A", "0", "0 db", "long"})
  void anythingElseIsNot(String written) {
    assertTrue(LapRule.read(written, UnitSystem.FT_IN).isEmpty());
  }
}
