package org.pourbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;

/** An amount of money in whole cents of the batch's one currency. */
public record Money(long cents) implements Comparable<Money> {

  public static final Money ZERO = new Money(0);

  /** Returns the amount rounded half up to the cent: the one place where money is rounded. */
  public static Money rounded(BigDecimal exact) {
    BigDecimal cents = exact.movePointRight(2).setScale(0, RoundingMode.HALF_UP);
    return new Money(cents.longValueExact());
  }

  public static Money ofCents(long cents) {
    return new Money(cents);
  }

  public static Money sum(Collection<Money> parts) {
    return parts.stream().reduce(ZERO, Money::plus);
  }

  /** Returns {@code quantity × unitPrice}, rounded once to the cent. */
  public static Money ofPrice(BigDecimal quantity, BigDecimal unitPrice) {
    return rounded(quantity.multiply(unitPrice));
  }

  public Money plus(Money other) {
    return new Money(Math.addExact(cents, other.cents));
  }

  public Money minus(Money other) {
    return new Money(Math.subtractExact(cents, other.cents));
  }

  /** Returns {@code percent} % of this amount, rounded to the cent. */
  public Money percent(BigDecimal percent) {
    return rounded(amount().multiply(percent).movePointLeft(2));
  }

  /** Returns the amount with its two decimals. */
  public BigDecimal amount() {
    return BigDecimal.valueOf(cents, 2);
  }

  public boolean isZero() {
    return cents == 0;
  }

  @Override
  public int compareTo(Money other) {
    return Long.compare(cents, other.cents);
  }

  @Override
  public String toString() {
    return amount().toPlainString();
  }
}
