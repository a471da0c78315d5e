package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.Unit;
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

  /**
   * Returns the rule as written; empty when it cannot be read or is zero. A bare number is inches,
   * in an {@code m} job millimetres.
   */
  static Optional<LapRule> read(String written, UnitSystem units) {
    String text = written.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty() || text.matches("class\\s*b")) {
      return Optional.of(new ClassB());
    }
    Matcher diameters = DIAMETERS.matcher(text);
    if (diameters.matches()) {
      BigDecimal number = new BigDecimal(diameters.group(1));
      return number.signum() > 0 ? Optional.of(new Diameters(number)) : Optional.empty();
    }
    return LengthText.read(text, units.isMetric() ? Unit.MM : Unit.IN)
        .filter(Length::isPositive)
        .map(Given::new);
  }
}
