package org.pourbook.book.out;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.buy.Line;
import org.pourbook.buy.Price;
import org.pourbook.measure.Money;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.MaterialKey;

/** A Materials row in the making. */
final class DemoLine {

  private final String job;
  private final MaterialKey key;
  private final double net;
  private final double allowance;
  private final double needed;
  private final String unit;
  private Optional<Price> price = Optional.empty();
  private double holds = 1;
  private String packs = "0";
  private String order = "";
  private boolean service;

  DemoLine(String job, MaterialKey key, double net, double allowance, double needed, String unit) {
    this.job = job;
    this.key = key;
    this.net = net;
    this.allowance = allowance;
    this.needed = needed;
    this.unit = unit;
  }

  DemoLine bought(Price at, double packHolds, String count, String orderNumber) {
    price = Optional.of(at);
    holds = packHolds;
    packs = count;
    order = orderNumber;
    return this;
  }

  DemoLine service() {
    service = true;
    return this;
  }

  Line unpriced(String count, String orderNumber) {
    packs = count;
    order = orderNumber;
    return line(Optional.empty());
  }

  Line of(String amount) {
    return line(Optional.of(DemoEstimate.money(amount)));
  }

  private Line line(Optional<Money> amount) {
    return new Line(
        job,
        job.equals("BARN") ? UnitSystem.M : UnitSystem.FT_IN,
        key,
        OptionalDouble.of(net),
        OptionalDouble.of(allowance),
        needed,
        unit,
        price,
        price.map(Price::item).orElse(""),
        holds,
        new BigDecimal(packs),
        price.map(Price::orderUnit).orElse(unit),
        amount,
        service,
        Optional.of(LocalDate.of(2027, 4, 29)),
        List.of(order));
  }
}
