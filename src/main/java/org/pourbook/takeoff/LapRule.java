package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;

/** How the Lap rule setting is written: {@code class B}, {@code 40 db}, or a length. */
sealed interface LapRule {

  /** 1.3 development lengths. */
  record ClassB() implements LapRule {}

  /** A number of bar diameters. */
  record Diameters(BigDecimal number) implements LapRule {}

  /** A length for every bar. */
  record Given(Length length) implements LapRule {}

  Pattern DIAMETERS = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:db|d|diameters|bar diameters)");
  Pattern FEET_INCHES =
      Pattern.compile(
          "(?:(\\d+(?:\\.\\d+)?)\\s*(?:ft|'))?[\\s-]*(?:(\\d+(?:\\.\\d+)?)\\s*(?:in|\"))?");
  Pattern METRIC = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(mm|cm|m)");

  /**
   * Returns the rule as written; empty when it cannot be read or is zero. A bare number is inches,
   * in an {@code m} job millimetres.
   */
  static Optional<LapRule> read(String written, UnitSystem units) {
    String text = written.strip().toLowerCase(Locale.ROOT).replace('”', '"').replace('’', '\'');
    if (text.isEmpty() || text.matches("class\\s*b")) {
      return Optional.of(new ClassB());
    }
    Matcher diameters = DIAMETERS.matcher(text);
    if (diameters.matches()) {
      BigDecimal number = new BigDecimal(diameters.group(1));
      return number.signum() > 0 ? Optional.of(new Diameters(number)) : Optional.empty();
    }
    String unit = text.matches("[\\d.]+") ? (units.isMetric() ? " mm" : " in") : "";
    return length(text + unit).filter(Length::isPositive).map(Given::new);
  }

  private static Optional<Length> length(String text) {
    Matcher metric = METRIC.matcher(text);
    if (metric.matches()) {
      BigDecimal number = new BigDecimal(metric.group(1));
      int places =
          switch (metric.group(2)) {
            case "mm" -> 0;
            case "cm" -> 1;
            default -> 3;
          };
      return Optional.of(Length.ofMillimetres(number.movePointRight(places)));
    }
    Matcher us = FEET_INCHES.matcher(text);
    if (!us.matches()) {
      return Optional.empty();
    }
    Length feet = us.group(1) == null ? Length.ZERO : Length.ofFeet(new BigDecimal(us.group(1)));
    Length inches =
        us.group(2) == null ? Length.ZERO : Length.ofInches(new BigDecimal(us.group(2)));
    return Optional.of(feet.plus(inches));
  }
}
