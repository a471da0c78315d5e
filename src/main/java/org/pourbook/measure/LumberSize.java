package org.pourbook.measure;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A board by its trade size: nominal inches ({@code 2x6}, dressed 1-1/2 x 5-1/2 in), or dressed
 * millimetres ({@code 38x140}).
 *
 * @param nominalThicknessIn nominal inches for board feet; of a metric board its dressed inches
 * @param thickness dressed
 * @param width dressed
 */
public record LumberSize(
    String designation,
    double nominalThicknessIn,
    double nominalWidthIn,
    Length thickness,
    Length width) {

  private static final Pattern TWO_NUMBERS = Pattern.compile("\\s*(\\d+)\\s*[xX×]\\s*(\\d+)\\s*");

  /**
   * Dressed size of a nominal inch dimension, dry lumber, in 1/4 in (NIST PS 20, Table 3; from
   * memory).
   */
  private static final Map<Integer, Integer> DRESSED_QUARTERS =
      Map.of(1, 3, 2, 6, 3, 10, 4, 14, 6, 22, 8, 29, 10, 37, 12, 45);

  /** Returns the board of that designation. */
  public static Optional<LumberSize> named(String designation) {
    Matcher numbers = TWO_NUMBERS.matcher(designation.replace("\"", ""));
    if (!numbers.matches() || numbers.group(1).length() > 4 || numbers.group(2).length() > 4) {
      return Optional.empty();
    }
    int first = Integer.parseInt(numbers.group(1));
    int second = Integer.parseInt(numbers.group(2));
    Integer thickness = DRESSED_QUARTERS.get(first);
    Integer width = DRESSED_QUARTERS.get(second);
    if (thickness != null && width != null && first <= 4) {
      return Optional.of(
          new LumberSize(
              first + "x" + second,
              first,
              second,
              Length.ofInches(thickness, 4),
              Length.ofInches(width, 4)));
    }
    if (first >= 15 && second >= 30) {
      Length t = Length.ofMillimetres(first);
      Length w = Length.ofMillimetres(second);
      return Optional.of(new LumberSize(first + "x" + second, t.inches(), w.inches(), t, w));
    }
    return Optional.empty();
  }

  @Override
  public String toString() {
    return designation;
  }
}
