package org.pourbook.book;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pourbook.measure.UnitSystem;

/** The unit of a bare number in a column: in an {@code ft-in} job, then in an {@code m} job. */
public enum ColumnUnit {
  NONE("", ""),
  FEET("ft", "m"),
  INCHES("in", "mm"),
  FALL("in per ft", "mm per m"),
  TEMPERATURE("°F", "°C"),
  SPEED("mph", "km/h"),
  PERCENT("%", "%"),
  DOSE("lb/yd3", "kg/m3"),
  DEGREES("degrees", "degrees"),
  MINUTES("min", "min"),
  /** The unit that its supplier sells concrete in, so that a heading need not name it. */
  VOLUME("", "");

  /** Each line: a unit as it is compared, then other ways to write it. */
  private static final List<List<String>> WORDS =
      List.of(
          List.of("ft", "foot", "feet", "'", "′", "’"),
          List.of("in", "in.", "inch", "inches", "\"", "″", "”"),
          List.of("m", "metre", "metres", "meter", "meters"),
          List.of("mm", "millimetre", "millimetres", "millimeter", "millimeters"),
          List.of("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
          List.of("yd", "yard", "yards"),
          List.of("in per ft", "in/ft", "inches per foot"),
          List.of("mm per m", "mm/m"),
          List.of("°f", "f", "deg f", "fahrenheit"),
          List.of("°c", "c", "deg c", "celsius"),
          List.of("mph"),
          List.of("km/h", "kmh", "kph"),
          List.of("m/s"),
          List.of("%", "percent"),
          List.of("lb/yd3", "lb per yd3"),
          List.of("kg/m3", "kg per m3"),
          List.of("degrees", "deg", "°"),
          List.of("min", "minutes"),
          List.of("h", "hours"),
          List.of("yd3", "cy"),
          List.of("m3"),
          List.of("ft2", "sf"),
          List.of("m2"),
          List.of("lb"),
          List.of("kg"),
          List.of("ton"),
          List.of("t"),
          List.of("gal"),
          List.of("l"));

  private final String us;
  private final String metric;

  ColumnUnit(String us, String metric) {
    this.us = us;
    this.metric = metric;
  }

  /** Returns the unit as headings show it, empty for none. */
  public String in(UnitSystem units) {
    return units.isMetric() ? metric : us;
  }

  /** Returns whether a unit, as {@link #named} gives it, is this one in a system. */
  public boolean isNamed(String unit, boolean metric) {
    return named(metric ? this.metric : us).equals(Optional.of(unit));
  }

  /** Returns the unit that a text names, as units are compared; empty when it names none. */
  public static Optional<String> named(String text) {
    String word =
        text.strip().toLowerCase(Locale.ROOT).replace("³", "3").replace("²", "2").replace("^", "");
    return WORDS.stream()
        .filter(words -> words.contains(word))
        .map(words -> words.get(0))
        .findFirst();
  }
}
