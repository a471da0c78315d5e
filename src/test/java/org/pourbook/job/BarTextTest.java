package org.pourbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

/** Bars as drawings write them (common practice). */
class BarTextTest {

  private static BarSize bar(String designation) {
    return BarSize.named(designation).orElseThrow();
  }

  private static Optional<BarMat> mat(
      String along, Length alongSpacing, String across, Length acrossSpacing) {
    return Optional.of(new BarMat(bar(along), alongSpacing, bar(across), acrossSpacing));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"#4 @ 16 EW", "#4@16 in. e.w.", "#4 @ 16 o.c. each way", "#4 @ 16\" OC E.W."})
  void eachWayIsOneSizeAndOneSpacingBothWays(String text) {
    Length spacing = Length.ofInches(16);
    assertEquals(mat("#4", spacing, "#4", spacing), BarText.mat(text, Unit.IN));
  }

  @Test
  void whatRunsAlongStandsFirst() {
    assertEquals(
        mat("#4", Length.ofInches(12), "#3", Length.ofInches(18)),
        BarText.mat("#4 @ 12 x #3 @ 18 o.c.", Unit.IN));
    assertEquals(
        mat("12 mm", Length.ofMillimetres(300), "10 mm", Length.ofMillimetres(250)),
        BarText.mat("12mm @ 300 × 10mm @ 250", Unit.MM));
  }

  @Test
  void aBareSpacingIsInTheJobsUnitAndAWrittenOneInItsOwn() {
    Length spacing = Length.ofMillimetres(400);
    assertEquals(mat("10M", spacing, "10M", spacing), BarText.mat("10M @ 400 EW", Unit.MM));
    assertEquals(mat("10M", spacing, "10M", spacing), BarText.mat("10M @ 400 mm EW", Unit.IN));
  }

  /** One of four things wrong at a time. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "#2 @ 12 x #3 @ 18",
        "#4 @ 12 x #33 @ 18",
        "#4 @ about 12 x #3 @ 18",
        "#4 @ 12 x #3 @ wide",
        "#4 @ 0.9 x #3 @ 18",
        "#4 @ 12 x #3 @ 0.9",
        "#4 @ 0.9 EW",
        "#4 @ 12",
        "2 #4",
        ""
      })
  void whatIsNoMatIsNotRead(String text) {
    assertEquals(Optional.empty(), BarText.mat(text, Unit.IN));
  }

  /** So that a spacing in metres is not taken for one in millimetres. */
  @Test
  void anInchIsTheClosestSpacing() {
    Length inch = Length.ofInches(1);
    assertEquals(mat("#4", inch, "#4", inch), BarText.mat("#4 @ 1 EW", Unit.IN));
    assertEquals(Optional.empty(), BarText.mat("12mm @ 0.4 EW", Unit.MM));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 #4", "2-#4", "(2) #4", "2#4", "2 x #4", " 2 × # 4 "})
  void aRunIsACountAndASize(String text) {
    assertEquals(Optional.of(new BarRun(2, bar("#4"))), BarText.run(text));
  }

  @Test
  void aMetricRunKeepsItsCountFromItsSize() {
    assertEquals(Optional.of(new BarRun(3, bar("12 mm"))), BarText.run("3 12 mm"));
    assertEquals(Optional.of(new BarRun(4, bar("15M"))), BarText.run("4-15M"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0 #4", "#4", "2 #2", "two #4", "2", "#4 @ 16 EW", "-2 #4"})
  void whatIsNoRunIsNotRead(String text) {
    assertEquals(Optional.empty(), BarText.run(text));
  }
}
