package org.pourbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

/**
 * Sides of any letters: read or not, and what is read names sides that the shape has and is read as
 * the same again when it is written.
 */
class SidesFuzzTest {

  private static final List<Shape> SHAPES =
      List.of(
          new Shape.Rectangle(Length.ofInches(120), Length.ofInches(90)),
          new Shape.Round(Length.ofInches(18)),
          new Shape.Outline(
              List.of(
                  new Shape.Ring(List.of(point("1", 0, 0), point("A", 9, 0), point("3", 9, 9))))));

  private static Shape.Point point(String name, int x, int y) {
    return new Shape.Point(name, Length.ofInches(x), Length.ofInches(y), Shape.SideMark.BY_SECTION);
  }

  @FuzzTest(maxDuration = "1m")
  void read(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    for (Shape shape : SHAPES) {
      SidesText.read(text, shape, Unit.FT).ifPresent(sides -> check(text, sides, shape));
    }
  }

  private static void check(String text, Sides sides, Shape shape) {
    assertTrue(SidesText.names(shape).containsAll(sides.names()), sides.toString());
    assertTrue(sides.run().stream().allMatch(Length::isPositive), sides.toString());
    boolean saysNone = text.toUpperCase(Locale.ROOT).replace(" ", "").contains("NO");
    if (shape instanceof Shape.Outline && sides.run().isEmpty()) {
      for (String word : text.split("[,;+\\s–-]+")) {
        boolean named = SidesText.names(shape).contains(word);
        assertTrue(!named || sides.has(word), word + " is not among " + sides);
      }
    }
    assertTrue(saysNone || !sides.isNone(), "\"" + text + "\" names no side");
    assertEquals(Optional.of(sides), SidesText.read(written(sides), shape, Unit.M), "read again");
  }

  private static String written(Sides sides) {
    return sides
        .run()
        .map(run -> BigDecimal.valueOf(run.nanometres(), 6).toPlainString() + " mm")
        .orElseGet(
            () -> sides.all() ? "all" : sides.isNone() ? "none" : String.join(", ", sides.names()));
  }
}
