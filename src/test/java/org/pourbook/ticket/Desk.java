package org.pourbook.ticket;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.MaterialKey;

/** Orders, suppliers and tickets for tests; all invented. */
final class Desk {

  static final String PLANT = "Invented Ready Mix";
  static final MaterialKey FLOOR_MIX = new MaterialKey("concrete", "3000 psi");
  static final MaterialKey BOLTS = new MaterialKey("anchor bolt", "1/2 x 10");
  private static final Place NOWHERE = new Place("tickets.csv", 0, -1);

  private Desk() {}

  /** 12 yd3 at 100.00. */
  static Ordered concrete(String job) {
    return new Ordered(
        job,
        job,
        FLOOR_MIX,
        "yd3",
        10.8,
        List.of(
            new Ordered.Item(
                PLANT,
                "C30",
                "yd3",
                1,
                new BigDecimal("12"),
                Optional.of(new BigDecimal("100.00")),
                Optional.of(Money.ofCents(120000)))));
  }

  /** Two boxes of 25 at 38.00. */
  static Ordered bolts(String job, String deliverTo) {
    return new Ordered(
        job,
        deliverTo,
        BOLTS,
        "each",
        48,
        List.of(
            new Ordered.Item(
                PLANT,
                "AB10",
                "box",
                25,
                new BigDecimal("2"),
                Optional.of(new BigDecimal("38.00")),
                Optional.of(Money.ofCents(7600)))));
  }

  /** Charges 50.00 for a load under 4 yd3; 6 free minutes a yd3, then 2.00 a minute. */
  static Supplier plant() {
    double yd3 = Unit.YD3.toBase(1);
    return new Supplier(
        PLANT,
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        BigDecimal.ZERO,
        OptionalDouble.of(10 * yd3),
        OptionalDouble.empty(),
        OptionalDouble.of(4 * yd3),
        new BigDecimal("50.00"),
        false,
        false,
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(6 / yd3),
        Optional.of(new BigDecimal("2.00")),
        Optional.empty(),
        NOWHERE);
  }

  /** A load with its price, batched at 7:00 and discharged {@code minutes} later. */
  static Ticket load(String number, double yd3, int minutes) {
    return new Ticket(
        number,
        Optional.of(LocalDate.of(2027, 4, 13)),
        PLANT,
        "A",
        FLOOR_MIX,
        "C30",
        yd3,
        "yd3",
        "7",
        Optional.of(LocalTime.of(7, 0)),
        Optional.of(LocalTime.of(7, 25)),
        Optional.of(LocalTime.of(7, 0).plusMinutes(minutes)),
        OptionalDouble.empty(),
        Optional.of(new BigDecimal("100.00")),
        Optional.of(Money.rounded(BigDecimal.valueOf(yd3 * 100))),
        "",
        "",
        NOWHERE);
  }

  static Ticket goods(String number, String job, MaterialKey key, double quantity, String unit) {
    return new Ticket(
        number,
        Optional.of(LocalDate.of(2027, 4, 12)),
        PLANT,
        job,
        key,
        "",
        quantity,
        unit,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        "",
        NOWHERE);
  }

  static Ticket fee(String number, String charge, String amount) {
    return new Ticket(
        number,
        Optional.of(LocalDate.of(2027, 4, 13)),
        PLANT,
        "A",
        new MaterialKey("", ""),
        "",
        1,
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.of(Money.rounded(new BigDecimal(amount))),
        charge,
        "",
        NOWHERE);
  }

  /** A row of a bill for concrete of job A; blank price or amount means none. */
  static Ticket bill(
      String number, String invoice, double quantity, String unit, String price, String amount) {
    return billed(goods(number, "A", FLOOR_MIX, quantity, unit), invoice, price, amount);
  }

  /** The same row with money on it. */
  static Ticket billed(Ticket row, String invoice, String price, String amount) {
    return new Ticket(
        row.ticket(),
        row.date(),
        row.supplier(),
        row.job(),
        row.key(),
        row.item(),
        row.quantity(),
        row.unit(),
        row.truck(),
        row.batched(),
        row.arrived(),
        row.discharged(),
        row.waterAddedL(),
        price.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(price)),
        amount.isEmpty() ? Optional.empty() : Optional.of(Money.rounded(new BigDecimal(amount))),
        row.charge(),
        invoice,
        row.place());
  }

  /** The same row from a supplier, under its own words for the goods. */
  static Ticket from(Ticket row, String supplier, MaterialKey key, String item) {
    return new Ticket(
        row.ticket(),
        row.date(),
        supplier,
        row.job(),
        key,
        item,
        row.quantity(),
        row.unit(),
        row.truck(),
        row.batched(),
        row.arrived(),
        row.discharged(),
        row.waterAddedL(),
        row.unitPrice(),
        row.amount(),
        row.charge(),
        row.invoice(),
        row.place());
  }

  /** Matches rows with orders at the plant, under the usual terms. */
  static Reconciliation reconcile(List<Ordered> orders, Ticket... rows) {
    return Reconciler.reconcile(
        orders, List.of(plant()), List.of(), List.of(rows), job -> Terms.USUAL, List.of());
  }

  /** Returns the findings by name, each with its money. */
  static List<String> told(Reconciliation result) {
    return result.findings().stream()
        .map(f -> f.name().label() + f.money().map(money -> " " + money).orElse(""))
        .toList();
  }
}
