package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Length;

class MatLineTest {

  private static final MatLine BAR = line(3, 237, 60);
  private static final Length COVER = Length.ofInches(3);

  @Test
  void aGapLeavesTheBarUpToItsCoverOnEitherSide() {
    assertEquals(
        List.of(line(3, 45, 60), line(123, 237, 60)), BAR.interruptedBy(gap(48, 120), COVER));
  }

  @Test
  void aGapAtABarsEndLeavesItsRest() {
    assertEquals(List.of(line(123, 237, 60)), BAR.interruptedBy(gap(0, 120), COVER));
    assertEquals(List.of(line(3, 45, 60)), BAR.interruptedBy(gap(48, 240), COVER));
    assertEquals(List.of(), BAR.interruptedBy(gap(0, 240), COVER));
  }

  @Test
  void aGapBeyondABarsEndLeavesItWhole() {
    assertEquals(List.of(BAR), BAR.interruptedBy(gap(240, 300), COVER));
  }

  @Test
  void aBarWithinTheCoverOfAGapIsInterruptedToo() {
    assertEquals(2, line(3, 237, 46).interruptedBy(gap(48, 120), COVER).size());
    assertEquals(2, line(3, 237, 98).interruptedBy(gap(48, 120), COVER).size());
    assertEquals(1, line(3, 237, 45).interruptedBy(gap(48, 120), COVER).size());
    assertEquals(1, line(3, 237, 99).interruptedBy(gap(48, 120), COVER).size());
  }

  @Test
  void barsCrossWhereBothReach() {
    assertTrue(BAR.crosses(line(3, 141, 237)));
    assertFalse(BAR.crosses(line(3, 141, 238)));
    assertFalse(BAR.crosses(line(61, 141, 60)));
  }

  private static MatLine.Gap gap(long from, long to) {
    return new MatLine.Gap(
        Length.ofInches(from), Length.ofInches(to), Length.ofInches(48), Length.ofInches(96));
  }

  private static MatLine line(long from, long to, long offset) {
    return new MatLine(Length.ofInches(from), Length.ofInches(to), Length.ofInches(offset));
  }
}
