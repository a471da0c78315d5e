package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.TakeOff;

/** Supplements worked out by hand: rows are before, now, besides, back, amount, credit. */
class SupplementBuyerTest {

  private static final String DAY = "2027-04-13";

  private static final PriceBook NUTS =
      book(
          List.of(Seller.named("S").delivery("20").tax("6.5").supplier()),
          price("nut", "1/2", "S", "box", "10.00").pack("50"));

  private static final PriceBook BOARDS =
      book(
          List.of(Seller.named("S").supplier()),
          price("form board", "2x6", "S", "each", "8.00").stock(Length.ofFeet(16)));

  private static Given nuts(String code, double count) {
    return job(code).pour(DAY).needs(Material.NUT, "1/2", count);
  }

  private static Given boards(int of120, int of69, int of144) {
    Given job = job("A").pour(DAY);
    List<int[]> sides =
        List.of(new int[] {120, of120}, new int[] {69, of69}, new int[] {144, of144});
    for (int[] side : sides) {
      if (side[1] > 0) {
        job.pieces(Material.FORM_BOARD, "2x6", Length.ofInches(side[0]), side[1], "side");
      }
    }
    return job;
  }

  private static Supplement revise(
      PriceBook then, PriceBook now, UnaryOperator<InHand> office, List<Given> was, Given... is) {
    List<TakeOff> before = was.stream().map(Given::takeOff).toList();
    List<InHand> inHand =
        Buyer.buy(before, then, new FirstFitPlanner()).lines().stream()
            .map(SupplementProperties::inHand)
            .map(office)
            .toList();
    List<TakeOff> after = new ArrayList<>();
    for (Given job : is) {
      after.add(job.takeOff());
    }
    return SupplementBuyer.buy(
        new Earlier(before, then, inHand, List.of(), 7), after, now, new FirstFitPlanner());
  }

  private static Supplement revise(PriceBook prices, List<Given> was, Given... is) {
    return revise(prices, prices, UnaryOperator.identity(), was, is);
  }

  private static List<String> rows(Supplement supplement) {
    return supplement.lines().stream()
        .map(
            line ->
                String.join(
                    " ",
                    line.job(),
                    line.before().stripTrailingZeros().toPlainString(),
                    line.now().stripTrailingZeros().toPlainString(),
                    line.besides().stripTrailingZeros().toPlainString(),
                    line.back().stripTrailingZeros().toPlainString(),
                    line.amount().map(Object::toString).orElse("no price"),
                    line.credit().toString()))
        .sorted()
        .toList();
  }

  private static UnaryOperator<InHand> packs(String packs) {
    return row ->
        new InHand(
            row.job(),
            row.key(),
            row.unit(),
            row.supplier(),
            row.item(),
            row.orderUnit(),
            row.packHolds(),
            new BigDecimal(packs),
            row.unitPrice(),
            row.amount());
  }

  @Test
  void moreIsOrderedBesidesWithTheFeesOfItsOwnDelivery() {
    // 40 nuts are a box of 50; 120 are three. Two for 20.00, delivery 20.00, 6.5 % tax 1.30.
    Supplement more = revise(NUTS, List.of(nuts("A", 40)), nuts("A", 120));
    assertEquals(List.of("A 1 3 2 0 20.00 0.00"), rows(more));
    Order order = more.besides().orders().get(0);
    assertEquals("PB-008", order.number());
    assertEquals("41.30", order.total().toString());
  }

  @Test
  void goodsBesidesComeOnOneDayWithTheFirstOfThemButNoFurtherApartThanDeliverTogether() {
    PriceBook prices =
        book(
            List.of(Seller.named("S").delivery("20").tax("0").supplier()),
            price("base gravel", "stone", "S", "ton", "30.00"),
            price("form board", "2x6", "S", "each", "8.00").stock(Length.ofFeet(16)),
            price("nut", "1/2", "S", "box", "10.00").pack("50"),
            price("curing compound", "", "S", "gal", "9.00"));
    Given was = job("A").pour(DAY).needs(Material.NUT, "1/2", 40);
    // Boards 5, bolts 2 and curing 1 working day ahead: 04-06, 04-09 and 04-12.
    for (double together : new double[] {7, 2}) {
      Given is =
          job("A")
              .pour(DAY)
              .set(Setting.DELIVER_TOGETHER, together)
              .pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(10), 1, "side")
              .needs(Material.NUT, "1/2", 60)
              .needs(Material.CURING_COMPOUND, "", 1);
      Supplement more = revise(prices, List.of(was), is);
      assertEquals(
          together == 7 ? List.of("2027-04-06") : List.of("2027-04-06", "2027-04-09", "2027-04-12"),
          more.besides().orders().stream()
              .map(order -> order.neededBy().orElseThrow().toString())
              .toList());
      // What is in hand is known again though its lot comes on another day.
      assertEquals(
          List.of("A 0 1 1 0 8.00 0.00", "A 0 1 1 0 9.00 0.00", "A 1 2 1 0 10.00 0.00"),
          rows(more));
    }
  }

  @Test
  void aLoadBesidesCoversWhatTheEarlierLoadsDoNotReach() {
    PriceBook plant =
        book(
            List.of(Seller.named("S").supplier()),
            price("concrete", "3000 psi", "S", "yd3", "150.00"));
    Given was = job("A").pour(DAY).concrete(1, "3000 psi", 4, 4);
    Given is =
        job("A")
            .pour(DAY)
            .concrete(1, "3000 psi", 5, 5)
            .section("FLOOR", "3000 psi", 1, 4)
            .section("STOOP", "3000 psi", 1, 1);
    Supplement more = revise(plant, List.of(was), is);
    assertEquals(
        List.of("STOOP"), more.besides().loads().stream().map(load -> load.covers()).toList());
  }

  @Test
  void loadsBesidesAreNumberedOnFromTheEarlierOnes() {
    PriceBook plant =
        book(
            List.of(Seller.named("S").supplier()),
            price("concrete", "3000 psi", "S", "yd3", "150.00"));
    // 22 yd3 came in three loads of at most 10; the 2 yd3 besides are the fourth.
    Given was = job("A").pour(DAY).concrete(1, "3000 psi", 22, 22);
    Given is = job("A").pour(DAY).concrete(1, "3000 psi", 24, 24);
    Supplement more = revise(plant, List.of(was), is);
    assertEquals(List.of(4), more.besides().loads().stream().map(Load::load).toList());
  }

  @Test
  void lessGivesWholePacksBackWithTheirTax() {
    Supplement less = revise(NUTS, List.of(nuts("A", 120)), nuts("A", 60));
    assertEquals(List.of("A 3 2 0 1 0.00 10.00"), rows(less));
    assertEquals(Map.of("A", Money.ofCents(65)), less.creditTax());
    assertEquals(List.of(), less.besides().orders());
  }

  @Test
  void packsThatTheOfficeChangedStandUntilTheNeedChanges() {
    List<Given> was = List.of(nuts("A", 120));
    Supplement same = revise(NUTS, NUTS, packs("5"), was, nuts("A", 120));
    assertEquals(List.of("A 5 5 0 0 0.00 0.00"), rows(same));
    Supplement more = revise(NUTS, NUTS, packs("5"), was, nuts("A", 180));
    assertEquals(List.of("A 5 4 0 1 0.00 10.00"), rows(more));
  }

  @Test
  void anotherDayChangesNothing() {
    Given later = job("A").pour("2027-05-04").needs(Material.NUT, "1/2", 40);
    assertEquals(List.of("A 1 1 0 0 0.00 0.00"), rows(revise(NUTS, List.of(nuts("A", 40)), later)));
  }

  @Test
  void anotherPriceBookChangesNothingOfWhatIsNotNeededAnew() {
    PriceBook dearer =
        book(
            List.of(Seller.named("T").supplier()),
            price("nut", "1/2", "T", "bag", "6.00").pack("25"));
    List<Given> was = List.of(nuts("A", 40));
    Supplement same = revise(NUTS, dearer, UnaryOperator.identity(), was, nuts("A", 40));
    assertEquals(List.of("A 1 1 0 0 0.00 0.00"), rows(same));
    // 70 nuts: the box of 50 that nobody sells any more, and a bag of 25.
    Supplement more = revise(NUTS, dearer, UnaryOperator.identity(), was, nuts("A", 70));
    assertEquals(List.of("A 0 1 1 0 6.00 0.00", "A 1 1 0 0 0.00 0.00"), rows(more));
    assertTrue(more.lines().get(1).standing().contains("no longer in the price book"));
  }

  @Test
  void aJobThatIsLeftOutSendsAllBack() {
    Supplement less = revise(NUTS, List.of(nuts("A", 40), nuts("B", 90)), nuts("A", 40));
    assertEquals(List.of("A 1 1 0 0 0.00 0.00", "B 2 0 0 2 0.00 20.00"), rows(less));
    assertEquals("B", less.lines().get(0).job(), "what is to do comes first");
  }

  @Test
  void aSharedDeliveryIsPlannedAgainWholeAndShared() {
    // 30 + 40 nuts are two boxes, 30 + 80 are three; who grows pays for the third.
    List<Given> was = List.of(nuts("A", 30).deliverTo("yard"), nuts("B", 40).deliverTo("yard"));
    Supplement more =
        revise(NUTS, was, nuts("A", 30).deliverTo("yard"), nuts("B", 80).deliverTo("yard"));
    assertEquals(
        List.of("A 0.857143 0.857143 0 0 0.00 0.00", "B 1.142857 2.142857 1 0 10.00 0.00"),
        rows(more));
    Supplement other =
        revise(NUTS, was, nuts("A", 80).deliverTo("yard"), nuts("B", 40).deliverTo("yard"));
    assertEquals(
        List.of("A 0.857143 1.857143 1 0 10.00 0.00", "B 1.142857 1.142857 0 0 0.00 0.00"),
        rows(other));
    // 45 and 60 nuts: both grow, and share the third box by what each lacks of its rounded
    // share: 2.14285 to 2.85715.
    Supplement both =
        revise(NUTS, was, nuts("A", 45).deliverTo("yard"), nuts("B", 60).deliverTo("yard"));
    assertEquals(
        List.of(
            "A 0.857143 1.285713 0.42857 0 4.29 0.00", "B 1.142857 1.714287 0.57143 0 5.71 0.00"),
        rows(both));
  }

  @Test
  void whatOneJobLeavesServesTheOthersOfItsDelivery() {
    List<Given> was = List.of(nuts("A", 30).deliverTo("yard"), nuts("B", 40).deliverTo("yard"));
    Supplement moved = revise(NUTS, was, nuts("A", 90).deliverTo("yard"));
    assertEquals(List.of("A 0.857143 2 0 0 0.00 0.00", "B 1.142857 0 0 0 0.00 0.00"), rows(moved));
    Supplement less = revise(NUTS, was, nuts("A", 30).deliverTo("yard"));
    assertEquals(List.of("A 0.857143 1 0 0 0.00 0.00", "B 1.142857 0 0 1 0.00 10.00"), rows(less));
  }

  @Test
  void boardsInHandAreCutBeforeOthersAreBought() {
    // Three sides of 10'-0" took three boards of 16'; 5'-9" and a saw kerf still go into each.
    List<Given> was = List.of(boards(3, 0, 0));
    assertEquals(List.of("A 3 3 0 0 0.00 0.00"), rows(revise(BOARDS, was, boards(3, 3, 0))));
    // A side of 12'-0" goes into none of them.
    Supplement more = revise(BOARDS, was, boards(3, 0, 1));
    assertEquals(List.of("A 3 4 1 0 8.00 0.00"), rows(more));
    assertEquals(
        3,
        more.besides().cutSheets().get(0).patterns().stream()
            .filter(CutSheet::isInHand)
            .mapToInt(pattern -> pattern.times())
            .sum());
    assertEquals(List.of("A 3 2 0 1 0.00 8.00"), rows(revise(BOARDS, was, boards(2, 0, 0))));
  }

  @Test
  void boardsWithoutAPriceAreCutFromThoseInHandToo() {
    // Nobody sells boards: the usual lengths; the 10' board in hand serves the side that is left.
    List<Given> was = List.of(boards(2, 0, 0));
    Supplement less = revise(PriceBook.EMPTY, was, boards(1, 0, 0));
    assertEquals(1, less.lines().size());
    assertEquals("1", less.lines().get(0).back().toPlainString());
    assertEquals(List.of(), less.besides().orders());
  }

  @Test
  void barsSoldByWeightComeBackInTheLengthsTheyWerePlanned() {
    PriceBook byWeight =
        book(List.of(Seller.named("S").supplier()), price("bar", "#4", "S", "lb", "1.00"));
    Given two = job("A").pour(DAY).pieces(Material.BAR, "#4", Length.ofFeet(20), 2, "x");
    Given one = job("A").pour(DAY).pieces(Material.BAR, "#4", Length.ofFeet(20), 1, "x");
    // Two bars of 20' (or one of 40') weigh 26.72 lb; one weighs 13.36.
    Supplement less = revise(byWeight, List.of(two), one);
    double before = less.lines().get(0).before().doubleValue();
    assertEquals(26.72, before, 0.01);
    assertEquals(0, less.besides().orders().size());
  }

  @Test
  void concreteIsTheNewOrderLessWhatIsOrdered() {
    PriceBook plant =
        book(
            List.of(Seller.named("S").supplier()),
            price("concrete", "3000 psi", "S", "yd3", "150.00"));
    Given before = job("A").pour(DAY).pour(DAY).concrete(1, "3000 psi", 9.4, 9.9);
    before.concrete(2, "3000 psi", 3, 3);
    Given now = job("A").pour(DAY).pour(DAY).concrete(1, "3000 psi", 11.4, 12.1);
    now.concrete(2, "3000 psi", 3, 3);
    // 10 + 3 yd3 ordered; 12.25 + 3 needed: 2.25 besides, all for the first pour.
    Supplement more = revise(plant, List.of(before), now);
    assertEquals(List.of("A 13 15.25 2.25 0 337.50 0.00"), rows(more));
    assertEquals(1, more.besides().loads().size());
    assertEquals(1, more.besides().loads().get(0).pour());
    assertTrue(
        more.besides()
            .orders()
            .get(0)
            .notes()
            .get(1)
            .startsWith("10 yd3 are ordered before. Where the plant raises"),
        more.besides().orders().get(0).notes().toString());
    assertEquals(
        List.of("A 15.25 13 0 2.25 0.00 337.50"), rows(revise(plant, List.of(now), before)));
  }
}
