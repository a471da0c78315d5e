package org.pourbook.measure;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as text: digits, a decimal point, thousands commas where they fall right. */
public final class NumberText {

  private static final Pattern NUMBER =
      Pattern.compile("[-−]?(?:(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d*)?|\\.\\d+)");

  /** Longer texts hold no amount of a building site. */
  private static final int LONGEST = 40;

  private NumberText() {}

  /** Returns the number without trailing zeros; empty when the text is none. */
  public static Optional<BigDecimal> read(String text) {
    String words = text.strip();
    if (words.length() > LONGEST || !NUMBER.matcher(words).matches()) {
      return Optional.empty();
    }
    return Optional.of(plain(new BigDecimal(words.replace(",", "").replace('−', '-'))));
  }

  /** Returns the number that a numeric cell shows: its shortest decimal, not its binary noise. */
  public static BigDecimal of(double number) {
    return plain(BigDecimal.valueOf(number));
  }

  /** Returns a number as text, without an exponent or trailing zeros. */
  public static String text(BigDecimal number) {
    return plain(number).toPlainString();
  }

  private static BigDecimal plain(BigDecimal number) {
    BigDecimal shortest = number.stripTrailingZeros();
    return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
  }
}
