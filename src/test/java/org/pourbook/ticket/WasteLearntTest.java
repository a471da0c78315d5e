package org.pourbook.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Unit;

/** Actual waste by kind of pour (TICK-5). */
class WasteLearntTest {

  private static PourPlanned pour(String job, int number, String date, String kind, double yd3) {
    return new PourPlanned(job, number, date, kind, Unit.YD3.toBase(yd3));
  }

  private static Claim came(String job, Optional<LocalDate> date, double yd3) {
    Ticket bare = Desk.goods("T", job, Desk.FLOOR_MIX, yd3, "yd3");
    Ticket row =
        new Ticket(
            bare.ticket(),
            date,
            bare.supplier(),
            job,
            bare.key(),
            "",
            yd3,
            "yd3",
            "",
            bare.batched(),
            bare.arrived(),
            bare.discharged(),
            bare.waterAddedL(),
            bare.unitPrice(),
            bare.amount(),
            "",
            "",
            bare.place());
    Ordered ordered = Desk.concrete(job);
    return new Claim(row, Optional.of(ordered), Optional.empty(), yd3, Share.WHOLE, true, false);
  }

  private static Claim came(String job, int day, double yd3) {
    return came(job, Optional.of(LocalDate.of(2027, 4, day)), yd3);
  }

  private static List<Learned> learned(List<PourPlanned> pours, Claim... came) {
    return WasteLearnt.of(pours, List.of(came), job -> Terms.USUAL);
  }

  /** 11 of 10 and 26 of 20: 37 of 30 is 23.33 %; 10 % and 30 % spread by √((10² + 10²) ÷ 1). */
  @Test
  void eachTicketGoesToThePourOfItsDay() {
    List<Learned> learned =
        learned(
            List.of(pour("A", 1, "2027-04-13", "slab", 10), pour("A", 2, "2027-04-14", "slab", 20)),
            came("A", 13, 6),
            came("A", 14, 26),
            came("A", 13, 5),
            came("A", 20, 9),
            came("A", Optional.empty(), 9));
    assertEquals(1, learned.size());
    assertEquals(2, learned.get(0).pours());
    assertEquals(Unit.YD3.toBase(30), learned.get(0).netM3(), 1e-9);
    assertEquals(Unit.YD3.toBase(37), learned.get(0).deliveredM3(), 1e-9);
    assertEquals(100 * (37 / 30.0 - 1), learned.get(0).wastePercent(), 1e-9);
    assertEquals(Math.sqrt(200), learned.get(0).spread(), 1e-9);
  }

  /** Wastes of 10, 10 and 40 %: mean 20, spread √((100 + 100 + 400) ÷ 2). */
  @Test
  void theSpreadIsTheSamplesStandardDeviation() {
    List<Learned> learned =
        learned(
            List.of(
                pour("A", 1, "", "footing", 10),
                pour("B", 1, "", "footing", 10),
                pour("C", 1, "", "footing", 10)),
            came("A", 13, 11),
            came("b", 13, 11),
            came("C", 13, 14));
    assertEquals(Math.sqrt(300), learned.get(0).spread(), 1e-9);
    assertEquals(20, learned.get(0).wastePercent(), 1e-9);
  }

  @Test
  void kindsAreLearntApartAndOnePourHasNoSpread() {
    List<Learned> learned =
        learned(
            List.of(pour("A", 1, "", "slab", 10), pour("B", 1, "", "pier", 2)),
            came("A", 13, 11),
            came("B", 13, 2.5));
    assertEquals(List.of("pier", "slab"), learned.stream().map(Learned::kind).toList());
    assertEquals(List.of(1, 1), learned.stream().map(Learned::pours).toList());
    assertEquals(Double.NaN, learned.get(0).spread());
    assertEquals(25, learned.get(0).wastePercent(), 1e-9);
  }

  /** Quantity difference is 5 %: of 10 yd3 the least that is a whole pour is 9.5. */
  @Test
  void aPourOfWhichMoreIsToComeTeachesNothing() {
    List<PourPlanned> pours = List.of(pour("A", 1, "", "slab", 10));
    assertEquals(1, learned(pours, came("A", 13, 9.51)).size());
    assertEquals(List.of(), learned(pours, came("A", 13, 9.49)));
    assertEquals(List.of(), learned(pours));
    assertEquals(List.of(), learned(List.of(pour("A", 1, "", "slab", 0)), came("A", 13, 1)));
  }
}
