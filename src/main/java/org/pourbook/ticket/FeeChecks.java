package org.pourbook.ticket;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;

/** What is wrong with a fee beside the concrete of its ticket (TICK-4). */
final class FeeChecks {

  private static final BigDecimal CENT = new BigDecimal("0.01");

  private final Function<String, Terms> terms;
  private final Map<String, Supplier> suppliers = new HashMap<>();
  private final TicketGoods goods;
  private final List<Finding> findings;
  private final List<Problem> problems;
  private final Map<String, Money> charged = new HashMap<>();

  FeeChecks(
      Function<String, Terms> terms,
      List<Supplier> suppliers,
      TicketGoods goods,
      List<Finding> findings,
      List<Problem> problems) {
    this.terms = terms;
    suppliers.forEach(
        supplier -> this.suppliers.putIfAbsent(MaterialKey.normal(supplier.name()), supplier));
    this.goods = goods;
    this.findings = findings;
    this.problems = problems;
  }

  /** Checks fees that are billed; one that a credit takes off again is settled. */
  void check(List<Ticket> fees) {
    fees.forEach(fee -> charged.merge(charge(fee), fee.money().orElse(Money.ZERO), Money::plus));
    for (Ticket fee : fees) {
      boolean credit = fee.money().filter(money -> money.amount().signum() < 0).isPresent();
      boolean settled =
          fee.money().isPresent()
              && charged.getOrDefault(charge(fee), Money.ZERO).amount().signum() <= 0;
      if (!credit && !settled) {
        check(fee);
      }
    }
  }

  private static String charge(Ticket fee) {
    return TicketNumber.of(fee) + fee.charge().toLowerCase(Locale.ROOT);
  }

  private void check(Ticket fee) {
    Optional<Supplier> supplier =
        Optional.ofNullable(suppliers.get(MaterialKey.normal(fee.supplier())));
    switch (fee.charge().toLowerCase(Locale.ROOT)) {
      case "short load" -> shortLoad(fee, supplier);
      case "delivery" -> listed(fee, supplier.flatMap(Supplier::deliveryFee));
      case "waiting" -> waiting(fee, supplier);
      case "fee per load", "load" -> listed(fee, supplier.flatMap(Supplier::feePerLoad));
      case "minimum order" -> {
        if (supplier.flatMap(Supplier::minimumOrder).isEmpty()) {
          notListed(fee);
        }
      }
      default -> notListed(fee);
    }
  }

  private void notListed(Ticket fee) {
    add(
        fee,
        Finding.Name.FEE_NOT_LISTED,
        "'"
            + fee.charge()
            + "' is not among the supplier's listed fees. Ask for it to be taken off.",
        fee.money());
  }

  private void listed(Ticket fee, Optional<Money> each) {
    if (each.isEmpty()) {
      notListed(fee);
    } else {
      amount(fee, Money.ofPrice(BigDecimal.valueOf(fee.quantity()), each.get().amount()));
    }
  }

  /** A fee that is due may still be another one than the supplier lists. */
  private void amount(Ticket fee, Money due) {
    Money over = fee.money().orElse(due).minus(due);
    BigDecimal percent = BigDecimal.valueOf(terms.apply(fee.job()).pricePercent());
    BigDecimal limit = due.percent(percent).amount().max(CENT);
    if (over.amount().abs().compareTo(limit) > 0) {
      add(
          fee,
          Finding.Name.PRICE_DIFFERS,
          "'"
              + fee.charge()
              + "' is listed at "
              + due
              + ", charged "
              + due.plus(over)
              + ". Ask which holds.",
          Optional.of(over));
    }
  }

  private void shortLoad(Ticket fee, Optional<Supplier> supplier) {
    if (supplier.isEmpty() || supplier.get().shortLoadUnderM3().isEmpty()) {
      notListed(fee);
      return;
    }
    double limit = supplier.get().shortLoadUnderM3().getAsDouble();
    boolean byOrder = supplier.get().shortLoadByOrder();
    double volume = byOrder ? goods.orderedM3(fee) : goods.concreteM3(fee);
    if (volume == 0) {
      problems.add(
          new Problem(
              fee.place(),
              fee.job(),
              "a short-load fee on ticket " + fee.ticket() + ", which holds no concrete here",
              "the load's own row, without which it is not known whether the fee is due",
              Problem.Effect.NOTE));
    } else if (volume >= limit - 1e-9) {
      add(
          fee,
          Finding.Name.SHORT_LOAD_NOT_DUE,
          "The "
              + (byOrder ? "order" : "load")
              + " is "
              + volume(fee, volume)
              + ", the fee is due under "
              + volume(fee, limit)
              + ". Ask for it to be taken off.",
          fee.money());
    } else {
      amount(fee, supplier.get().shortLoadFee(volume));
    }
  }

  private void waiting(Ticket fee, Optional<Supplier> supplier) {
    if (supplier.isEmpty() || supplier.get().waitingPerMinute().isEmpty()) {
      notListed(fee);
      return;
    }
    OptionalInt minutes =
        goods.of(fee).stream().flatMap(row -> row.onSite().stream()).mapToInt(m -> m).max();
    double free = supplier.get().freeMinutesPerM3().orElse(0) * goods.concreteM3(fee);
    BigDecimal beyond =
        BigDecimal.valueOf(Math.max(0, minutes.orElse(0) - free)).setScale(9, RoundingMode.HALF_UP);
    Money due = Money.ofPrice(beyond, supplier.get().waitingPerMinute().get());
    Money asked = fee.money().orElse(Money.ZERO);
    String stood =
        minutes.isPresent()
            ? minutes.getAsInt() + " min on site, " + Math.round(free) + " free"
            : "The ticket gives no times on site";
    add(
        fee,
        Finding.Name.WAITING_CHARGED,
        stood + ": " + due + " is due, " + asked + " charged. Ask for the times of the truck.",
        Optional.of(asked.minus(due)));
  }

  /** Returns a volume in the unit in which the fee's ticket gives it. */
  private String volume(Ticket fee, double m3) {
    boolean metric =
        goods.of(fee).stream().anyMatch(row -> Unit.named(row.unit()).equals(Optional.of(Unit.M3)));
    Unit unit = metric ? Unit.M3 : Unit.YD3;
    return BigDecimal.valueOf(unit.fromBase(m3))
            .setScale(2, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " "
        + unit.label();
  }

  private void add(Ticket row, Finding.Name name, String says, Optional<Money> money) {
    findings.add(Findings.of(row, row.key(), name, says, money));
  }
}
