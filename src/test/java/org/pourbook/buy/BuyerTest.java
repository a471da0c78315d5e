package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.job.ChangeState;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Placing;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.TakeOff;

class BuyerTest {

  private static final double ROUNDING = 1e-9;

  private static Bought buy(PriceBook prices, Given... jobs) {
    List<TakeOff> takeOffs = new ArrayList<>();
    for (Given job : jobs) {
      takeOffs.add(job.takeOff());
    }
    return Buyer.buy(takeOffs, prices, new FirstFitPlanner());
  }

  private static List<Supplier> sellers(Seller... sellers) {
    return List.of(sellers).stream().map(Seller::supplier).toList();
  }

  private static String text(Line line) {
    return line.packs().toPlainString()
        + " "
        + line.orderUnit()
        + " = "
        + line.amount().map(Object::toString).orElse("no price");
  }

  @Test
  void countedMaterialIsItsNetWithAllowanceInWholePacks() {
    // 318 screws and 10 % are 349.8: one box of 350.
    Bought bought =
        buy(
            book(List.of(), price("form screw", "3 in", "S", "box", "29.90").pack("350")),
            job("A").needs(Material.FORM_SCREW, "3 in", 318));
    Line line = bought.lines().get(0);
    assertEquals("1 box = 29.90", text(line));
    assertEquals(318, line.net().getAsDouble(), 0);
    assertEquals(10, line.allowancePercent().getAsDouble(), 0);
    assertEquals(349.8, line.needed(), ROUNDING);
    assertEquals(350, line.packHolds(), 0);
  }

  @Test
  void aWrittenAllowanceTakesTheUsualOnesPlace() {
    Bought bought =
        buy(
            book(List.of(), price("form screw", "3 in", "S", "box", "29.90").pack("350")),
            job("A").allowance(Material.FORM_SCREW, 20).needs(Material.FORM_SCREW, "3 in", 318));
    assertEquals("2 box = 59.80", text(bought.lines().get(0)));
  }

  @Test
  void thePriceOfTheTierReachedIsPaidAndTheNextIsToldWhereItWouldCostLess() {
    PriceBook prices =
        book(
            List.of(),
            price("nut", "1/2", "S", "box", "10").item("N").from("0"),
            price("nut", "1/2", "S", "box", "7").item("N").from("10"));
    assertEquals("10 box = 70.00", text(buy(prices, nuts(10)).lines().get(0)));
    Bought nine = buy(prices, nuts(9));
    // 9 at 10.00 are 90.00; 10 at 7.00 are 70.00.
    assertEquals("9 box = 90.00", text(nine.lines().get(0)));
    assertEquals("BUY-2", nine.cautions().get(0).rule());
    // 7 at 10.00 are 70.00: no less.
    assertTrue(buy(prices, nuts(7)).cautions().isEmpty());
  }

  @Test
  void anOpenChangeStandsBelowEveryOrderOfItsJob() {
    PriceBook prices = book(List.of(), price("nut", "1/2", "S", "each", "1"));

    assertEquals(
        List.of("Open change C2 of A, not in this order: a second drain"),
        buy(prices, nuts(9).openChange("C2", "a second drain")).orders().get(0).notes());
    assertEquals(List.of(), buy(prices, nuts(9)).orders().get(0).notes());
    for (ChangeState state : List.of(ChangeState.TAKEN_UP, ChangeState.DECLINED)) {
      Given job = nuts(9).change("C1", "a drain", state);
      assertEquals(List.of(), buy(prices, job).orders().get(0).notes(), state.label());
    }
  }

  private static Given nuts(double many) {
    return job("A").needs(Material.NUT, "1/2", many);
  }

  @Test
  void theCheapestSupplierIsTakenByWholePacks() {
    // 30 nuts: two boxes of 25 at 4.00, or one of 100 at 9.00.
    Bought bought =
        buy(
            book(
                List.of(),
                price("nut", "1/2", "LARGE", "box", "9.00").pack("100"),
                price("nut", "1/2", "SMALL", "box", "4.00").pack("25")),
            nuts(30));
    assertEquals("2 box = 8.00", text(bought.lines().get(0)));
    assertEquals("SMALL", bought.orders().get(0).supplier().get().name());
  }

  @Test
  void whoHasTooFewInStockIsNotTakenUnlessNobodyHasEnough() {
    PriceBook prices =
        book(
            List.of(),
            price("nut", "1/2", "FEW", "each", "1").inStock(20),
            price("nut", "1/2", "MANY", "each", "2").inStock(50));
    assertEquals("20 each = 20.00", text(buy(prices, nuts(20)).lines().get(0)));
    assertEquals("21 each = 42.00", text(buy(prices, nuts(21)).lines().get(0)));
    Bought beyond = buy(prices, nuts(51));
    assertEquals("51 each = 51.00", text(beyond.lines().get(0)));
    assertTrue(beyond.cautions().get(0).says().contains("in stock"), "nobody has 51");
  }

  @Test
  void severalItemsOfOneSupplierMeetANeedThatNoneMeetsAlone() {
    Bought bought =
        buy(
            book(
                List.of(),
                price("nut", "1/2", "S", "each", "1").item("N1").inStock(20),
                price("nut", "1/2", "S", "box", "15").item("N10").pack("10").inStock(2)),
            nuts(35));
    assertEquals(
        List.of("20 each = 20.00", "2 box = 30.00"),
        bought.lines().stream().map(BuyerTest::text).toList());
    assertEquals(35, bought.lines().get(0).net().getAsDouble(), 0);
    assertTrue(bought.lines().get(1).net().isEmpty());
    assertEquals(15, bought.lines().get(1).needed(), ROUNDING);
  }

  @Test
  void whatHasNoPriceIsListedAndOrderedAndMarked() {
    Bought bought = buy(book(List.of()), nuts(11.2));
    assertEquals("12 each = no price", text(bought.lines().get(0)));
    Order order = bought.orders().get(0);
    assertTrue(order.supplier().isEmpty());
    assertFalse(order.complete());
    assertEquals(1, order.lines().size());
    assertEquals(1, bought.totals().get(0).unpriced());
    assertEquals("0.00", bought.totals().get(0).total().toString());
  }

  @Test
  void concreteHoldsThePumpLossAndIsOrderedByTheStepOnceAPour() {
    // 12.5 yd3 and 10 % and 0.5 yd3 in the pump: 14.25 yd3; second pour 3.1 yd3 and 10 %: 3.41.
    Bought bought =
        buy(
            book(
                sellers(Seller.named("plant").tax("6.5")),
                price("concrete", "3000 psi", "plant", "yd3", "158.00")),
            job("A")
                .pour("2027-04-13")
                .pour("2027-04-15")
                .concrete(1, "3000 psi", 12.5, 13.75 + 0.5, 0.5, false)
                .concrete(2, "3000 psi", 3.1, 3.41));
    Line line = bought.lines().get(0);
    assertEquals("17.75 yd3 = 2804.50", text(line));
    assertEquals(16.1, line.net().getAsDouble(), ROUNDING);
    assertEquals(17.66, line.needed(), ROUNDING);
    assertEquals((17.66 / 16.1 - 1) * 100, line.allowancePercent().getAsDouble(), 1e-6);
    assertEquals(List.of("PB-001", "PB-002"), line.orders());
    assertEquals("14.25", bought.orders().get(0).lines().get(0).packs().toPlainString());
    assertEquals("3.5", bought.orders().get(1).lines().get(0).packs().toPlainString());
    assertEquals("2027-04-15", bought.orders().get(1).neededBy().get().toString());
  }

  @Test
  void metricJobsBuyConcreteByTheYardExactly() {
    // 10 yd3 are 7.64554857984 m3: as many yards, whatever the job's units.
    Bought bought =
        buy(
            book(List.of(), price("concrete", "25 MPa", "plant", "yd3", "100")),
            job("A").metric().concrete(1, "25 MPa", 9, 10));
    assertEquals("10 yd3 = 1000.00", text(bought.lines().get(0)));
    assertEquals(0.764554857984, bought.lines().get(0).packHolds(), 1e-12);
  }

  @Test
  void aSmallPourIsMixedFromBags() {
    // 0.45 yd3 are 12.15 ft3: 20.25 bags of 0.60 ft3, so 21.
    Bought bought =
        buy(
            book(List.of(), price("bagged concrete", "80 lb", "S", "bag", "6.85")),
            job("A").concrete(1, "3000 psi", 0.4, 0.45, 0, true));
    assertEquals("21 bag = 143.85", text(bought.lines().get(0)));
    assertEquals("bagged concrete 80 lb", bought.lines().get(0).key().toString());
    assertTrue(bought.loads().isEmpty());
  }

  @Test
  void trucksArriveWhenTheOneBeforeIsEmpty() {
    // Barrow, crew of 5: 3 yd3/h. 60 min are left of 90, so 3 yd3 a load, an hour each.
    Bought bought =
        buy(
            book(List.of(), price("concrete", "3000 psi", "plant", "yd3", "158")),
            job("A")
                .pour("2027-04-13")
                .placedBy(Placing.BARROW, 5)
                .section("PAD", "3000 psi", 1, 4)
                .section("WALK", "3000 psi", 1, 3)
                .concrete(1, "3000 psi", 7, 7.7));
    assertEquals(
        List.of("07:00 PAD ", "08:00 PAD, WALK ", "09:00 WALK confirm by phone before batching"),
        bought.loads().stream()
            .map(load -> load.arrives() + " " + load.covers() + " " + load.note())
            .toList());
    assertEquals("2027-04-13T09:00", bought.loads().get(2).arrivesOn().get().toString());
  }

  @Test
  void aPlantTooFarAwayAndARemainderTooSmallAreTold() {
    Bought far =
        buy(
            book(
                sellers(Seller.named("plant").away(95)),
                price("concrete", "3000 psi", "plant", "yd3", "158")),
            job("A").concrete(1, "3000 psi", 9.5, 10.45));
    assertEquals(
        List.of("POUR-3", "CON-8"), far.cautions().stream().map(Bought.BuyCaution::rule).toList());
    // 10.5 yd3 less the last 0.5 are 10: 5.3 % over 9.5.
    assertTrue(far.cautions().get(1).says().contains("5.3 %"), far.cautions().get(1).says());
  }

  @Test
  void deliveryIsPaidOnceAPlaceAndDayUnlessTheOrderIsLarge() {
    PriceBook prices =
        book(
            sellers(Seller.named("S").delivery("65").freeFrom("500").tax("5")),
            price("form board", "2x6", "S", "each", "10").stock(Length.ofFeet(16)),
            price("stake", "24 in", "S", "each", "1"),
            price("nut", "1/2", "S", "each", "2"));
    Bought small =
        buy(
            prices,
            job("A")
                .pour("2027-04-13")
                .pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(16), 3, "side")
                .needs(Material.STAKE, "24 in", 20)
                .needs(Material.NUT, "1/2", 10));
    // Boards and stakes five working days ahead together, nuts two days ahead: two deliveries.
    assertEquals(
        List.of("2027-04-06 51.00 65.00 2.55 118.55", "2027-04-09 20.00 65.00 1.00 86.00"),
        small.orders().stream()
            .map(
                order ->
                    order.neededBy().get()
                        + " "
                        + order.goods()
                        + " "
                        + order.fees()
                        + " "
                        + order.tax()
                        + " "
                        + order.total())
            .toList());
    Bought large = buy(prices, job("A").needs(Material.NUT, "1/2", 250));
    assertEquals("0.00", large.orders().get(0).fees().toString());
  }

  @Test
  void servicesAloneBringNoDeliveryAndStandApart() {
    Bought bought =
        buy(
            book(
                sellers(Seller.named("S").delivery("65")),
                price("pump", "", "S", "each", "690").untaxed()),
            job("A").needs(Material.PUMP, "", 1));
    JobTotals totals = bought.totals().get(0);
    assertEquals("690.00", totals.services().toString());
    assertEquals("0.00", totals.materials().toString());
    assertEquals("0.00", totals.deliveryAndFees().toString());
    assertEquals("690.00", totals.total().toString());
  }

  @Test
  void anOrderUnderTheMinimumCostsTheMinimum() {
    Bought bought =
        buy(
            book(sellers(Seller.named("S").minimum("50")), price("nut", "1/2", "S", "each", "2")),
            nuts(10));
    Order.OrderLine fee = bought.orders().get(0).lines().get(1);
    assertTrue(fee.fee());
    assertEquals("minimum order", fee.key().material());
    assertEquals("30.00", fee.amount().get().toString());
    assertEquals("50.00", bought.orders().get(0).total().toString());
  }

  @Test
  void taxIsTheJobsRateElseTheSuppliersOnTaxableLinesOnly() {
    PriceBook prices =
        book(
            sellers(Seller.named("S").delivery("40").tax("6.5")),
            price("nut", "1/2", "S", "each", "1.11"),
            price("saw cutting", "", "S", "ft", "1.35").untaxed());
    Given plain = nuts(100).needs(Material.SAW_CUTTING, "", 30);
    // 6.5 % of 111.00 = 7.215, once an order: 7.22 (half up). Fee and service are not taxed.
    assertEquals("7.22", buy(prices, plain).totals().get(0).tax().toString());
    Given exempt = nuts(100).tax("0");
    assertEquals("0.00", buy(prices, exempt).totals().get(0).tax().toString());
  }

  @Test
  void orderByIsNeededByLessTheLeadDays() {
    Bought bought =
        buy(
            book(List.of(), price("nut", "1/2", "S", "each", "1").lead(3)),
            nuts(10).pour("2027-04-13"));
    assertEquals("2027-04-09", bought.orders().get(0).neededBy().get().toString());
    assertEquals("2027-04-06", bought.orders().get(0).lines().get(0).orderBy().get().toString());
  }

  @Test
  void extrasAreBoughtUnderTheirOwnNames() {
    Bought bought =
        buy(
            book(
                List.of(),
                price("floor drain", "4 in", "S", "each", "64"),
                price("vibrating screed", "", "S", "day", "95")),
            job("A")
                .extra("floor drain", "4\"", 1, "each", ExtraKind.SET_IN)
                .extra("floor drain", "4 in", 2, "each", ExtraKind.SET_IN)
                .extra("vibrating screed", "", 1, "day", ExtraKind.RENT)
                .extra("look at the sky", "", 1, "each", ExtraKind.CHECK));
    assertEquals(
        List.of("3 each = 192.00", "1 day = 95.00"),
        bought.lines().stream().map(BuyerTest::text).toList());
    assertEquals("95.00", bought.totals().get(0).services().toString());
    assertEquals("192.00", bought.totals().get(0).materials().toString());
  }

  @Test
  void anExtraOfAKnownMaterialJoinsItsLine() {
    Bought bought =
        buy(
            book(List.of(), price("nut", "1/2", "S", "each", "1")),
            nuts(10).extra("nut", "1/2", 5, "ea", ExtraKind.MATERIAL));
    assertEquals(List.of("15 each = 15.00"), bought.lines().stream().map(BuyerTest::text).toList());
  }

  @Test
  void boardsAreCutFromTheStockOfTheSupplierWhosePlanIsCheapest() {
    PriceBook prices =
        book(
            List.of(),
            price("form board", "2x6", "LONG", "each", "12").stock(Length.ofFeet(16)),
            price("form board", "2x6", "SHORT", "each", "7").stock(Length.ofFeet(8)));
    Bought bought =
        buy(
            prices,
            job("A")
                .set(Setting.SPARE_PIECES, 1)
                .pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(5), 6, "floor side L1"));
    // Three 5 ft pieces come from a 16 ft board (two saw cuts of 1/8 in), one from an 8 ft board:
    // 2 x 12.00 beats 6 x 7.00. The spare piece is a third board.
    Line line = bought.lines().get(0);
    assertEquals("3 each = 36.00", text(line));
    assertEquals(30, line.net().getAsDouble(), ROUNDING);
    assertEquals(48, line.needed(), ROUNDING);
    CutSheet sheet = bought.cutSheets().get(0);
    assertEquals("24.00", sheet.cost().toString());
    assertEquals(2, sheet.patterns().get(0).times());
    assertEquals("floor side L1", sheet.patterns().get(0).cuts().get(0).goesTo());
  }

  @Test
  void boardsOfALaterPourComeWithIt() {
    Bought bought =
        buy(
            book(List.of(), price("form board", "2x6", "S", "each", "12").stock(Length.ofFeet(16))),
            job("A")
                .pour("2027-04-13")
                .pour("2027-05-11")
                .pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(10), 2, "one", 1)
                .pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(10), 3, "two", 2)
                .pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(5), 1, "two", 2));
    // The 5 ft piece of the later pour is cut from the rest of one board.
    assertEquals("5 each = 60.00", text(bought.lines().get(0)));
    assertEquals(2, bought.orders().size());
    assertEquals(
        5,
        bought.orders().stream()
            .mapToInt(order -> order.lines().get(0).packs().intValueExact())
            .sum());
  }

  @Test
  void barsByTheHundredweightAreBoughtByWhatTheyWeigh() {
    // Four 20 ft bars #4 at 0.668 lb/ft are 53.44 lb = 0.5344 cwt, at 70.00: 37.41.
    Bought bought =
        buy(
            book(List.of(), price("bar", "#4", "S", "cwt", "70").stock(Length.ofFeet(20))),
            job("A").pieces(Material.BAR, "#4", Length.ofFeet(18), 4, "mat"));
    assertEquals("0.5344 cwt = 37.41", text(bought.lines().get(0)));
    assertEquals(80, bought.lines().get(0).needed(), ROUNDING);
  }

  @Test
  void unpricedBoardsAreStillPlannedOverTheUsualLengths() {
    Bought bought =
        buy(
            book(List.of()),
            job("A").pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(12), 2, "side"));
    assertEquals("2 each = no price", text(bought.lines().get(0)));
    assertEquals("12'-0\"", bought.lines().get(0).item());
    assertEquals(1, bought.cutSheets().size());
    assertTrue(bought.problems().isEmpty());
  }

  @Test
  void piecesLongerThanAllStockAreAProblemAndStayOnTheList() {
    Bought bought =
        buy(
            book(List.of(), price("form board", "2x6", "S", "each", "12").stock(Length.ofFeet(8))),
            job("A").pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(24), 1, "floor side L1"));
    assertEquals(1, bought.problems().size());
    assertEquals("A", bought.problems().get(0).job());
    assertEquals("24 ft = no price", text(bought.lines().get(0)));
    assertTrue(bought.cutSheets().isEmpty());
  }

  @Test
  void boardsBeyondTheStockAreOrderedWithACaution() {
    Bought bought =
        buy(
            book(
                List.of(),
                price("form board", "2x6", "S", "each", "12").stock(Length.ofFeet(16)).inStock(2)),
            job("A").pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(16), 3, "side"));
    assertEquals("3 each = 36.00", text(bought.lines().get(0)));
    assertEquals(1, bought.cautions().size());
    assertTrue(bought.problems().isEmpty());
  }

  @Test
  void concreteAndBaseGoToTheSiteOfAJobThatSharesADelivery() {
    Bought bought =
        buy(
            book(
                List.of(),
                price("concrete", "3000 psi", "S", "yd3", "158"),
                price("base gravel", "sand", "S", "ton", "30"),
                price("nut", "1/2", "S", "each", "1")),
            nuts(10)
                .deliverTo("yard")
                .pour("2027-04-13")
                .needs(Material.BASE_GRAVEL, "sand", 4)
                .concrete(1, "3000 psi", 5, 5.5));
    assertEquals(
        List.of("A base gravel A lane", "yard nut yard", "A concrete A lane"),
        bought.orders().stream()
            .map(
                order ->
                    order.deliverTo()
                        + " "
                        + order.lines().get(0).key().material()
                        + " "
                        + order.site())
            .toList());
  }
}
