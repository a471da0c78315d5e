package org.pourbook.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.ticket.Desk.reconcile;
import static org.pourbook.ticket.Desk.told;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/** Which line a row belongs to, what rows say twice, and what a line says of them. */
class MatchingTest {

  private static List<Double> delivered(Reconciliation result) {
    return result.matched().stream().map(Matched::delivered).toList();
  }

  private static Ordered to(String place, Ordered line, String packs) {
    Ordered.Item item = line.items().get(0);
    Ordered.Item other =
        new Ordered.Item(
            item.supplier(),
            item.item(),
            item.orderUnit(),
            item.packHolds(),
            new BigDecimal(packs),
            item.unitPrice(),
            item.amount());
    return new Ordered(
        line.job(), place, line.key(), line.unit(), line.estimated(), List.of(other));
  }

  @Test
  void aRowInAUnitThatFitsNoPackIsAskedAbout() {
    Ticket buckets = Desk.goods("T1", "A", Desk.FLOOR_MIX, 12, "bucket");
    Reconciliation result = reconcile(List.of(Desk.concrete("A")), buckets);
    assertEquals("unit 'bucket'", result.problems().get(0).found());
    assertEquals(List.of(0.0), delivered(result));
  }

  /** The job's own site and a place it shares: the ticket does not say which. */
  @Test
  void twoDeliveriesOfOneJobAreAskedAbout() {
    Ordered here = Desk.concrete("A");
    Ordered there = to("yard", Desk.concrete("A"), "12");
    Reconciliation result =
        reconcile(List.of(here, there), Desk.goods("T1", "A", Desk.FLOOR_MIX, 12, "yd3"));
    assertEquals(1, result.problems().size());
    assertTrue(
        result.problems().get(0).expected().endsWith("A concrete 3000 psi C30"),
        result.problems().get(0).expected());
    assertEquals(List.of(0.0, 0.0), delivered(result));
  }

  /** Four boxes of 25 for two jobs of which one ordered three times as much. */
  @Test
  void aSharedDeliveryIsDividedAsItWasOrdered() {
    List<Ordered> shared =
        List.of(to("yard", Desk.bolts("A", "A"), "3"), to("yard", Desk.bolts("B", "B"), "1"));
    Ticket row =
        Desk.billed(Desk.goods("T1", "yard", Desk.BOLTS, 4, "box"), "I1", "38.00", "152.01");
    Reconciliation result = reconcile(shared, row);
    assertEquals(List.of(75.0, 25.0), delivered(result));
    assertEquals(
        List.of("114.01", "38.00"),
        result.matched().stream().map(line -> line.billedAmount().toString()).toList());
  }

  /** Of stock on hand nothing was ordered; what comes all the same is shared alike. */
  @Test
  void whatNobodyOrderedPacksOfIsDividedAlike() {
    List<Ordered> shared =
        List.of(
            to("yard", Desk.bolts("A", "A"), "0"),
            to("yard", Desk.bolts("B", "B"), "0"),
            to("yard", Desk.bolts("C", "C"), "0"));
    Reconciliation result = reconcile(shared, Desk.goods("T1", "yard", Desk.BOLTS, 3, "box"));
    delivered(result).forEach(own -> assertEquals(25, own, 1e-9));
  }

  @Test
  void aSuppliersOwnCodeThatWasNotOrderedIsOtherGoods() {
    Ticket other =
        Desk.from(
            Desk.goods("T1", "A", Desk.FLOOR_MIX, 12, "yd3"), Desk.PLANT, Desk.FLOOR_MIX, "C45");
    assertEquals(
        List.of("not delivered", "not ordered"),
        told(reconcile(List.of(Desk.concrete("A")), other)).stream().sorted().toList());
  }

  /** Not the row that happens to be read first. */
  @Test
  void whichOfTwoDoublesCountsDoesNotDependOnTheirOrder() {
    Ticket eight = Desk.load("T1", 8, 60);
    Ticket four = Desk.load("T1", 4, 60);
    Reconciliation one = reconcile(List.of(Desk.concrete("A")), eight, four);
    Reconciliation other = reconcile(List.of(Desk.concrete("A")), four, eight);
    assertEquals(delivered(one), delivered(other));
    assertEquals(told(one), told(other));
    assertTrue(
        one.findings().stream().anyMatch(f -> f.says().contains("with another quantity")),
        one.findings().toString());
  }

  @Test
  void theSameAgainIsNoOtherQuantity() {
    Ticket row = Desk.load("T1", 12, 60);
    String says = reconcile(List.of(Desk.concrete("A")), row, row).findings().get(0).says();
    assertEquals("Also at tickets.csv!A1; counted once. Ask for one to be taken off.", says);
  }

  @Test
  void aBillWithAPriceAloneCostsQuantityTimesPrice() {
    Ticket row = Desk.billed(Desk.load("T1", 12, 60), "I1", "100.00", "");
    assertEquals(
        Money.ofCents(120000), reconcile(List.of(Desk.concrete("A")), row).billed().total());
  }

  @Test
  void pricesAndQuantitiesAreToldAsFiguresOfTheTicket() {
    Ticket dear = Desk.bill("T1", "I1", 12 * 0.764554857984, "m3", "140.00", "");
    Reconciliation result = reconcile(List.of(Desk.concrete("A")), dear);
    assertEquals(
        "Ordered at 130.7951 a m3, billed at 140.00. Ask which price holds.",
        result.findings().get(0).says());
    Ticket bare = Desk.bill("T1", "I1", 12.75, "", "101.50", "");
    List<String> says =
        reconcile(List.of(Desk.concrete("A")), bare).findings().stream()
            .map(Finding::says)
            .toList();
    assertTrue(
        says.contains("Ordered at 100.00 a yd3, billed at 101.50. Ask which price holds."),
        says.toString());
    assertTrue(
        says.contains(
            "Ordered 12, delivered 12.75 yd3: more than was ordered. Ask who called for it."),
        says.toString());
  }

  /** 1 % of 100.00 is let pass, a cent more is not. */
  @Test
  void aPriceIsLetPassWithinThePriceDifference() {
    List<Ordered> orders = List.of(Desk.concrete("A"));
    assertEquals(
        List.of(), told(reconcile(orders, Desk.bill("T1", "I1", 12, "yd3", "101.00", "1212.00"))));
    assertEquals(
        List.of("price differs 12.12"),
        told(reconcile(orders, Desk.bill("T1", "I1", 12, "yd3", "101.01", "1212.12"))));
  }

  /** A cent is rounding, two are not; of a credit as of a bill. */
  @Test
  void anExtensionIsHeldToTheCent() {
    List<Ordered> orders = List.of(Desk.concrete("A"));
    assertEquals(
        List.of(), told(reconcile(orders, Desk.bill("T1", "I1", 12, "yd3", "100", "1200.01"))));
    assertEquals(
        List.of("wrong extension 0.02"),
        told(reconcile(orders, Desk.bill("T1", "I1", 12, "yd3", "100", "1200.02"))));
    assertEquals(
        List.of("wrong extension -0.50"),
        told(
            reconcile(
                orders,
                Desk.load("T1", 12, 60),
                Desk.bill("T1", "C1", 12, "yd3", "5.00", "-60.50"))));
  }

  private static Ticket poured(LocalTime from, LocalTime to, double litres, String unit) {
    Ticket row = Desk.load("T1", 12, 60);
    return new Ticket(
        row.ticket(),
        row.date(),
        row.supplier(),
        row.job(),
        row.key(),
        row.item(),
        row.quantity(),
        unit,
        row.truck(),
        Optional.of(from),
        Optional.empty(),
        Optional.of(to),
        OptionalDouble.of(litres),
        Optional.empty(),
        Optional.empty(),
        "",
        "",
        row.place());
  }

  @Test
  void anAgeRunsOverMidnight() {
    Ticket night = poured(LocalTime.of(23, 50), LocalTime.of(1, 21), 0, "yd3");
    assertEquals(Optional.of(91), night.age());
    assertEquals(List.of("late discharge"), told(reconcile(List.of(Desk.concrete("A")), night)));
    Ticket none = poured(LocalTime.NOON, LocalTime.NOON, 0, "yd3");
    assertEquals(Optional.of(0), none.age());
  }

  /** 1 US gal = 3.785411784 L. */
  @Test
  void waterThatWasAddedIsToldInTheTicketsUnits() {
    LocalTime seven = LocalTime.of(7, 0);
    Ticket row = poured(seven, seven.plusMinutes(60), 37.85411784, "yd3");
    Reconciliation result = reconcile(List.of(Desk.concrete("A")), row);
    assertEquals(List.of("water added"), told(result));
    assertTrue(result.findings().get(0).says().startsWith("10.0 gal added"));
  }

  @Test
  void goodsThatWereOrderedElsewhereAreKeptApart() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A"), Desk.bolts("A", "A")),
            Desk.load("T1", 12, 60),
            Desk.goods("T2", "A", new MaterialKey("anchor bolt", ""), 2, "box"));
    assertEquals(List.of(12.0, 50.0), delivered(result));
  }

  /** A ticket without prices whose bill is still to come. */
  @Test
  void whatNoPriceStandsOnIsNotBilled() {
    Reconciliation result =
        reconcile(List.of(Desk.concrete("A")), Desk.goods("T1", "A", Desk.FLOOR_MIX, 12, "yd3"));
    assertEquals(0, result.matched().get(0).billed());
    assertEquals(List.of(), told(result));
  }

  @Test
  void whatNobodyOrderedIsWorthWhatItIsBilledAt() {
    Ticket stakes = Desk.goods("T9", "A", new MaterialKey("stake", "24 in"), 2, "bundle");
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            Desk.load("T1", 12, 60),
            Desk.billed(stakes, "I1", "9.50", "19.00"));
    assertEquals(List.of("not ordered 19.00"), told(result));
    assertEquals("19.00", result.billed().notOrdered().toString());
    assertEquals("1219.00", result.billed().total().toString());
  }

  /** One nut at 0.30: 0.31 in all is 3 % more, and may be rounding; a price of 0.31 is not. */
  @Test
  void aCentOfAnAmountIsRoundingAndOfAPriceIsNot() {
    MaterialKey nut = new MaterialKey("nut", "1/2");
    Ordered.Item item =
        new Ordered.Item(
            Desk.PLANT,
            "",
            "each",
            1,
            BigDecimal.ONE,
            Optional.of(new BigDecimal("0.30")),
            Optional.of(Money.ofCents(30)));
    List<Ordered> orders = List.of(new Ordered("A", "A", nut, "each", 1, List.of(item)));
    Ticket row = Desk.goods("T1", "A", nut, 1, "each");
    assertEquals(List.of(), told(reconcile(orders, Desk.billed(row, "I1", "", "0.31"))));
    assertEquals(
        List.of("price differs 0.02"), told(reconcile(orders, Desk.billed(row, "I1", "", "0.32"))));
    assertEquals(
        List.of("price differs 0.01"),
        told(reconcile(orders, Desk.billed(row, "I1", "0.31", "0.31"))));
  }
}
