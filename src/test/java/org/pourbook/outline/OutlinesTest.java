package org.pourbook.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Shape;

class OutlinesTest {

  private static final Shape.Ring SQUARE = Drawn.feet(0, 0, 10, 0, 10, 10, 0, 10);

  private static Optional<Outlines.Fault> check(Shape.Ring... rings) {
    return Outlines.check(new Shape.Outline(List.of(rings)));
  }

  private static Optional<Outlines.Fault> fault(int ring, int point, String message) {
    return Optional.of(new Outlines.Fault(ring, point, message));
  }

  @Test
  void aSoundOutlineWithTwoOpeningsHasNoFault() {
    assertEquals(
        Optional.empty(),
        check(SQUARE, Drawn.feet(1, 1, 3, 1, 3, 3), Drawn.feet(5, 5, 8, 5, 8, 8, 5, 8)));
  }

  @Test
  void aPointInOneLineWithItsNeighboursIsNoFault() {
    assertEquals(Optional.empty(), check(Drawn.feet(0, 0, 5, 0, 10, 0, 10, 10)));
  }

  @Test
  void noPointsAreAFault() {
    assertEquals(fault(0, -1, "an outline without points"), check());
  }

  @Test
  void twoPointsAreTooFew() {
    assertEquals(
        fault(0, -1, "ring 1 of fewer than three points: 2"), check(Drawn.feet(0, 0, 4, 0)));
    assertEquals(
        fault(1, -1, "ring 2 of fewer than three points: 1"), check(SQUARE, Drawn.feet(4, 4)));
  }

  @Test
  void aPointWrittenTwiceIsASideWithoutLength() {
    assertEquals(
        fault(0, 1, "the side from point 2 has no length: the next point is the same"),
        check(Drawn.feet(0, 0, 4, 0, 4, 0, 4, 4)));
  }

  @Test
  void theFirstPointRepeatedAtTheEndIsASideWithoutLength() {
    assertEquals(
        fault(0, 3, "the side from point 4 has no length: the next point is the same"),
        check(Drawn.feet(0, 0, 4, 0, 4, 4, 0, 0)));
  }

  @Test
  void aSpikeDoublesBack() {
    assertEquals(
        fault(0, 1, "the outline doubles back on itself at point 2"),
        check(Drawn.feet(0, 0, 8, 0, 4, 0, 4, 4)));
  }

  @Test
  void aBowTieCrossesItself() {
    assertEquals(
        fault(0, 2, "the side from point 3 crosses or touches the side from point 1"),
        check(Drawn.feet(0, 0, 4, 4, 4, 0, 0, 4)));
  }

  @Test
  void anOutlineThatTouchesItselfIsAFault() {
    assertEquals(
        fault(0, 2, "the side from point 3 crosses or touches the side from point 1"),
        check(Drawn.feet(0, 0, 8, 0, 8, 8, 4, 0, 0, 8)));
  }

  @Test
  void anOpeningThatTouchesTheOuterRingIsAFault() {
    assertEquals(
        fault(1, 0, "the side from point 1 of ring 2 crosses or touches the side from point 1"),
        check(SQUARE, Drawn.feet(2, 0, 4, 2, 2, 2)));
  }

  @Test
  void anOpeningOutsideTheOuterRingIsAFault() {
    assertEquals(
        fault(1, 0, "point 1 of ring 2 lies outside the outer ring"),
        check(SQUARE, Drawn.feet(12, 2, 14, 2, 14, 4)));
    // Level with two corners of the outer ring.
    assertEquals(
        fault(1, 0, "point 1 of ring 2 lies outside the outer ring"),
        check(SQUARE, Drawn.feet(-5, 10, -3, 10, -3, 12)));
  }

  @Test
  void anOpeningInAnOpeningIsAFault() {
    assertEquals(
        fault(2, 0, "point 1 of ring 3 lies inside ring 2"),
        check(SQUARE, Drawn.feet(1, 1, 9, 1, 9, 9, 1, 9), Drawn.feet(3, 3, 4, 3, 4, 4)));
  }
}
