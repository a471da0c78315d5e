package org.pourbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths as builders write them: {@code 24'-6 1/2"}, {@code 24 ft 6 in}, {@code 6"}, {@code 150
 * mm}, {@code 3.2 m}, or a bare number in the unit of its column.
 */
public final class LengthText {

  private static final String NUMBER = "(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d*)?|\\.\\d+";
  private static final String MIXED = "\\d+[ -]\\d+/\\d+|\\d+/\\d+|" + NUMBER;

  private static final Pattern METRIC = Pattern.compile("(" + NUMBER + ") ?(mm|cm|m)");
  private static final Pattern FEET = Pattern.compile("(" + MIXED + ") ?'");
  private static final Pattern INCHES = Pattern.compile("(" + MIXED + ") ?\"");
  private static final Pattern FEET_INCHES =
      Pattern.compile("(\\d{1,3}(?:,\\d{3})+|\\d+) ?'(?: ?- ?| ?)(" + MIXED + ") ?\"?");
  private static final Pattern BARE = Pattern.compile(MIXED);

  private static final Pattern FEET_WORDS =
      Pattern.compile("\\b(?:feet|foot|ft)\\b\\.?|(?<=\\d)(?:feet|foot|ft)\\b\\.?");
  private static final Pattern INCH_WORDS =
      Pattern.compile("\\b(?:inches|inch|in)\\b\\.?|(?<=\\d)(?:inches|inch|in)\\b\\.?");
  private static final Pattern MILLIMETRE_WORDS = Pattern.compile("millimet(?:er|re)s?");
  private static final Pattern CENTIMETRE_WORDS = Pattern.compile("centimet(?:er|re)s?");
  private static final Pattern METRE_WORDS = Pattern.compile("met(?:er|re)s?");
  private static final Pattern SPACES = Pattern.compile("\\s+");

  private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

  private LengthText() {}

  /**
   * Returns the length to the nearest nanometre; empty when the text is none, when inches behind
   * feet reach 12, or when it is beyond what a {@link Length} holds.
   *
   * @param bare the unit of a number alone: ft, in, m or mm
   */
  public static Optional<Length> read(String text, Unit bare) {
    String words = plain(text);
    boolean negative = words.startsWith("-");
    String size = negative ? words.substring(1).strip() : words;
    try {
      Optional<Length> length = unsigned(size, bare);
      return negative ? length.map(value -> value.times(-1)) : length;
    } catch (ArithmeticException e) {
      return Optional.empty();
    }
  }

  /** Returns whether the text is a number alone, whose unit the column gives. */
  public static boolean isBare(String text) {
    String words = plain(text);
    return BARE.matcher(words.startsWith("-") ? words.substring(1).strip() : words).matches();
  }

  /**
   * Returns the length of a number of that unit.
   *
   * @throws ArithmeticException if it is beyond what a {@link Length} holds
   */
  public static Length of(BigDecimal number, Unit unit) {
    return switch (unit) {
      case FT -> Length.ofFeet(number);
      case IN -> Length.ofInches(number);
      case M -> Length.ofMetres(number);
      case MM -> Length.ofMillimetres(number);
      default -> throw new IllegalArgumentException(unit.label() + " is no unit of length here");
    };
  }

  private static Optional<Length> unsigned(String text, Unit bare) {
    Matcher metric = METRIC.matcher(text);
    if (metric.matches()) {
      BigDecimal number = decimal(metric.group(1));
      return Optional.of(
          switch (metric.group(2)) {
            case "mm" -> of(number, Unit.MM);
            case "cm" -> of(number.movePointRight(1), Unit.MM);
            default -> of(number, Unit.M);
          });
    }
    Matcher feetInches = FEET_INCHES.matcher(text);
    if (feetInches.matches()) {
      BigDecimal inches = mixed(feetInches.group(2));
      return inches.compareTo(TWELVE) < 0
          ? Optional.of(of(decimal(feetInches.group(1)).multiply(TWELVE).add(inches), Unit.IN))
          : Optional.empty();
    }
    Matcher feet = FEET.matcher(text);
    if (feet.matches()) {
      return Optional.of(of(mixed(feet.group(1)), Unit.FT));
    }
    Matcher inches = INCHES.matcher(text);
    if (inches.matches()) {
      return Optional.of(of(mixed(inches.group(1)), Unit.IN));
    }
    boolean fraction = text.indexOf('/') >= 0;
    boolean metricBare = bare == Unit.M || bare == Unit.MM;
    return BARE.matcher(text).matches() && !(fraction && metricBare)
        ? Optional.of(of(mixed(text), bare))
        : Optional.empty();
  }

  /** Returns the text with plain marks: {@code '} and {@code "} for feet and inches. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length() + 4);
    boolean wordy = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < 0x80 && c != '`') {
        plain.append(c);
      } else {
        plain.append(plainMark(c));
      }
      wordy |= Character.isLetter(c);
    }
    String marked = plain.toString().toLowerCase(Locale.ROOT).replace("''", "\"");
    String words = wordy ? named(marked) : marked;
    return SPACES.matcher(words).replaceAll(" ").strip();
  }

  private static String named(String text) {
    String feet = FEET_WORDS.matcher(text).replaceAll("'");
    String inches = INCH_WORDS.matcher(feet).replaceAll("\"");
    String millimetres = MILLIMETRE_WORDS.matcher(inches).replaceAll("mm");
    String centimetres = CENTIMETRE_WORDS.matcher(millimetres).replaceAll("cm");
    return METRE_WORDS.matcher(centimetres).replaceAll("m");
  }

  private static String plainMark(char c) {
    return switch (c) {
      case '‘', '’', '‛', '′', '´', '`', 'ʹ', '＇' -> "'";
      case '“', '”', '‟', '″', '〃', 'ʺ', '＂' -> "\"";
      case '‐', '‑', '‒', '–', '—', '−' -> "-";
      case '⁄', '∕' -> "/";
      case '½' -> " 1/2";
      case '¼' -> " 1/4";
      case '¾' -> " 3/4";
      case '⅛' -> " 1/8";
      case '⅜' -> " 3/8";
      case '⅝' -> " 5/8";
      case '⅞' -> " 7/8";
      case '\u00a0', '\u2007', '\u2009', '\u202f' -> " ";
      default -> String.valueOf(c);
    };
  }

  private static BigDecimal decimal(String number) {
    return new BigDecimal(number.replace(",", ""));
  }

  private static BigDecimal mixed(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      return decimal(text);
    }
    int space = Math.max(text.indexOf(' '), text.indexOf('-'));
    BigDecimal whole = space < 0 ? BigDecimal.ZERO : decimal(text.substring(0, space));
    BigDecimal above = decimal(text.substring(space + 1, slash));
    BigDecimal below = decimal(text.substring(slash + 1));
    return whole.add(above.divide(below, 15, RoundingMode.HALF_UP));
  }
}
