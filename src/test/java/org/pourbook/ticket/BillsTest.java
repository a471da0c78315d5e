package org.pourbook.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;

/** Bills and tickets as bookkeepers get them: credits, other units, other names. All invented. */
class BillsTest {

  private static final double M3_OF_YD3 = 0.764554857984; // 36^3 in3 of 0.0254 m, exact

  private static Reconciliation reconcile(List<Ordered> orders, Ticket... rows) {
    return reconcile(orders, Desk.plant(), rows);
  }

  private static Reconciliation reconcile(List<Ordered> orders, Supplier plant, Ticket... rows) {
    return Reconciler.reconcile(
        orders, List.of(plant), List.of(), List.of(rows), job -> Terms.USUAL, List.of());
  }

  private static List<String> told(Reconciliation result) {
    return result.findings().stream()
        .map(f -> f.name().label() + f.money().map(money -> " " + money).orElse(""))
        .toList();
  }

  private static Ticket ticket(String number, double yd3) {
    return Desk.goods(number, "A", Desk.FLOOR_MIX, yd3, "yd3");
  }

  @Test
  void aCreditForATicketIsNoDouble() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            ticket("T1", 12),
            Desk.bill("T1", "I1", 13, "yd3", "100.00", "1300.00"),
            Desk.bill("T1", "C1", -1, "yd3", "100.00", "-100.00"));
    assertEquals(List.of(), told(result));
    assertEquals(12, result.matched().get(0).billed());
    assertEquals("1200.00", result.billed().total().toString());
  }

  @Test
  void aCreditOnThePriceTakesMoneyOffAndNoGoods() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            ticket("T1", 12),
            Desk.bill("T1", "I1", 12, "yd3", "100.00", "1200.00"),
            Desk.bill("T1", "C1", 12, "yd3", "-5.00", "-60.00"));
    assertEquals(List.of(), told(result));
    assertEquals(12, result.matched().get(0).billed());
    assertEquals("-60.00", result.matched().get(0).difference().toString());
  }

  @Test
  void aDoubledTicketOfWhichOneBillSpeaksCostsNothing() {
    Ticket priced = Desk.load("T1", 12, 60);
    assertEquals(
        List.of("doubled ticket"),
        told(
            reconcile(
                List.of(Desk.concrete("A")),
                priced,
                priced,
                Desk.bill("T1", "I1", 12, "yd3", "100.00", "1200.00"))));
  }

  @Test
  void moreBilledThanCameIsTold() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            ticket("T1", 12),
            Desk.bill("T1", "I1", 14, "yd3", "100.00", "1400.00"));
    assertEquals(List.of("over quantity 200.00"), told(result));
  }

  @Test
  void aPriceInAnotherUnitIsComparedByWhatTheUnitHolds() {
    double m3 = 12 * M3_OF_YD3;
    Ticket fair = Desk.load("T1", m3, 60);
    Ticket row = Desk.from(fair, Desk.PLANT, Desk.FLOOR_MIX, "C30");
    Ticket dear = metric(row, "140.00"); // 100.00 a yd3 is 130.80 a m3
    assertEquals(
        List.of("price differs 84.45"), told(reconcile(List.of(Desk.concrete("A")), dear)));
    assertEquals(List.of(), told(reconcile(List.of(Desk.concrete("A")), metric(row, "130.80"))));
  }

  private static Ticket metric(Ticket row, String price) {
    Ticket bare = Desk.goods(row.ticket(), "A", row.key(), row.quantity(), "m3");
    return Desk.billed(bare, "I1", price, "");
  }

  @Test
  void aBillWithAnAmountAndNoPriceHasThePriceThatFollows() {
    assertEquals(
        List.of("price differs 60.00"),
        told(
            reconcile(
                List.of(Desk.concrete("A")),
                ticket("T1", 12),
                Desk.bill("T1", "I1", 12, "yd3", "", "1260.00"))));
  }

  @Test
  void aDearPriceOfASharedDeliveryIsToldOnceInAll() {
    Ticket row =
        Desk.billed(Desk.goods("T1", "yard", Desk.BOLTS, 4, "box"), "I1", "40.00", "160.00");
    Reconciliation result =
        reconcile(List.of(Desk.bolts("A", "yard"), Desk.bolts("B", "yard")), row);
    assertEquals(List.of("price differs 4.00", "price differs 4.00"), told(result));
  }

  @Test
  void aNumberOfOneSupplierIsNotTheItemOfAnother() {
    Ordered bolts = Desk.bolts("A", "A");
    Ordered stakes =
        new Ordered(
            "A",
            "A",
            new MaterialKey("stake", "24 in"),
            "each",
            20,
            List.of(
                new Ordered.Item(
                    "Invented Yard",
                    "ST24",
                    "each",
                    1,
                    new BigDecimal("20"),
                    Optional.empty(),
                    Optional.empty())));
    Ticket odd =
        Desk.from(
            Desk.goods("T1", "A", Desk.BOLTS, 2, "box"),
            "Invented Yard",
            new MaterialKey("", ""),
            "AB10");
    List<String> names = told(reconcile(List.of(bolts, stakes), odd)).stream().sorted().toList();
    assertEquals(List.of("not delivered", "not delivered", "not ordered"), names);
  }

  @Test
  void aSupplierByAnUnknownNameIsMatchedAndTold() {
    Ticket row =
        Desk.from(Desk.load("T1", 12, 60), "Invented Ready Mix, Plant 4", Desk.FLOOR_MIX, "C30");
    Reconciliation result = reconcile(List.of(Desk.concrete("A")), row, row);
    assertEquals(12, result.matched().get(0).delivered());
    assertEquals(1, result.problems().size());
    assertEquals(Problem.Effect.NOTE, result.problems().get(0).effect());
    assertTrue(result.problems().get(0).found().contains("Plant 4"));
  }

  @Test
  void anItemThatContradictsItsGoodsIsAskedAbout() {
    Ticket row =
        Desk.from(
            Desk.goods("T1", "A", Desk.FLOOR_MIX, 2, "box"), Desk.PLANT, Desk.FLOOR_MIX, "AB10");
    Reconciliation result = reconcile(List.of(Desk.concrete("A"), Desk.bolts("A", "A")), row);
    assertEquals(1, result.problems().size());
    assertEquals(0, result.matched().get(1).delivered());
  }

  @Test
  void boltsKnownByTheirItemAreNoLoadOfConcrete() {
    Ticket row =
        Desk.from(
            Desk.goods("T1", "A", Desk.BOLTS, 2, ""), Desk.PLANT, new MaterialKey("", ""), "AB10");
    assertEquals(List.of(), reconcile(List.of(Desk.bolts("A", "A")), row).loads());
  }

  @Test
  void concreteUnderThePlantsOwnWordsIsALoad() {
    Ticket row =
        Desk.from(
            Desk.goods("T1", "A", Desk.FLOOR_MIX, 12, ""),
            Desk.PLANT,
            new MaterialKey("floor mix", "S4"),
            "C30");
    List<ConcreteLoad> loads = reconcile(List.of(Desk.concrete("A")), row).loads();
    assertEquals(List.of("yd3"), loads.stream().map(ConcreteLoad::unit).toList());
  }

  @Test
  void aRowThatIsAskedAboutIsLeftOutOfEverySheet() {
    Ordered other =
        new Ordered(
            "A",
            "A",
            new MaterialKey("concrete", "4000 psi"),
            "yd3",
            4,
            Desk.concrete("A").items());
    Ticket row =
        Desk.from(Desk.load("T1", 8, 120), Desk.PLANT, new MaterialKey("concrete", ""), "");
    Reconciliation result = reconcile(List.of(Desk.concrete("A"), other), row);
    assertEquals(1, result.problems().size());
    assertEquals(List.of(), result.loads());
    assertEquals(List.of("not delivered", "not delivered"), told(result));
  }

  @Test
  void aListedFeeThatIsDearerThanListedIsTold() {
    assertEquals(
        List.of("price differs 25.00"),
        told(
            reconcile(
                List.of(Desk.concrete("A")),
                Desk.load("T1", 9, 60),
                Desk.load("T2", 3, 60),
                Desk.fee("T2", "short load", "75.00"))));
  }

  @Test
  void aShortLoadFeeWhoseLoadIsNotThereIsAskedAbout() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            Desk.load("T1", 12, 60),
            Desk.fee("T9", "short load", "50.00"));
    assertEquals(1, result.problems().size());
    assertTrue(result.problems().get(0).found().contains("T9"));
    assertEquals("50.00", result.billed().fees().toString());
  }

  @Test
  void waitingWithoutTimesIsToldSo() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")), ticket("T1", 12), Desk.fee("T1", "waiting", "40.00"));
    assertEquals(List.of("waiting charged 40.00"), told(result));
    assertTrue(result.findings().get(0).says().contains("no times"));
  }

  @Test
  void aHalfDeliveredPourTeachesNothing() {
    Reconciliation result =
        Reconciler.reconcile(
            List.of(Desk.concrete("A")),
            List.of(Desk.plant()),
            List.of(new PourPlanned("A", 1, "2027-04-13", "slab", 10 * M3_OF_YD3)),
            List.of(Desk.load("T1", 5, 60)),
            job -> Terms.USUAL,
            List.of());
    assertEquals(List.of(), result.learned());
  }

  @Test
  void concreteForASharedPlaceTeachesTheJobsItWentTo() {
    Ordered a = Desk.concrete("A");
    Ordered shared = new Ordered("A", "yard", a.key(), "yd3", 10.8, a.items());
    Ticket row = Desk.goods("T1", "yard", Desk.FLOOR_MIX, 11, "yd3");
    Reconciliation result =
        Reconciler.reconcile(
            List.of(shared),
            List.of(Desk.plant()),
            List.of(new PourPlanned("A", 1, "2027-04-13", "slab", 10 * M3_OF_YD3)),
            List.of(row),
            job -> Terms.USUAL,
            List.of());
    assertEquals(10, result.learned().get(0).wastePercent(), 1e-9);
  }

  @Test
  void billedInAllIsTheSumOfTheRowsToTheCent() {
    Ticket third = Desk.billed(Desk.goods("T1", "yard", Desk.BOLTS, 4, "box"), "I1", "", "152.01");
    Reconciliation result =
        reconcile(List.of(Desk.bolts("A", "yard"), Desk.bolts("B", "yard")), third);
    assertEquals(Money.rounded(new BigDecimal("152.01")), result.billed().total());
  }
}
