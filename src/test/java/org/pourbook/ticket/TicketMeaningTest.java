package org.pourbook.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.MaterialKey;

/** What rows mean that plants tell in words and units of their own; credits; each job's terms. */
class TicketMeaningTest {

  private static final MaterialKey PLANT_CODE = new MaterialKey("C30", "");

  private static Reconciliation reconcile(
      Function<String, Terms> terms, List<Ordered> orders, Ticket... rows) {
    List<PourPlanned> pours =
        List.of(new PourPlanned("A", 1, "2027-04-13", "slab", Unit.YD3.toBase(10)));
    return Reconciler.reconcile(
        orders, List.of(Desk.plant()), pours, List.of(rows), terms, List.of());
  }

  private static Reconciliation reconcile(List<Ordered> orders, Ticket... rows) {
    return reconcile(job -> Terms.USUAL, orders, rows);
  }

  private static List<String> told(Reconciliation result) {
    return result.findings().stream()
        .map(f -> f.name().label() + f.money().map(money -> " " + money).orElse(""))
        .toList();
  }

  /** A row that bills a ticket, or credits it. */
  private static Ticket bill(
      String invoice, String ticket, double quantity, String unit, String price, String amount) {
    Ticket load = Desk.load(ticket, 1, 60);
    return new Ticket(
        ticket,
        load.date(),
        Desk.PLANT,
        "A",
        Desk.FLOOR_MIX,
        "",
        quantity,
        unit,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.of(new BigDecimal(price)),
        Optional.of(Money.rounded(new BigDecimal(amount))),
        "",
        invoice,
        load.place());
  }

  private static Ticket times(Ticket row, String unit, MaterialKey key, double quantity) {
    return new Ticket(
        row.ticket(),
        row.date(),
        row.supplier(),
        row.job(),
        key,
        "",
        quantity,
        unit,
        "",
        Optional.of(LocalTime.of(7, 0)),
        Optional.empty(),
        Optional.of(LocalTime.of(8, 0)),
        OptionalDouble.of(10),
        Optional.empty(),
        Optional.empty(),
        "",
        "",
        row.place());
  }

  @Test
  void aMixToldByThePlantsCodeIsALoadOfConcreteAndTeaches() {
    Ticket row = times(Desk.load("T1", 11, 60), "yd3", PLANT_CODE, 11);

    Reconciliation result = reconcile(List.of(Desk.concrete("A")), row);

    assertEquals(1, result.loads().size());
    assertEquals(10, result.learned().get(0).wastePercent(), 1e-9);
  }

  @Test
  void aRowWithoutAUnitCountsInTheUnitOfTheOrder() {
    Ordered metric =
        new Ordered(
            "A",
            "A",
            Desk.FLOOR_MIX,
            "m3",
            8,
            List.of(
                new Ordered.Item(
                    Desk.PLANT,
                    "C30",
                    "m3",
                    1,
                    new BigDecimal("9"),
                    Optional.of(new BigDecimal("130")),
                    Optional.of(Money.ofCents(117000)))));
    Ticket row = times(Desk.load("T1", 9, 60), "", Desk.FLOOR_MIX, 9);

    Reconciliation result = reconcile(List.of(metric), row);

    assertEquals("m3", result.loads().get(0).unit());
    double net = Unit.YD3.toBase(10);
    assertEquals(100 * (9 / net - 1), result.learned().get(0).wastePercent(), 1e-9);
  }

  @Test
  void gallonsOfSomethingNobodyNamedAreNoConcrete() {
    Ticket row = times(Desk.load("T1", 5, 60), "gal", new MaterialKey("", ""), 5);

    assertEquals(List.of(), reconcile(List.of(Desk.concrete("A")), row).loads());
  }

  @Test
  void aCreditAndWhatIsBilledAnewAreNoDoubles() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            Desk.load("T1", 12, 60),
            bill("I1", "T1", 12, "yd3", "110", "1320.00"),
            bill("I2", "T1", -12, "yd3", "110", "-1320.00"),
            bill("I3", "T1", 12, "yd3", "100", "1200.00"));

    Matched line = result.matched().get(0);
    assertEquals(12, line.delivered());
    assertEquals(12, line.billed());
    assertEquals("1200.00", line.billedAmount().toString());
    assertTrue(
        told(result).stream().noneMatch(name -> name.startsWith("doubled")),
        told(result).toString());
  }

  @Test
  void billedTwiceAndCreditedOnceLeavesNothing() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            Desk.load("T1", 12, 60),
            bill("I1", "T1", 12, "yd3", "100", "1200.00"),
            bill("I2", "T1", 12, "yd3", "100", "1200.00"),
            bill("I3", "T1", -12, "yd3", "100", "-1200.00"));

    assertEquals(List.of(), told(result));
    assertEquals("1200.00", result.billed().total().toString());
  }

  @Test
  void eachJobIsHeldToItsOwnTerms() {
    Function<String, Terms> terms =
        job -> job.equals("A") ? new Terms(5, 1, 45) : new Terms(30, 1, 90);
    Ticket late = Desk.load("T1", 12, 60);

    assertEquals(
        List.of("late discharge"), told(reconcile(terms, List.of(Desk.concrete("A")), late)));
    assertEquals(
        List.of(),
        told(
            reconcile(
                terms,
                List.of(Desk.bolts("B", "B")),
                Desk.goods("T1", "B", Desk.BOLTS, 60, "each"))));
  }
}
