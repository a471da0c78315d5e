package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.buy.QuoteLine.Standing;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Money;

class QuotingTest {

  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  private static final Supplier YARD =
      Seller.named("yard").delivery("40").freeFrom("500").minimum("30").tax("10").supplier();

  private static Quoted quote(Given job, Given.Row... list) {
    return Quoting.quote(List.of(job.job()), book(List.of(YARD), list), DAY, new FirstFitPlanner());
  }

  private static Given nuts(double count) {
    return job("A").extra("nut", "1/2", count, "each", ExtraKind.MATERIAL);
  }

  private static QuoteLine only(Quoted quoted) {
    assertEquals(1, quoted.lines().size(), quoted.lines().toString());
    return quoted.lines().get(0);
  }

  private static String packsAt(QuoteLine line) {
    return line.packs() + " x " + line.price().map(price -> price.price().toString()).orElse("-");
  }

  @Test
  void aLineIsOfferedInWholePacksAtTheTierReached() {
    // 45 of boxes of 20: 3 boxes; from 3 boxes on 4.50 each: 13.50.
    QuoteLine line =
        only(
            quote(
                nuts(45),
                price("nut", "1/2", "yard", "box", "5.00").pack("20"),
                price("nut", "1/2", "yard", "box", "4.50").pack("20").from("3")));
    assertEquals("3 x 4.50", packsAt(line));
    assertEquals("13.50", line.amount().toString());
    assertEquals(45, line.asked().getAsDouble());
    assertEquals(Standing.AS_ASKED, line.standing());
  }

  @Test
  void feesAndTaxAreThoseOfTheTerms() {
    // 13.50 of goods: 40.00 delivery, 16.50 to the minimum of 30.00, tax 10 % of 13.50.
    Order order =
        quote(nuts(45), price("nut", "1/2", "yard", "box", "4.50").pack("20")).deliveries().get(0);
    assertEquals("13.50", order.goods().toString());
    assertEquals("56.50", order.fees().toString());
    assertEquals("1.35", order.tax().toString());
    assertEquals("71.35", order.total().toString());
  }

  @Test
  void aPriceHoldsThroughItsLastDayAndIsRefusedAfterIt() {
    Given.Row nut = price("nut", "1/2", "yard", "each", "1.00");
    assertEquals(Standing.AS_ASKED, only(quote(nuts(4), nut.until(DAY))).standing());
    QuoteLine over = only(quote(nuts(4), nut.until(DAY.minusDays(1))));
    assertEquals(Standing.RAN_OUT, over.standing());
    assertTrue(over.price().isEmpty());
    assertEquals("yard nut 1/2 was valid until 2027-02-28", over.says());
  }

  @Test
  void whatTheListDoesNotHoldIsNotStocked() {
    Quoted quoted = quote(nuts(4), price("nut", "5/8", "yard", "each", "1.00"));
    assertEquals(Standing.NOT_STOCKED, only(quoted).standing());
    assertEquals(1, quoted.missing());
    assertEquals(List.of(), quoted.deliveries());
  }

  @Test
  void anotherIsOfferedInsteadAndSaysOfWhat() {
    QuoteLine line =
        only(
            quote(
                nuts(45),
                price("nut", "5/8", "yard", "box", "6.00").pack("10").insteadOf("nut", "1/2")));
    assertEquals(Standing.INSTEAD, line.standing());
    assertEquals("nut 1/2", line.key().toString());
    assertEquals("5 x 6.00", packsAt(line));
    assertEquals("nut 5/8 in place of nut 1/2 (not stocked)", line.says());
  }

  @Test
  void whatIsStockedIsOfferedThoughAnotherCostsLess() {
    QuoteLine line =
        only(
            quote(
                nuts(10),
                price("nut", "5/8", "yard", "each", "0.10").insteadOf("nut", "1/2"),
                price("nut", "1/2", "yard", "each", "1.00")));
    assertEquals(Standing.AS_ASKED, line.standing());
    assertEquals("10.00", line.amount().toString());
  }

  @Test
  void moreThanIsInStockIsNotOfferedToTwoJobsTogether() {
    // 40 in stock: the first job's 30 are offered, the second's 30 are not, though 30 < 40.
    Quoted quoted =
        Quoting.quote(
            List.of(
                nuts(30).job(), job("B").extra("nut", "1/2", 30, "each", ExtraKind.MATERIAL).job()),
            book(List.of(YARD), price("nut", "1/2", "yard", "each", "1.00").inStock(40)),
            DAY,
            new FirstFitPlanner());
    assertEquals(
        List.of(Standing.AS_ASKED, Standing.NOT_STOCKED),
        quoted.lines().stream().map(QuoteLine::standing).toList());
    assertEquals("needs 30 each yard nut 1/2, 10 left in stock", quoted.lines().get(1).says());
  }

  @Test
  void boardsAreCutFromTheSuppliersOwnLengths() {
    // 24 ft of boards: of 12 ft stock two whole ones, of 8 ft stock three.
    Given boards = job("A").extra("form board", "2x6", 24, "ft", ExtraKind.MATERIAL);
    Given.Row board = price("form board", "2x6", "yard", "each", "10.00");
    assertEquals("2 x 10.00", packsAt(only(quote(boards, board.stock(Length.ofFeet(12))))));
    Quoted eights = quote(boards, board.stock(Length.ofFeet(8)));
    assertEquals("3 x 10.00", packsAt(only(eights)));
    assertEquals(24, only(eights).asked().getAsDouble(), "asked does not hang on the stock");
    assertEquals(Length.ofFeet(8), eights.cutSheets().get(0).patterns().get(0).stock().length());
  }

  @Test
  void jobsThatShareADeliveryShareItsPacksToTheCent() {
    // 13 + 17 of 30 nuts: 2 boxes of 20 at 5.01 = 10.02, shared 4.34 and 5.68.
    List<Given> jobs =
        List.of(nuts(13), job("B").extra("nut", "1/2", 17, "each", ExtraKind.MATERIAL));
    Quoted quoted =
        Quoting.quote(
            jobs.stream().map(job -> job.deliverTo("yard").pour("2027-05-03").job()).toList(),
            book(List.of(YARD), price("nut", "1/2", "yard", "box", "5.01").pack("20")),
            DAY,
            new FirstFitPlanner());
    assertEquals(
        List.of("4.34", "5.68"),
        quoted.lines().stream().map(QuoteLine::amount).map(Money::toString).toList());
    assertEquals(1, quoted.deliveries().size());
    assertEquals("10.02", quoted.deliveries().get(0).goods().toString());
  }

  @Test
  void whatIsAskedIsTheSameWhoeverIsAsked() {
    Given bars = job("A").extra("bar", "#4", 130, "ft", ExtraKind.MATERIAL);
    Given.Row bar = price("bar", "#4", "yard", "each", "10.00");
    List<String> twenties = words(quote(bars, bar.stock(Length.ofFeet(20))));
    assertEquals(twenties, words(quote(bars, bar.stock(Length.ofFeet(40)))));
    assertEquals(twenties, words(quote(bars)));
    assertEquals(List.of("A\tbar\t#4\t130\tft\tA\t[]"), twenties);
  }

  private static List<String> words(Quoted quoted) {
    return quoted.asked().stream().map(Asked::inWords).toList();
  }

  private static List<String> offered(Quoted quoted) {
    return quoted.lines().stream()
        .map(line -> line.standing() + " " + packsAt(line) + " " + line.says())
        .toList();
  }

  private static Given.Row bar(int feet, String price) {
    return price("bar", "#4", "yard", "each", price).item("B" + feet).stock(Length.ofFeet(feet));
  }

  @Test
  void aScarceLengthIsUsedUpAndTheRestCutFromWhatIsPlentiful() {
    // 100 ft: of one bar of 40 ft two of the five twenties are cut, the other three are 20 ft bars.
    Given bars = job("A").extra("bar", "#4", 100, "ft", ExtraKind.MATERIAL);

    assertEquals(
        List.of("AS_ASKED 3 x 10.00 ", "AS_ASKED 1 x 15.00 "),
        offered(quote(bars, bar(40, "15.00").inStock(1), bar(20, "10.00"))).stream()
            .sorted(Comparator.reverseOrder())
            .toList());
  }

  @Test
  void whatNoLengthHoldsIsStillNotStocked() {
    Given bars = job("A").extra("bar", "#4", 100, "ft", ExtraKind.MATERIAL);

    QuoteLine line = only(quote(bars, bar(40, "15.00").inStock(1), bar(20, "10.00").inStock(2)));

    assertEquals(Standing.NOT_STOCKED, line.standing());
    assertTrue(line.says().contains("left in stock"), line.says());
  }

  @Test
  void theSpareComesFromALengthOfWhichEnoughIsLeft() {
    // 80 ft: both bars of 40 ft; the spare one is a bar of 20 ft, of which one is used.
    Given bars =
        job("A").set(Setting.SPARE_PIECES, 1).extra("bar", "#4", 100, "ft", ExtraKind.MATERIAL);

    assertEquals(
        List.of("AS_ASKED 2 x 15.00 ", "AS_ASKED 2 x 10.00 "),
        offered(quote(bars, bar(40, "15.00").inStock(2), bar(20, "10.00"))));
  }
}
