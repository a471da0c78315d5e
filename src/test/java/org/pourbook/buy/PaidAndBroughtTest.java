package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Setting;
import org.pourbook.takeoff.Material;

/** What orders hold and cost where a wrong size, a lost fee or a lost pack would not be seen. */
class PaidAndBroughtTest {

  private static final List<Supplier> NOBODY = List.of();

  private static Bought buy(PriceBook prices, Given... jobs) {
    return Buyer.buy(Stream.of(jobs).map(Given::takeOff).toList(), prices, new FirstFitPlanner());
  }

  private static List<String> lines(Bought bought) {
    return bought.lines().stream()
        .map(
            line ->
                line.packs().toPlainString()
                    + " "
                    + line.key()
                    + line.amount().map(amount -> " " + amount).orElse(""))
        .toList();
  }

  private static List<String> fees(Order order) {
    return order.lines().stream()
        .filter(Order.OrderLine::fee)
        .map(fee -> fee.key().material() + " " + fee.amount().orElseThrow())
        .toList();
  }

  @Test
  void aRowOfAnotherSizeDoesNotAnswerThoughItIsCheaper() {
    PriceBook prices =
        book(
            NOBODY,
            price("nut", "5/8", "S", "each", "1"),
            price("nut", "1/2", "S", "each", "2"),
            price("nut", "3/8", "S", "each", "0.50"));
    Bought bought = buy(prices, job("A").needs(Material.NUT, "1/2", 10));
    assertEquals(List.of("10 nut 1/2 20.00"), lines(bought));
    Bought none = buy(prices, job("A").needs(Material.NUT, "3/4", 10));
    assertEquals(List.of("10 nut 3/4"), lines(none));
  }

  /** 20 yd3 are two trucks of 10 yd3; 2 yd3 are one, and short of the 2.5 yd3 of a whole load. */
  @Test
  void eachOrderOfConcretePaysForItsOwnTrucks() {
    PriceBook prices =
        book(
            List.of(Seller.named("plant").perLoad("15").shortFlat(2.5, "60").supplier()),
            price("concrete", "3000 psi", "plant", "yd3", "100"));
    Bought bought =
        buy(
            prices,
            job("A")
                .pour("2027-04-13")
                .pour("2027-05-13")
                .concrete(1, "3000 psi", 20, 20)
                .concrete(2, "3000 psi", 2, 2));
    assertEquals(
        List.of(List.of("fee per load 30.00"), List.of("short load 60.00", "fee per load 15.00")),
        bought.orders().stream().map(PaidAndBroughtTest::fees).toList());
    assertEquals("105.00", bought.totals().get(0).deliveryAndFees().toString());
    assertEquals("2305.00", bought.totals().get(0).total().toString());
  }

  @Test
  void whatHasAPriceIsNotCountedAmongWhatHasNone() {
    PriceBook prices = book(NOBODY, price("nut", "1/2", "S", "each", "2"));
    Bought bought =
        buy(prices, job("A").needs(Material.NUT, "1/2", 10).needs(Material.NUT, "5/8", 4));
    assertEquals(1, bought.totals().get(0).unpriced());
    assertEquals(
        Map.of("nut 1/2", true, "nut 5/8", false),
        bought.orders().stream()
            .collect(
                Collectors.toMap(order -> order.lines().get(0).key().toString(), Order::complete)));
  }

  @Test
  void anOrderTellsOneRateOfTaxWhereAllItsJobsHaveIt() {
    PriceBook prices =
        book(
            List.of(Seller.named("S").tax("6.50").supplier()),
            price("nut", "1/2", "S", "each", "2"));
    Given a = job("A").deliverTo("yard").pour("2027-04-13").needs(Material.NUT, "1/2", 10);
    Given b = job("B").deliverTo("yard").pour("2027-04-13").needs(Material.NUT, "1/2", 10);
    Order alike = buy(prices, a, b).orders().get(0);
    assertEquals(Optional.of(new BigDecimal("6.5")), alike.taxPercent());
    assertEquals("2.60", alike.tax().toString());
    Order mixed = buy(prices, a, b.tax("0")).orders().get(0);
    assertEquals(Optional.empty(), mixed.taxPercent());
    assertEquals("1.30", mixed.tax().toString());
  }

  /** Spare pieces are of what is cut and of rolls; what is counted has its allowance. */
  @Test
  void aSpareRollComesOnceWithTheFirstDelivery() {
    PriceBook prices =
        book(
            NOBODY,
            price("vapor retarder", "10 mil", "S", "roll", "80").pack("1000"),
            price("nut", "1/2", "S", "each", "2"));
    Given job =
        job("A")
            .set(Setting.SPARE_PIECES, 1)
            .pour("2027-04-13")
            .pour("2027-06-13")
            .needs(Material.VAPOR_RETARDER, "10 mil", 2000, 1)
            .needs(Material.VAPOR_RETARDER, "10 mil", 1000, 2)
            .needs(Material.NUT, "1/2", 10);
    Bought bought = buy(prices, job);
    assertEquals(
        List.of("10 nut 1/2 20.00", "4 vapor retarder 10 mil 320.00"),
        lines(bought).stream().sorted().toList());
    assertEquals(
        List.of("3", "1"),
        bought.orders().stream()
            .flatMap(order -> order.lines().stream())
            .filter(line -> line.key().material().equals("vapor retarder"))
            .map(line -> line.packs().toPlainString())
            .toList());
  }

  /** 0.45 yd3 are 12.15 ft3: of 60 lb (0.45 ft3 each) 27 bags, of 80 lb (0.60 ft3) 21. */
  @Test
  void bagsAreOfEightyPoundsUnlessOnlyOthersAreSold() {
    Given job = job("A").concrete(1, "3000 psi", 0.4, 0.45, 0, true);
    PriceBook both =
        book(
            NOBODY,
            price("bagged concrete", "60 lb", "S", "bag", "1"),
            price("bagged concrete", "80 lb", "S", "bag", "5"));
    assertEquals(List.of("21 bagged concrete 80 lb 105.00"), lines(buy(both, job)));
    PriceBook small = book(NOBODY, price("bagged concrete", "60 lb", "S", "bag", "1"));
    assertEquals(List.of("27 bagged concrete 60 lb 27.00"), lines(buy(small, job)));
    PriceBook any = book(NOBODY, price("bagged concrete", "", "S", "bag", "5"));
    assertEquals(List.of("21 bagged concrete 80 lb 105.00"), lines(buy(any, job)));
  }

  /** A pound of nuts is no number of nuts: it is bought under its own name and unit. */
  @Test
  void anExtraInAUnitThatDoesNotConvertStandsByItself() {
    PriceBook prices = book(NOBODY, price("nut", "1/2", "S", "each", "2"));
    Bought bought =
        buy(
            prices,
            job("A")
                .needs(Material.NUT, "1/2", 10)
                .extra("nut", "1/2", 5, "lb", ExtraKind.MATERIAL));
    assertEquals(2, bought.lines().size());
    assertEquals("10", bought.lines().get(0).packs().toPlainString());
    assertEquals("lb", bought.lines().get(1).unit());
  }
}
