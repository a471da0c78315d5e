package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.TakeOff;

class SharedOrdersTest {

  private static final String DAY = "2027-04-13";

  private static Bought buy(PriceBook prices, Given... jobs) {
    List<TakeOff> takeOffs = new ArrayList<>();
    for (Given job : jobs) {
      takeOffs.add(job.takeOff());
    }
    return Buyer.buy(takeOffs, prices, new FirstFitPlanner());
  }

  private static Given atYard(String code) {
    return job(code).deliverTo("yard").pour(DAY);
  }

  private static List<String> lines(Bought bought) {
    return bought.lines().stream()
        .map(
            line ->
                line.job()
                    + " "
                    + line.packs().toPlainString()
                    + " "
                    + line.amount().map(Object::toString).orElse("no price"))
        .toList();
  }

  private static PriceBook nuts() {
    return book(
        List.of(Seller.named("S").delivery("20").tax("6.5").supplier()),
        price("nut", "1/2", "S", "box", "10.00").pack("50"));
  }

  @Test
  void jobsSharePacksAndPayByNeed() {
    // 30 and 40 nuts are 70: two boxes of 50 for 20.00, of which 8.57 and 11.43.
    Bought bought =
        buy(
            nuts(),
            atYard("B").needs(Material.NUT, "1/2", 40),
            atYard("A").needs(Material.NUT, "1/2", 30));
    assertEquals(List.of("B 1.142857 11.43", "A 0.857143 8.57"), lines(bought));
    Order order = bought.orders().get(0);
    assertEquals(List.of("A", "B"), order.jobs());
    assertEquals("2", order.lines().get(0).packs().toPlainString());
    // Delivery 20.00 by amount: 8.57 / 20.00 and 11.43 / 20.00. Tax 6.5 % of 20.00 = 1.30.
    JobTotals ofB = bought.totals().get(0);
    JobTotals ofA = bought.totals().get(1);
    assertEquals("11.43 0.74", ofB.deliveryAndFees() + " " + ofB.tax());
    assertEquals("8.57 0.56", ofA.deliveryAndFees() + " " + ofA.tax());
  }

  @Test
  void theSavingIsShown() {
    // Apart: 30 and 25 nuts are a box each and two deliveries, 60.00; together two boxes and one.
    Bought bought =
        buy(
            nuts(),
            atYard("A").needs(Material.NUT, "1/2", 30),
            atYard("B").needs(Material.NUT, "1/2", 25));
    assertEquals(
        List.of("Shared by A, B: 20.00 less than ordered apart, before tax."),
        bought.orders().get(0).notes());
  }

  @Test
  void anotherDayOrPlaceOrNoDateIsAnotherOrder() {
    Given[] apart = {
      atYard("A").needs(Material.NUT, "1/2", 1),
      job("B").deliverTo("yard").pour("2027-04-14").needs(Material.NUT, "1/2", 1),
      job("C").deliverTo("barn").pour(DAY).needs(Material.NUT, "1/2", 1),
      job("D").pour(DAY).needs(Material.NUT, "1/2", 1),
      job("E").deliverTo("yard").needs(Material.NUT, "1/2", 1),
      job("F").deliverTo("yard").needs(Material.NUT, "1/2", 1)
    };
    assertEquals(6, buy(nuts(), apart).orders().size());
  }

  @Test
  void aJobWhoseCodeIsTheNameOfTheYardSharesNothing() {
    assertEquals(
        2,
        buy(
                nuts(),
                atYard("A").needs(Material.NUT, "1/2", 1),
                job("yard").pour(DAY).needs(Material.NUT, "1/2", 1))
            .orders()
            .size());
  }

  @Test
  void boardsOfAllJobsAreCutTogether() {
    PriceBook prices =
        book(List.of(), price("form board", "2x6", "S", "each", "12").stock(Length.ofFeet(16)));
    // 10 ft of A and 5 ft of B come from one board; A bears two thirds of 12.00.
    Bought bought =
        buy(
            prices,
            atYard("A").pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(10), 1, "floor L1"),
            atYard("B").pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(5), 1, "walk L1"));
    assertEquals(List.of("A 0.666667 8.00", "B 0.333333 4.00"), lines(bought));
    CutSheet sheet = bought.cutSheets().get(0);
    assertEquals(List.of("A", "B"), sheet.jobs());
    assertEquals("A: floor L1", sheet.patterns().get(0).cuts().get(0).goesTo());
    assertEquals("B: walk L1", sheet.patterns().get(0).cuts().get(1).goesTo());
  }

  @Test
  void jobsOfBothSystemsShareAPack() {
    // 3.048 m are 10 ft: 20 ft of tape from one roll of 20 ft.
    Bought bought =
        buy(
            book(List.of(), price("seam tape", "", "S", "roll", "9").pack("20")),
            atYard("A").needs(Material.SEAM_TAPE, "", 10),
            atYard("B").metric().needs(Material.SEAM_TAPE, "", 3.048));
    assertEquals(List.of("A 0.5 4.50", "B 0.5 4.50"), lines(bought));
    assertEquals(6.096, bought.lines().get(1).packHolds(), 1e-12);
  }

  @Test
  void jobsOfDifferentTaxShareAnOrderEachAtItsOwnRate() {
    Bought bought =
        buy(
            nuts(),
            atYard("A").tax("0").needs(Material.NUT, "1/2", 50),
            atYard("B").needs(Material.NUT, "1/2", 50));
    assertEquals("0.00", bought.totals().get(0).tax().toString());
    assertEquals("0.65", bought.totals().get(1).tax().toString());
    assertEquals("0.65", bought.orders().get(0).tax().toString());
  }
}
