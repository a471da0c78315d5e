package org.pourbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;

/** An amount of money in whole cents of the batch's one currency. */
public record Money(BigDecimal amount) implements Comparable<Money> {

  public static final Money ZERO = new Money(new BigDecimal("0.00"));

  public Money {
    if (amount.scale() != 2) {
      throw new IllegalArgumentException("money has two decimals, was " + amount);
    }
  }

  /** Returns the amount rounded half up to the cent: the one place where money is rounded. */
  public static Money rounded(BigDecimal exact) {
    return new Money(exact.setScale(2, RoundingMode.HALF_UP));
  }

  public static Money ofCents(long cents) {
    return new Money(BigDecimal.valueOf(cents, 2));
  }

  public static Money sum(Collection<Money> parts) {
    return parts.stream().reduce(ZERO, Money::plus);
  }

  /** Returns {@code quantity × unitPrice}, rounded once to the cent. */
  public static Money ofPrice(BigDecimal quantity, BigDecimal unitPrice) {
    return rounded(quantity.multiply(unitPrice));
  }

  public Money plus(Money other) {
    return new Money(amount.add(other.amount));
  }

  public Money minus(Money other) {
    return new Money(amount.subtract(other.amount));
  }

  /** Returns {@code percent} % of this amount, rounded to the cent. */
  public Money percent(BigDecimal percent) {
    return rounded(amount.multiply(percent).movePointLeft(2));
  }

  public long cents() {
    return amount.unscaledValue().longValueExact();
  }

  public boolean isZero() {
    return amount.signum() == 0;
  }

  @Override
  public int compareTo(Money other) {
    return amount.compareTo(other.amount);
  }

  @Override
  public String toString() {
    return amount.toPlainString();
  }
}
