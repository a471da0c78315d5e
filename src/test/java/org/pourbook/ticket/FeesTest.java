package org.pourbook.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.MaterialKey;

/** Fees beside what the supplier lists (TICK-4). All invented. */
class FeesTest {

  private static final Place NOWHERE = new Place("suppliers.csv", 0, -1);
  private static final double YD3 = Unit.YD3.toBase(1);

  /** Lists 45.00 a delivery, 15.00 a load, a minimum order, and 8.00 a yd3 short of 4 an order. */
  private static final Supplier LISTING =
      new Supplier(
          Desk.PLANT,
          "",
          "",
          "",
          Optional.of(Money.ofCents(4500)),
          Optional.empty(),
          BigDecimal.ZERO,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.of(4 * YD3),
          BigDecimal.valueOf(8 / YD3),
          true,
          true,
          Optional.of(Money.ofCents(1500)),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.of(Money.ofCents(20000)),
          NOWHERE);

  private static final Supplier BARE = Supplier.named(Desk.PLANT, NOWHERE);

  private static Reconciliation reconcile(Supplier plant, List<Ordered> orders, Ticket... rows) {
    return Reconciler.reconcile(
        orders, List.of(plant), List.of(), List.of(rows), job -> Terms.USUAL, List.of());
  }

  /** Returns what is told beside a load as it was ordered. */
  private static List<String> told(Supplier plant, Ticket... fees) {
    Ticket[] rows = new Ticket[fees.length + 1];
    rows[0] = Desk.load("T1", 12, 60);
    System.arraycopy(fees, 0, rows, 1, fees.length);
    return told(reconcile(plant, List.of(Desk.concrete("A")), rows));
  }

  private static List<String> told(Reconciliation result) {
    return result.findings().stream()
        .map(f -> f.name().label() + f.money().map(money -> " " + money).orElse(""))
        .toList();
  }

  private static Ticket fee(String charge, double quantity, String amount) {
    Ticket one = Desk.fee("T1", charge, amount);
    return new Ticket(
        one.ticket(),
        one.date(),
        one.supplier(),
        one.job(),
        one.key(),
        one.item(),
        quantity,
        one.unit(),
        one.truck(),
        one.batched(),
        one.arrived(),
        one.discharged(),
        one.waterAddedL(),
        one.unitPrice(),
        one.amount(),
        one.charge(),
        one.invoice(),
        one.place());
  }

  private static Ordered ordered(String job, int yd3) {
    Ordered.Item item = Desk.concrete(job).items().get(0);
    return new Ordered(
        job,
        job,
        Desk.FLOOR_MIX,
        "yd3",
        yd3,
        List.of(
            new Ordered.Item(
                item.supplier(),
                item.item(),
                item.orderUnit(),
                item.packHolds(),
                BigDecimal.valueOf(yd3),
                item.unitPrice(),
                Optional.empty())));
  }

  @Test
  void aListedFeeIsWorthItsNumberOfTimes() {
    assertEquals(List.of(), told(LISTING, fee("Delivery", 1, "45.00")));
    assertEquals(List.of("price differs 15.00"), told(LISTING, fee("delivery", 1, "60.00")));
    assertEquals(List.of(), told(LISTING, fee("fee per load", 3, "45.00")));
    assertEquals(List.of("price differs 30.00"), told(LISTING, fee("load", 1, "45.00")));
  }

  /** Price difference is 1 %: 45 cents of 45.00. */
  @Test
  void aFeeIsLetPassWithinThePriceDifference() {
    assertEquals(List.of(), told(LISTING, fee("delivery", 1, "45.45")));
    assertEquals(List.of("price differs 0.46"), told(LISTING, fee("delivery", 1, "45.46")));
  }

  @Test
  void aMinimumOrderIsLeftToWhoListsOne() {
    assertEquals(List.of(), told(LISTING, fee("minimum order", 1, "30.00")));
  }

  @Test
  void whatASupplierDoesNotListIsTold() {
    for (String charge :
        List.of("delivery", "load", "fee per load", "minimum order", "short load", "waiting")) {
      assertEquals(List.of("fee not listed 30.00"), told(BARE, fee(charge, 1, "30.00")), charge);
    }
  }

  @Test
  void aFeeThatACreditTakesOffAgainIsSettledOnItsOwnTicketAlone() {
    assertEquals(
        List.of("fee not listed 12.00"),
        told(
            LISTING,
            Desk.fee("T1", "fuel", "12.00"),
            Desk.billed(Desk.fee("T1", "fuel", "12.00"), "C1", "", "-12.00"),
            Desk.fee("T2", "fuel", "12.00")));
  }

  @Test
  void aFeeThatIsTakenOffInPartIsTold() {
    assertEquals(
        List.of("fee not listed 12.00"),
        told(
            LISTING,
            Desk.billed(Desk.fee("T1", "fuel", "12.00"), "I1", "", "12.00"),
            Desk.billed(Desk.fee("T1", "fuel", "-11.99"), "C1", "", "-11.99")));
  }

  /** Of an order of 12 yd3 the last load may be 1 yd3. */
  @Test
  void aShortLoadFeeByTheOrderLooksAtTheOrder() {
    Reconciliation whole =
        reconcile(
            LISTING,
            List.of(Desk.concrete("A")),
            Desk.load("T1", 11, 60),
            Desk.load("T2", 1, 60),
            Desk.fee("T2", "short load", "24.00"));
    assertEquals(List.of("short-load fee not due 24.00"), told(whole));
    assertEquals(
        "The order is 12 yd3, the fee is due under 4 yd3. Ask for it to be taken off.",
        whole.findings().get(0).says());
    // 3 yd3 ordered are 1 short of 4: 8.00.
    Reconciliation small =
        reconcile(
            LISTING,
            List.of(ordered("A", 3), ordered("B", 20)),
            Desk.load("T1", 3, 60),
            Desk.goods("T9", "B", Desk.FLOOR_MIX, 20, "yd3"),
            Desk.fee("T1", "short load", "10.00"));
    assertEquals(List.of("price differs 2.00"), told(small));
  }

  /** Its own ticket holds no concrete: then the job's order is what it is about, counted once. */
  @Test
  void aShortLoadFeeOnABillOfItsOwnLooksAtTheJobsOrder() {
    List<Ordered> orders = List.of(ordered("A", 3), ordered("B", 20));
    Reconciliation result =
        reconcile(
            LISTING,
            orders,
            Desk.load("T1", 1.5, 60),
            Desk.load("T2", 1.5, 60),
            Desk.goods("T9", "B", Desk.FLOOR_MIX, 20, "yd3"),
            Desk.fee("T77", "short load", "8.00"));
    assertEquals(List.of(), told(result));
    assertEquals(List.of(), result.problems());
  }

  /** The floor's 20 yd3 do not make the wall's 3 yd3 a large order. */
  @Test
  void aShortLoadFeeByTheOrderLooksAtTheMixOnItsTicket() {
    Ordered wall = ordered("A", 3);
    Ordered floor =
        new Ordered(
            "A", "A", new MaterialKey("concrete", "4000 psi"), "yd3", 20, ordered("A", 20).items());
    Reconciliation result =
        reconcile(
            LISTING,
            List.of(wall, floor),
            Desk.from(Desk.load("T1", 3, 60), Desk.PLANT, wall.key(), ""),
            Desk.from(Desk.load("T2", 20, 60), Desk.PLANT, floor.key(), ""),
            Desk.fee("T1", "short load", "8.00"));
    assertEquals(List.of(), told(result));
  }

  @Test
  void aVolumeIsToldInTheUnitOfTheTicket() {
    Ticket metric =
        Desk.billed(
            Desk.goods("T1", "A", Desk.FLOOR_MIX, 12 * YD3, "m3"), "", "130.7951", "1200.00");
    Reconciliation result =
        reconcile(
            Desk.plant(),
            List.of(Desk.concrete("A")),
            metric,
            Desk.fee("T1", "short load", "50.00"));
    assertEquals(List.of("short-load fee not due 50.00"), told(result));
    assertTrue(
        result
            .findings()
            .get(0)
            .says()
            .startsWith("The load is 9.17 m3, the fee is due under 3.06"),
        result.findings().get(0).says());
  }
}
