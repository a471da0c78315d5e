package org.pourbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths in words that a crew reads: feet and inches to the nearest 1/16, or millimetres. */
public final class LengthFormat {

  private static final long SIXTEENTH_NM = Length.INCH_NM / 16;

  private LengthFormat() {}

  /** Returns the length in the words of a system: {@code 24'-6 1/2"}, or {@code 7500 mm}. */
  public static String of(Length length, UnitSystem units) {
    return units.isMetric() ? millimetres(length) : feetInches(length);
  }

  /** Returns a thickness or spacing: {@code 4"}, {@code 2-1/2"}, or {@code 100 mm}. */
  public static String small(Length length, UnitSystem units) {
    return units.isMetric() ? millimetres(length) : inches(length);
  }

  /** Returns feet and inches to the nearest 1/16 in, halves away from zero: {@code 24'-6 1/2"}. */
  public static String feetInches(Length length) {
    long sixteenths = sixteenths(length);
    long feet = sixteenths / (12 * 16);
    long rest = sixteenths % (12 * 16);
    String sign = length.nanometres() < 0 && sixteenths > 0 ? "-" : "";
    return sign + feet + "'-" + inchText(rest, " ") + "\"";
  }

  /** Returns inches to the nearest 1/16: {@code 2-1/2"}. */
  public static String inches(Length length) {
    long sixteenths = sixteenths(length);
    String sign = length.nanometres() < 0 && sixteenths > 0 ? "-" : "";
    return sign + inchText(sixteenths, "-") + "\"";
  }

  /** Returns millimetres to the nearest tenth, with a decimal only where there is one. */
  public static String millimetres(Length length) {
    BigDecimal mm = BigDecimal.valueOf(length.nanometres(), 6).setScale(1, RoundingMode.HALF_UP);
    return (mm.signum() == 0 ? BigDecimal.ZERO : mm.stripTrailingZeros()).toPlainString() + " mm";
  }

  /** Returns metres to the nearest millimetre: {@code 8.92 m}. */
  public static String metres(Length length) {
    BigDecimal m = BigDecimal.valueOf(length.nanometres(), 9).setScale(3, RoundingMode.HALF_UP);
    return (m.signum() == 0 ? BigDecimal.ZERO : m.stripTrailingZeros()).toPlainString() + " m";
  }

  private static long sixteenths(Length length) {
    return (Math.abs(length.nanometres()) + SIXTEENTH_NM / 2) / SIXTEENTH_NM;
  }

  private static String inchText(long sixteenths, String join) {
    long whole = sixteenths / 16;
    long part = sixteenths % 16;
    if (part == 0) {
      return Long.toString(whole);
    }
    int shift = Long.numberOfTrailingZeros(part);
    String fraction = (part >> shift) + "/" + (16 >> shift);
    return whole == 0 ? fraction : whole + join + fraction;
  }
}
