package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;

/** A supplier, built up in tests. */
final class Seller {
  private final String name;
  private Optional<Money> deliveryFee = Optional.empty();
  private Optional<Money> freeFrom = Optional.empty();
  private Optional<Money> minimum = Optional.empty();
  private Optional<Money> feePerLoad = Optional.empty();
  private BigDecimal tax = BigDecimal.ZERO;
  private OptionalDouble loadSize = OptionalDouble.empty();
  private OptionalDouble step = OptionalDouble.empty();
  private OptionalDouble shortUnder = OptionalDouble.empty();
  private BigDecimal shortFee = BigDecimal.ZERO;
  private boolean shortPerYd3;
  private boolean shortByOrder;
  private OptionalDouble minutesAway = OptionalDouble.empty();

  private Seller(String name) {
    this.name = name;
  }

  static Seller named(String name) {
    return new Seller(name);
  }

  private static Optional<Money> money(String amount) {
    return Optional.of(Money.rounded(new BigDecimal(amount)));
  }

  Seller delivery(String fee) {
    deliveryFee = money(fee);
    return this;
  }

  Seller freeFrom(String value) {
    freeFrom = money(value);
    return this;
  }

  Seller minimum(String value) {
    minimum = money(value);
    return this;
  }

  Seller perLoad(String fee) {
    feePerLoad = money(fee);
    return this;
  }

  Seller tax(String percent) {
    tax = new BigDecimal(percent);
    return this;
  }

  Seller trucks(double loadYd3, double stepYd3) {
    loadSize = OptionalDouble.of(Unit.YD3.toBase(loadYd3));
    step = OptionalDouble.of(Unit.YD3.toBase(stepYd3));
    return this;
  }

  Seller shortFlat(double underYd3, String fee) {
    shortUnder = OptionalDouble.of(Unit.YD3.toBase(underYd3));
    shortFee = new BigDecimal(fee);
    return this;
  }

  Seller shortPerYd3(double underYd3, String fee) {
    shortUnder = OptionalDouble.of(Unit.YD3.toBase(underYd3));
    shortFee = new BigDecimal(fee).divide(yd3(), MathContext.DECIMAL64);
    shortPerYd3 = true;
    return this;
  }

  private static BigDecimal yd3() {
    return BigDecimal.valueOf(Unit.YD3.toBase(1));
  }

  Seller byOrder() {
    shortByOrder = true;
    return this;
  }

  Seller away(double minutes) {
    minutesAway = OptionalDouble.of(minutes);
    return this;
  }

  Supplier supplier() {
    return new Supplier(
        name,
        "",
        "",
        "",
        deliveryFee,
        freeFrom,
        tax,
        loadSize,
        step,
        shortUnder,
        shortFee,
        shortPerYd3,
        shortByOrder,
        feePerLoad,
        minutesAway,
        OptionalDouble.empty(),
        Optional.empty(),
        minimum,
        Given.HERE);
  }
}
