package org.pourbook.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.Unit;

/**
 * Sides of a section as its cell names them: {@code all}, {@code none}, a length, {@code 2L+W},
 * {@code L1, W2}; of an outline the points they start from, {@code 1, 3-5}.
 */
public final class SidesText {

  private static final List<String> RECTANGLE = List.of("L1", "W2", "L2", "W1");
  private static final Pattern COUNTED = Pattern.compile("([12]?)([LW])(\\+([12]?)([LW]))?");
  private static final Pattern RANGE = Pattern.compile("(\\S+)\\s*[-–]\\s*(\\S+)");

  private SidesText() {}

  /** Returns the names of a shape's sides in their order; none of a round one. */
  public static List<String> names(Shape shape) {
    if (shape instanceof Shape.Rectangle) {
      return RECTANGLE;
    }
    if (shape instanceof Shape.Outline outline) {
      return outline.rings().stream()
          .flatMap(ring -> ring.points().stream())
          .map(Shape.Point::name)
          .toList();
    }
    return List.of();
  }

  /**
   * Returns the sides; empty when the text names none of that shape.
   *
   * @param bare the unit of a length without one: ft, or m in an {@code m} job
   */
  public static Optional<Sides> read(String text, Shape shape, Unit bare) {
    String words = text.strip();
    String upper = words.toUpperCase(Locale.ROOT).replace(" ", "");
    if (upper.equals("ALL")) {
      return Optional.of(Sides.ALL);
    }
    if (upper.equals("NONE") || upper.equals("NO")) {
      return Optional.of(Sides.NONE);
    }
    Optional<List<String>> named =
        shape instanceof Shape.Rectangle ? ofRectangle(upper) : ofPoints(words, names(shape));
    // A bare number against an outline is a mistyped point, not a length.
    boolean mayBeRun = !(shape instanceof Shape.Outline) || !LengthText.isBare(words);
    return named
        .filter(list -> !list.isEmpty()) // a comma alone
        .map(list -> all(list, shape))
        .or(() -> mayBeRun ? run(words, bare) : Optional.empty());
  }

  private static Sides all(List<String> named, Shape shape) {
    return named.size() == names(shape).size() ? Sides.ALL : Sides.of(named);
  }

  private static Optional<Sides> run(String words, Unit bare) {
    return LengthText.read(words, bare).filter(Length::isPositive).map(Sides::ofRun);
  }

  private static Optional<List<String>> ofRectangle(String text) {
    Matcher counted = COUNTED.matcher(text);
    if (counted.matches()) {
      boolean alongFirst = counted.group(2).equals("L");
      int first = count(counted.group(1));
      int second = counted.group(3) == null ? 0 : count(counted.group(4));
      List<String> along = List.of("L1", "L2").subList(0, alongFirst ? first : second);
      List<String> across = List.of("W1", "W2").subList(0, alongFirst ? second : first);
      return counted.group(2).equals(counted.group(5))
          ? Optional.empty()
          : Optional.of(
              RECTANGLE.stream().filter(n -> along.contains(n) || across.contains(n)).toList());
    }
    List<String> given = List.of(text.split("[,;+]"));
    return RECTANGLE.containsAll(given)
        ? Optional.of(RECTANGLE.stream().filter(given::contains).toList())
        : Optional.empty();
  }

  private static int count(String digit) {
    return digit.isEmpty() ? 1 : Integer.parseInt(digit);
  }

  private static Optional<List<String>> ofPoints(String text, List<String> points) {
    List<String> given = new ArrayList<>();
    for (String part : text.split("[,;+]")) {
      Optional<List<String>> some = ofPart(part.strip(), points);
      if (some.isEmpty()) {
        return Optional.empty();
      }
      given.addAll(some.get());
    }
    return Optional.of(points.stream().filter(given::contains).toList());
  }

  private static Optional<List<String>> ofPart(String part, List<String> points) {
    if (points.contains(part)) {
      return Optional.of(List.of(part));
    }
    Matcher range = RANGE.matcher(part);
    if (range.matches()) {
      int from = points.indexOf(range.group(1));
      int to = points.indexOf(range.group(2));
      if (from >= 0 && to >= from) {
        return Optional.of(points.subList(from, to + 1));
      }
    }
    return Optional.empty();
  }
}
