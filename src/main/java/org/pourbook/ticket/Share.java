package org.pourbook.ticket;

import java.math.BigDecimal;
import org.pourbook.measure.Money;

/** A part of a row: from one share of it to another, so that parts add up to the cent. */
record Share(double from, double to) {

  static final Share WHOLE = new Share(0, 1);

  double size() {
    return to - from;
  }

  Money of(Money whole) {
    return upTo(whole, to).minus(upTo(whole, from));
  }

  private static Money upTo(Money whole, double share) {
    return Money.rounded(whole.amount().multiply(BigDecimal.valueOf(share)));
  }
}
