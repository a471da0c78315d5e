package org.pourbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

/** Sides as their cell names them, in the words of the user's guide. */
class SidesTextTest {

  private static final Shape RECTANGLE = new Shape.Rectangle(Length.ofFeet(20), Length.ofFeet(10));
  private static final Shape ROUND = new Shape.Round(Length.ofFeet(2));

  /** An L with an opening: its points run on from ring to ring. */
  private static final Shape OUTLINE =
      new Shape.Outline(List.of(ring("1", "2", "3", "4", "5", "6"), ring("7", "8", "9")));

  private static Shape.Ring ring(String... names) {
    return new Shape.Ring(
        Arrays.stream(names)
            .map(name -> new Shape.Point(name, Length.ZERO, Length.ZERO, Shape.SideMark.BY_SECTION))
            .toList());
  }

  private static Optional<Sides> sides(String text, Shape shape) {
    return SidesText.read(text, shape, Unit.FT);
  }

  private static Optional<Sides> names(String... names) {
    return Optional.of(Sides.of(List.of(names)));
  }

  @Test
  void eachShapeNamesItsSides() {
    assertEquals(List.of("L1", "W2", "L2", "W1"), SidesText.names(RECTANGLE));
    assertEquals(List.of("1", "2", "3", "4", "5", "6", "7", "8", "9"), SidesText.names(OUTLINE));
    assertEquals(List.of(), SidesText.names(ROUND));
  }

  @Test
  void allAndNoneAreOfEveryShape() {
    for (Shape shape : List.of(RECTANGLE, ROUND, OUTLINE)) {
      assertEquals(Optional.of(Sides.ALL), sides(" All ", shape));
      assertEquals(Optional.of(Sides.NONE), sides("none", shape));
      assertEquals(Optional.of(Sides.NONE), sides("No", shape));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "L, L1",
    "1L, L1",
    "W, W1",
    "2L, L1 L2",
    "2W, W2 W1",
    "L+W, L1 W1",
    "2L+W, L1 L2 W1",
    "2 l + w, L1 L2 W1",
    "L+2W, L1 W2 W1",
    "W+2L, L1 L2 W1",
    "2W+L, L1 W2 W1",
    "W2, W2",
    "W1; L2, L2 W1",
    "L2+W1, L2 W1"
  })
  void sidesOfARectangleAreCountedOrNamed(String text, String named) {
    assertEquals(names(named.split(" ")), sides(text, RECTANGLE));
  }

  @Test
  void everySideByNameIsAll() {
    assertEquals(Optional.of(Sides.ALL), sides("2L+2W", RECTANGLE));
    assertEquals(Optional.of(Sides.ALL), sides("W1, W2, L1, L2", RECTANGLE));
    assertEquals(Optional.of(Sides.ALL), sides("1-9", OUTLINE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"L+L", "3L", "L3", "L1, X", ",", "", "0", "-3 ft", "1-3"})
  void whatNamesNoSideOfARectangleIsNotRead(String text) {
    assertEquals(Optional.empty(), sides(text, RECTANGLE));
  }

  @Test
  void aLengthIsOneRun() {
    Optional<Sides> run = Optional.of(Sides.ofRun(Length.ofInches(12 * 12 + 6)));
    assertEquals(run, sides("12'-6\"", RECTANGLE));
    assertEquals(run, sides("12.5", RECTANGLE));
    assertEquals(run, sides("12.5", ROUND));
    assertEquals(run, sides("12.5 ft", OUTLINE));
    assertEquals(
        Optional.of(Sides.ofRun(Length.ofMillimetres(12_500))),
        SidesText.read("12.5", RECTANGLE, Unit.M));
  }

  @ParameterizedTest
  @CsvSource({
    "3, 3",
    "'1, 3-5', 1 3 4 5",
    "5 – 6; 2, 2 5 6",
    "2-2, 2",
    "6-7, 6 7",
    "1-2+8-9, 1 2 8 9"
  })
  void sidesOfAnOutlineAreNamedByTheirPoints(String text, String named) {
    assertEquals(names(named.split(" ")), sides(text, OUTLINE));
  }

  /** A bare number is a mistyped point, not a length. */
  @ParameterizedTest
  @ValueSource(strings = {"10", "5-3", "1-10", "0-3", "1, 10", "1, 2-x"})
  void whatNamesNoPointOfAnOutlineIsNotRead(String text) {
    assertEquals(Optional.empty(), sides(text, OUTLINE));
  }

  @Test
  void sidesKnowTheirNames() {
    Sides two = Sides.of(List.of("L1", "W2"));
    assertTrue(two.has("W2"));
    assertFalse(two.has("W1"));
    assertTrue(Sides.ALL.has("W1"));
    assertFalse(Sides.ofRun(Length.ofFeet(3)).has("W1"));
    assertTrue(Sides.NONE.isNone());
    assertFalse(Sides.ALL.isNone() || two.isNone() || Sides.ofRun(Length.ofFeet(3)).isNone());
  }
}
