package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.takeoff.Material;

/** Days of delivery counted on a calendar: Tuesday 2027-04-13 less 5, 3, 2 and 1 working days. */
class DeliveryCautionsTest {

  private static Bought buy(String fee, Given... jobs) {
    PriceBook prices =
        book(
            List.of(Seller.named("S").delivery(fee).supplier()),
            price("form screw", "3 in", "S", "box", "30.00").pack("100"),
            price("tie wire", "16 ga", "S", "roll", "9.00").pack("3.5"),
            price("nut", "1/2", "S", "box", "10.00").pack("50"),
            price("curing compound", "", "S", "gal", "20.00"),
            price("concrete", "3000 psi", "S", "yd3", "150.00"));
    return Buyer.buy(Stream.of(jobs).map(Given::takeOff).toList(), prices, new FirstFitPlanner());
  }

  private static Given fourDays() {
    return job("J")
        .pour("2027-04-13")
        .needs(Material.FORM_SCREW, "3 in", 80)
        .needs(Material.TIE_WIRE, "16 ga", 2)
        .needs(Material.NUT, "1/2", 30)
        .needs(Material.CURING_COMPOUND, "", 3);
  }

  private static List<String> days(Bought bought) {
    return bought.orders().stream().map(order -> order.neededBy().orElseThrow() + "").toList();
  }

  private static List<String> told(Bought bought) {
    return bought.cautions().stream()
        .filter(caution -> caution.rule().equals("BUY-7"))
        .map(caution -> caution.job() + ": " + caution.says())
        .toList();
  }

  @Test
  void whoIsPaidForEveryFewBoxesIsTold() {
    Bought bought = buy("20", fourDays());
    assertEquals(List.of("2027-04-06", "2027-04-08", "2027-04-09", "2027-04-12"), days(bought));
    assertEquals(
        List.of(
            "J: S is paid for 4 deliveries to J from 2027-04-06 to 2027-04-12, 80.00 in all;"
                + " 1 would do. What may lie on site can come at once: \"Ahead of pour, goods\" on Practice,"
                + " e.g. 5"),
        told(bought));
  }

  @Test
  void goodsAheadOfThePourComeAtOnceForOneFee() {
    Bought bought = buy("20", fourDays().ahead(Practice.GOODS, 5));
    assertEquals(List.of("2027-04-06"), days(bought));
    assertEquals(List.of(), told(bought));
    assertEquals("20.00", bought.totals().get(0).deliveryAndFees().toString());
  }

  @Test
  void aMaterialsOwnDaysBeatThoseOfGoods() {
    Bought bought = buy("20", fourDays().ahead(Practice.GOODS, 5).ahead("curing compound", 1));
    assertEquals(List.of("2027-04-06", "2027-04-12"), days(bought));
    assertEquals(List.of(), told(bought), "two deliveries are usual");
  }

  @Test
  void whatCostsNothingOrIsFarApartIsNotTold() {
    assertEquals(List.of(), told(buy("0", fourDays())));
    assertEquals(List.of(), told(buy("20", fourDays().set(Setting.DELIVER_TOGETHER, 2))));
  }

  @Test
  void whatIsToCarryOnAsItIsWrittenIsNotTold() {
    Given written =
        fourDays()
            .ahead(Practice.GOODS, 5)
            .ahead("tie wire", 3)
            .ahead("nut", 2)
            .ahead("curing compound", 1);
    Bought bought = buy("20", written);
    assertEquals(List.of("2027-04-06", "2027-04-08", "2027-04-09", "2027-04-12"), days(bought));
    assertEquals(List.of(), told(bought), "each has days of its own");
  }

  /** Three floors are poured on three days, each with forms of its own five working days ahead. */
  @Test
  void jobsThatEachTakeOneDeliveryAreNotTold() {
    Bought bought = buy("20", screws("A", 13), screws("B", 14), screws("C", 15));
    assertEquals(List.of("2027-04-06", "2027-04-07", "2027-04-08"), days(bought));
    assertEquals(List.of(), told(bought));
  }

  @Test
  void ofJobsThatShareDeliveriesTheirFirstDaysRemain() {
    List<String> told =
        told(
            buy(
                "20",
                screws("A", 13).needs(Material.TIE_WIRE, "16 ga", 2).needs(Material.NUT, "1/2", 30),
                screws("B", 14)));
    assertEquals(2, told.size());
    assertEquals(
        "B: S is paid for 4 deliveries to yard from 2027-04-06 to 2027-04-09, 80.00 in all; 2 would"
            + " do. What may lie on site can come at once: \"Ahead of pour, goods\" on Practice,"
            + " e.g. 5",
        told.get(1));
  }

  private static Given screws(String code, int day) {
    return job(code)
        .deliverTo("yard")
        .pour("2027-04-" + day)
        .needs(Material.FORM_SCREW, "3 in", 80);
  }
}
