package org.pourbook.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.ticket.Desk.reconcile;
import static org.pourbook.ticket.Desk.told;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Money;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.MaterialKey;

class ReconcilerTest {

  @Test
  void twoLoadsAsOrderedLeaveNothingToSay() {
    Reconciliation result =
        reconcile(List.of(Desk.concrete("A")), Desk.load("T1", 8, 60), Desk.load("T2", 4, 60));
    assertEquals(List.of(), told(result));
    Matched line = result.matched().get(0);
    assertEquals(12, line.delivered());
    assertEquals(12, line.billed());
    assertEquals(Money.ZERO, line.difference());
    assertEquals("as ordered", line.standing());
  }

  @Test
  void aTicketToldTwiceIsCountedOnceAndCostsItsAmount() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            Desk.load("T1", 8, 60),
            Desk.load("T1", 8, 60),
            Desk.load("T2", 4, 60));
    assertEquals(List.of("doubled ticket 800.00"), told(result));
    assertEquals(12, result.matched().get(0).delivered());
  }

  @Test
  void aTicketThreeTimesIsTwoFindings() {
    Ticket row = Desk.load("T1", 12, 60);
    assertEquals(
        List.of("doubled ticket 1200.00", "doubled ticket 1200.00"),
        told(reconcile(List.of(Desk.concrete("A")), row, row, row)));
  }

  @Test
  void ninetyMinutesAreInTimeAndNinetyOneAreLate() {
    assertEquals(List.of(), told(reconcile(List.of(Desk.concrete("A")), Desk.load("T1", 12, 90))));
    assertEquals(
        List.of("late discharge"),
        told(reconcile(List.of(Desk.concrete("A")), Desk.load("T1", 12, 91))));
  }

  @Test
  void aWrongExtensionIsWorthItsDifference() {
    Ticket right = Desk.load("T1", 12, 60);
    Ticket wrong =
        new Ticket(
            right.ticket(),
            right.date(),
            right.supplier(),
            right.job(),
            right.key(),
            right.item(),
            right.quantity(),
            right.unit(),
            right.truck(),
            right.batched(),
            right.arrived(),
            right.discharged(),
            right.waterAddedL(),
            right.unitPrice(),
            Optional.of(Money.rounded(new BigDecimal("1290.00"))),
            "",
            "",
            right.place());
    assertEquals(
        List.of("wrong extension 90.00"), told(reconcile(List.of(Desk.concrete("A")), wrong)));
  }

  @Test
  void aShortLoadFeeOnALoadOfFourYardsIsNotDue() {
    assertEquals(
        List.of("short-load fee not due 50.00"),
        told(
            reconcile(
                List.of(Desk.concrete("A")),
                Desk.load("T1", 8, 60),
                Desk.load("T2", 4, 60),
                Desk.fee("T2", "short load", "50.00"))));
  }

  @Test
  void aShortLoadFeeOnALoadUnderTheLimitIsDue() {
    assertEquals(
        List.of(),
        told(
            reconcile(
                List.of(Desk.concrete("A")),
                Desk.load("T1", 8.25, 60),
                Desk.load("T2", 3.75, 60),
                Desk.fee("T2", "short load", "50.00"))));
  }

  @Test
  void goodsNobodyOrderedAndGoodsThatNeverCameAreTold() {
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            Desk.goods("T9", "A", new MaterialKey("stake", "24 in"), 2, "bundle"));
    assertEquals(List.of("not delivered", "not ordered"), sorted(told(result)));
  }

  private static List<String> sorted(List<String> words) {
    return words.stream().sorted().toList();
  }

  @Test
  void fiveInAHundredMoreOrLessIsLetPass() {
    assertEquals(
        List.of(), told(reconcile(List.of(Desk.concrete("A")), Desk.load("T1", 12.6, 60))));
    assertEquals(
        List.of("over quantity 75.00"),
        told(reconcile(List.of(Desk.concrete("A")), Desk.load("T1", 12.75, 60))));
    assertEquals(
        List.of("under quantity"),
        told(reconcile(List.of(Desk.concrete("A")), Desk.load("T1", 11.25, 60))));
  }

  @Test
  void feesTheSupplierDoesNotListAreTold() {
    assertEquals(
        List.of("fee not listed 12.00"),
        told(
            reconcile(
                List.of(Desk.concrete("A")),
                Desk.load("T1", 12, 60),
                Desk.fee("T1", "fuel", "12.00"))));
  }

  @Test
  void waitingIsMeasuredAgainstTheFreeMinutes() {
    // On site 7:25 to 8:50 = 85 min; free 12 × 6 = 72; 13 min at 2.00 = 26.00 due.
    Reconciliation result =
        reconcile(
            List.of(Desk.concrete("A")),
            Desk.load("T1", 12, 110),
            Desk.fee("T1", "waiting", "40.00"));
    assertTrue(told(result).contains("waiting charged 14.00"), told(result).toString());
  }

  @Test
  void boxesCountByWhatTheyHold() {
    Reconciliation result =
        reconcile(List.of(Desk.bolts("A", "A")), Desk.goods("T1", "A", Desk.BOLTS, 2, "box"));
    assertEquals(50, result.matched().get(0).delivered());
    assertEquals(List.of(), told(result));
  }

  @Test
  void whatFitsTwoLinesIsAskedAbout() {
    Ordered longer =
        new Ordered(
            "A",
            "A",
            new MaterialKey("anchor bolt", "5/8 x 12"),
            "each",
            10,
            Desk.bolts("A", "A").items());
    Reconciliation result =
        reconcile(
            List.of(Desk.bolts("A", "A"), longer),
            Desk.goods("T1", "A", new MaterialKey("anchor bolt", ""), 2, "box"));
    assertEquals(1, result.problems().size());
    assertEquals(List.of("not delivered", "not delivered"), told(result));
  }

  @Test
  void aSharedDeliveryGoesToItsJobsByWhatTheyOrdered() {
    Reconciliation result =
        reconcile(
            List.of(Desk.bolts("A", "yard"), Desk.bolts("B", "yard")),
            Desk.goods("T1", "yard", Desk.BOLTS, 4, "box"));
    assertEquals(List.of(50.0, 50.0), result.matched().stream().map(Matched::delivered).toList());
    assertEquals(List.of(), told(result));
  }

  @Test
  void aTicketAndItsBillCountOnce() {
    Ticket ticket = Desk.load("T1", 12, 60);
    Ticket bill =
        new Ticket(
            "T1",
            ticket.date(),
            Desk.PLANT,
            "A",
            Desk.FLOOR_MIX,
            "C30",
            12,
            "yd3",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            java.util.OptionalDouble.empty(),
            Optional.of(new BigDecimal("100.00")),
            Optional.of(Money.rounded(new BigDecimal("1200.00"))),
            "",
            "INV-1",
            new Place("bills.csv", 4, -1));
    Reconciliation result = reconcile(List.of(Desk.concrete("A")), ticket, bill);
    Matched line = result.matched().get(0);
    assertEquals(12, line.delivered());
    assertEquals(12, line.billed());
    assertEquals(List.of(), told(result));
  }

  @Test
  void theOrderOfRowsDoesNotMatter() {
    List<Ticket> rows = new ArrayList<>();
    rows.add(Desk.load("T1", 8, 60));
    rows.add(Desk.load("T1", 8, 60));
    rows.add(Desk.load("T2", 4, 95));
    rows.add(Desk.fee("T2", "short load", "50.00"));
    rows.add(Desk.goods("T9", "A", new MaterialKey("stake", "24 in"), 2, "bundle"));
    List<String> first = null;
    for (int seed = 0; seed < 20; seed++) {
      List<Ticket> shuffled = new ArrayList<>(rows);
      Collections.shuffle(shuffled, new Random(seed));
      List<String> told =
          told(reconcile(List.of(Desk.concrete("A")), shuffled.toArray(Ticket[]::new)));
      if (first == null) {
        first = told;
      }
      assertEquals(first, told, "seed " + seed);
    }
  }

  @Test
  void wasteIsLearntByKindWithItsSpread() {
    Ticket a = Desk.load("T1", 11, 60);
    Reconciliation result =
        Reconciler.reconcile(
            List.of(Desk.concrete("A")),
            List.of(Desk.plant()),
            List.of(new PourPlanned("A", 1, "2027-04-13", "slab", 10 * 0.764554857984)),
            List.of(a),
            job -> Terms.USUAL,
            List.of());
    Learned learned = result.learned().get(0);
    assertEquals("slab", learned.kind());
    assertEquals(10.0, learned.wastePercent(), 1e-9);
    assertTrue(Double.isNaN(learned.spread()));
  }

  @Test
  void eachJobHasItsOwnTolerances() {
    Terms strict = new Terms(0, 0, 60);
    Ticket b = Desk.goods("T2", "B", Desk.FLOOR_MIX, 12.5, "yd3");
    Reconciliation result =
        Reconciler.reconcile(
            List.of(Desk.concrete("A"), Desk.concrete("B")),
            List.of(Desk.plant()),
            List.of(),
            List.of(Desk.load("T1", 12.5, 75), b),
            job -> job.equals("A") ? strict : Terms.USUAL,
            List.of());
    assertEquals(List.of("over quantity 50.00", "late discharge"), told(result));
    assertEquals("A", result.findings().get(0).job());
  }
}
