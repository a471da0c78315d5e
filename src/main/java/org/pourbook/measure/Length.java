package org.pourbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length, held exactly as a whole number of nanometres: 1/64 in is 396,875 nm, 1 mm is 1,000,000
 * nm, so counting spaces and pieces is exact in either system.
 *
 * @param nanometres may be negative (a difference of levels)
 */
public record Length(long nanometres) implements Comparable<Length> {

  public static final Length ZERO = new Length(0);

  /** Nanometres in an inch, by definition 25.4 mm. */
  public static final long INCH_NM = 25_400_000L;

  /** Nanometres in a foot. */
  public static final long FOOT_NM = 12 * INCH_NM;

  /** Nanometres in a millimetre. */
  public static final long MM_NM = 1_000_000L;

  private static final BigDecimal INCH = BigDecimal.valueOf(INCH_NM);
  private static final BigDecimal FOOT = BigDecimal.valueOf(FOOT_NM);
  private static final BigDecimal MM = BigDecimal.valueOf(MM_NM);

  /** Returns whole feet and inches. */
  public static Length ofFeet(long feet) {
    return new Length(Math.multiplyExact(feet, FOOT_NM));
  }

  public static Length ofInches(long inches) {
    return new Length(Math.multiplyExact(inches, INCH_NM));
  }

  /** Returns {@code numerator/denominator} inches, to the nearest nanometre. */
  public static Length ofInches(long numerator, long denominator) {
    return nearest(
        BigDecimal.valueOf(numerator)
            .multiply(INCH)
            .divide(BigDecimal.valueOf(denominator), 3, RoundingMode.HALF_UP));
  }

  public static Length ofInches(BigDecimal inches) {
    return nearest(inches.multiply(INCH));
  }

  public static Length ofFeet(BigDecimal feet) {
    return nearest(feet.multiply(FOOT));
  }

  public static Length ofMillimetres(long millimetres) {
    return new Length(Math.multiplyExact(millimetres, MM_NM));
  }

  public static Length ofMillimetres(BigDecimal millimetres) {
    return nearest(millimetres.multiply(MM));
  }

  public static Length ofMetres(BigDecimal metres) {
    return nearest(metres.multiply(MM).movePointRight(3));
  }

  /** Returns the length nearest to a computed one (layouts, bends), to the nanometre. */
  public static Length ofMetres(double metres) {
    return new Length(Math.round(metres * 1e9));
  }

  /** Returns the length nearest to a number of inches that a formula gave. */
  public static Length ofInches(double inches) {
    return new Length(Math.round(inches * INCH_NM));
  }

  private static Length nearest(BigDecimal nanometres) {
    return new Length(nanometres.setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(nanometres, other.nanometres));
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(nanometres, other.nanometres));
  }

  public Length times(long factor) {
    return new Length(Math.multiplyExact(nanometres, factor));
  }

  /** Returns this length divided, to the nearest nanometre. */
  public Length dividedBy(long divisor) {
    return nearest(
        BigDecimal.valueOf(nanometres)
            .divide(BigDecimal.valueOf(divisor), 3, RoundingMode.HALF_UP));
  }

  /** Returns ⌈this ÷ part⌉, exactly: how many parts of that length cover this one; 0 for none. */
  public int ceilDiv(Length part) {
    if (part.nanometres <= 0) {
      throw new IllegalArgumentException("part must be above zero, was " + part.nanometres + " nm");
    }
    return Math.toIntExact(-Math.floorDiv(-nanometres, part.nanometres));
  }

  /** Returns ⌊this ÷ part⌋, exactly. */
  public int floorDiv(Length part) {
    if (part.nanometres <= 0) {
      throw new IllegalArgumentException("part must be above zero, was " + part.nanometres + " nm");
    }
    return Math.toIntExact(Math.floorDiv(nanometres, part.nanometres));
  }

  /** Returns the length rounded up to a multiple of {@code step}. */
  public Length roundedUpTo(Length step) {
    return new Length(
        Math.multiplyExact(-Math.floorDiv(-nanometres, step.nanometres), step.nanometres));
  }

  /** Returns the length rounded down to a multiple of {@code step}. */
  public Length roundedDownTo(Length step) {
    return new Length(
        Math.multiplyExact(Math.floorDiv(nanometres, step.nanometres), step.nanometres));
  }

  public Length max(Length other) {
    return nanometres >= other.nanometres ? this : other;
  }

  public Length min(Length other) {
    return nanometres <= other.nanometres ? this : other;
  }

  public boolean isZero() {
    return nanometres == 0;
  }

  public boolean isPositive() {
    return nanometres > 0;
  }

  public boolean isMoreThan(Length other) {
    return nanometres > other.nanometres;
  }

  public boolean isLessThan(Length other) {
    return nanometres < other.nanometres;
  }

  /** Returns the length in metres. */
  public double metres() {
    return nanometres / 1e9;
  }

  /** Returns the length in millimetres. */
  public double millimetres() {
    return nanometres / 1e6;
  }

  /** Returns the length in feet. */
  public double feet() {
    return (double) nanometres / FOOT_NM;
  }

  /** Returns the length in inches. */
  public double inches() {
    return (double) nanometres / INCH_NM;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }

  /** Returns the length as a builder reads it, see {@link LengthFormat#feetInches}. */
  @Override
  public String toString() {
    return LengthFormat.feetInches(this);
  }
}
