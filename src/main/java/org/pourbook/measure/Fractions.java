package org.pourbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Inches as trade sizes write them: {@code 1/2}, {@code 1-1/2}, {@code 1 1/4}, {@code 0.625}. */
final class Fractions {

  /** Longer words are no trade size. */
  private static final int LONGEST = 20;

  private Fractions() {}

  /**
   * Returns the length.
   *
   * @throws NumberFormatException if the text is no such number
   */
  static Length inches(String text) {
    String[] words = text.strip().split("[\\s-]+");
    BigDecimal sum = BigDecimal.ZERO;
    for (String word : words) {
      sum = sum.add(part(word));
    }
    return Length.ofInches(sum);
  }

  private static BigDecimal part(String word) {
    if (word.length() > LONGEST || word.toLowerCase(Locale.ROOT).indexOf('e') >= 0) {
      throw new NumberFormatException("no size in inches: " + word);
    }
    int slash = word.indexOf('/');
    if (slash < 0) {
      return new BigDecimal(word);
    }
    BigDecimal below = new BigDecimal(word.substring(slash + 1));
    if (below.signum() == 0) {
      throw new NumberFormatException("division by zero in " + word);
    }
    return new BigDecimal(word.substring(0, slash)).divide(below, 12, RoundingMode.HALF_UP);
  }
}
