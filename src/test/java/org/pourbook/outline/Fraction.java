package org.pourbook.outline;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** An exact rational number. */
record Fraction(BigInteger top, BigInteger bottom) implements Comparable<Fraction> {

  static final Fraction ZERO = of(0);

  static Fraction of(long value) {
    return new Fraction(BigInteger.valueOf(value), BigInteger.ONE);
  }

  /** Returns exactly the value that the double holds. */
  static Fraction of(double value) {
    BigDecimal exact = new BigDecimal(value);
    return exact.scale() <= 0
        ? new Fraction(exact.toBigIntegerExact(), BigInteger.ONE)
        : new Fraction(exact.unscaledValue(), BigInteger.TEN.pow(exact.scale()));
  }

  Fraction plus(Fraction other) {
    return new Fraction(
        top.multiply(other.bottom).add(other.top.multiply(bottom)), bottom.multiply(other.bottom));
  }

  Fraction minus(Fraction other) {
    return plus(other.times(of(-1)));
  }

  Fraction times(Fraction other) {
    return new Fraction(top.multiply(other.top), bottom.multiply(other.bottom));
  }

  Fraction over(Fraction other) {
    Fraction turned =
        other.bottom.signum() * other.top.signum() < 0
            ? new Fraction(other.bottom.negate(), other.top.negate())
            : new Fraction(other.bottom, other.top);
    return times(turned);
  }

  double value() {
    return new BigDecimal(top).divide(new BigDecimal(bottom), MathContext.DECIMAL64).doubleValue();
  }

  @Override
  public int compareTo(Fraction other) {
    return minus(other).top.signum() * bottom.signum() * other.bottom.signum();
  }
}
