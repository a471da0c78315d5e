package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.PieceNeed;

/** Stakes and braces cut from offcuts where that costs less; prices invented, sums by hand. */
class CutOrBoughtTest {

  private static final String DAY = "2027-04-13";
  private static final Length STAKE = Length.ofInches(24);

  private static final Given.Row BOARD =
      price("form board", "2x4", "S", "each", "4.00").stock(Length.ofFeet(8));

  private static final PriceBook SINGLY =
      book(List.of(), BOARD, price("stake", "24 in", "S", "each", "1.00"));

  private static final PriceBook BUNDLES =
      book(List.of(), BOARD, price("stake", "24 in", "S", "bundle", "20.00").pack("25"));

  /** Boards of 5 ft, each cut from one of 8 ft and leaving 3 ft of it, and stakes. */
  private static Given floor(String code, int boards, int stakes) {
    return job(code)
        .pour(DAY)
        .pieces(Material.FORM_BOARD, "2x4", Length.ofFeet(5), boards, "F side L1")
        .pegs(Material.STAKE, "24 in", STAKE, stakes, "F stakes", 1);
  }

  private static CutOrBought.Result buy(PriceBook prices, List<OnHand> onHand, Given... jobs) {
    return CutOrBought.buy(
        Stream.of(jobs).map(Given::takeOff).toList(), prices, OptimalPlanner.usual(), onHand);
  }

  private static CutOrBought.Result buy(PriceBook prices, Given... jobs) {
    return buy(prices, List.of(), jobs);
  }

  private static List<String> lines(CutOrBought.Result result) {
    return result.bought().lines().stream()
        .map(
            line ->
                line.job()
                    + " "
                    + line.key()
                    + " "
                    + line.packs().toPlainString()
                    + " of "
                    + Math.round(line.net().orElseThrow() * 1e6) / 1e6)
        .toList();
  }

  private static List<Integer> cut(CutOrBought.Result result) {
    return result.takeOffs().stream()
        .map(
            takeOff ->
                takeOff.pieces().stream()
                    .filter(piece -> piece.goesTo().endsWith("stakes"))
                    .mapToInt(PieceNeed::count)
                    .sum())
        .toList();
  }

  private static String total(CutOrBought.Result result) {
    return result.bought().totals().get(0).total().toString();
  }

  @Test
  void asManyAsOffcutsYieldAreCutAndTheRestIsBought() {
    // Three offcuts of 3 ft; 7 stakes × 1.05 = 7.35, so 8. A fourth would open a board for three:
    // 4.00 against 3.00 or 4.00 saved.
    CutOrBought.Result result = buy(SINGLY, floor("A", 3, 10));
    assertEquals(List.of("A form board 2x4 3 of 21.0", "A stake 24 in 8 of 7.0"), lines(result));
    assertEquals("20.00", total(result));
  }

  @Test
  void aBundleForAFewStakesIsNotOpened() {
    // 26 × 1.05 = 27.3: two bundles. Without three, 23 × 1.05 = 24.15: one. Without two, two.
    CutOrBought.Result result = buy(BUNDLES, floor("A", 5, 26));
    assertEquals(List.of("A form board 2x4 5 of 31.0", "A stake 24 in 1 of 23.0"), lines(result));
    assertEquals("40.00", total(result));
  }

  @Test
  void aBoardIsOpenedForStakesWhereThatIsCheaperThanABundle() {
    // One offcut, three stakes: a board of 8 ft more is 4.00, the bundle 20.00.
    CutOrBought.Result result = buy(BUNDLES, floor("A", 1, 3));
    assertEquals(List.of("A form board 2x4 2 of 11.0"), lines(result));
    assertEquals("8.00", total(result));
  }

  @Test
  void whereNothingIsSavedAllAreBought() {
    // 24 stakes are a bundle, as 23 are; to do without it takes seven boards more.
    Given job = floor("A", 5, 23);
    CutOrBought.Result result = buy(BUNDLES, job);
    assertEquals(List.of(0), cut(result));
    assertEquals(job.takeOff().quantities(), result.takeOffs().get(0).quantities());
  }

  @Test
  void stakesOfWhichHundredsAreSoldSinglyAreCutFromAllOffcuts() {
    // 60 offcuts; 240 × 1.05 = 252. Looking at 300 plans is not needed to find it.
    CutOrBought.Result result = buy(SINGLY, floor("A", 60, 300));
    assertEquals(
        List.of("A form board 2x4 60 of 420.0", "A stake 24 in 252 of 240.0"), lines(result));
  }

  @Test
  void whatFeesWouldEatIsNotSaved() {
    // 12.00 + 11.00 is brought free of charge, 12.00 + 8.00 is not.
    PriceBook free =
        book(
            List.of(Seller.named("S").delivery("15").freeFrom("22").supplier()),
            BOARD,
            price("stake", "24 in", "S", "each", "1.00"));
    CutOrBought.Result result = buy(free, floor("A", 3, 10));
    assertEquals(List.of(0), cut(result));
    assertEquals("23.00", total(result));
  }

  @Test
  void whatAnotherJobSavesDoesNotPayTheFees() {
    // A as above; B has 20 offcuts and pays 80.00 + 21.00, in place of 80.00 + 42.00.
    PriceBook free =
        book(
            List.of(Seller.named("S").delivery("15").freeFrom("22").supplier()),
            BOARD,
            price("stake", "24 in", "S", "each", "1.00"));
    CutOrBought.Result result = buy(free, floor("A", 3, 10), floor("B", 20, 40));
    assertEquals(List.of(0, 20), cut(result));
    assertEquals("23.00", total(result));
    assertEquals("101.00", result.bought().totals().get(1).total().toString());
  }

  @Test
  void jobsThatShareADeliveryShareOffcutsToo() {
    // A has three offcuts and no stakes, B six stakes and no offcut: 3 × 1.05 and so 4 are bought.
    Given a =
        job("A")
            .pour(DAY)
            .deliverTo("yard")
            .pieces(Material.FORM_BOARD, "2x4", Length.ofFeet(5), 3, "F side L1");
    Given b =
        job("B").pour(DAY).deliverTo("yard").pegs(Material.STAKE, "24 in", STAKE, 6, "F stakes", 1);
    CutOrBought.Result result = buy(SINGLY, a, b);
    assertEquals(List.of(0, 3), cut(result));
    assertEquals("16.00", result.bought().orders().get(0).total().toString());
  }

  @Test
  void stakesOfAnotherDeliveryAreNotCutFromItsBoards() {
    Given a = floor("A", 3, 1);
    Given b = job("B").pour(DAY).pegs(Material.STAKE, "24 in", STAKE, 6, "F stakes", 1);
    assertEquals(List.of(1, 0), cut(buy(SINGLY, a, b)));
  }

  @Test
  void theShortestBracesAreCutFirst() {
    PriceBook braces = book(List.of(), BOARD, price("brace", "2x4", "S", "each", "1.20"));
    Given job =
        job("A")
            .pour(DAY)
            .pieces(Material.FORM_BOARD, "2x4", Length.ofFeet(5), 2, "F side L1")
            .pegs(Material.BRACE, "2x4", Length.ofInches(42), 2, "F braces", 1)
            .pegs(Material.BRACE, "2x4", Length.ofInches(33), 2, "F braces", 1);
    // Offcuts of 35-7/8 in hold a brace of 33 in, none of 42 in. 2 × 1.05: three are bought at
    // 3.60, less than a board more.
    CutOrBought.Result result = buy(braces, job);
    assertEquals("11.60", total(result));
    PieceNeed cut = result.takeOffs().get(0).pieces().get(1);
    assertEquals("33 2", Math.round(cut.length().inches()) + " " + cut.count());
  }

  @Test
  void whatLiesInTheYardIsCutIntoStakesFirst() {
    OnHand offcut =
        new OnHand(
            Material.FORM_BOARD.of("2x4"), UnitSystem.FT_IN, Length.ofInches(49), 2, "spring");
    // Two offcuts of 4'-1" hold two stakes each, that of the board one: 5 × 1.05 = 5.25, so 6.
    CutOrBought.Result result = buy(SINGLY, List.of(offcut), floor("A", 1, 10));
    assertEquals("A stake 24 in 6 of 5.0", lines(result).get(1));
  }

  @Test
  void boardsInTheYardCostNothingWhateverTheirLength() {
    // Five offcuts hold all ten stakes; as length of new boards these would cost more than 0.60.
    PriceBook cheap = book(List.of(), BOARD, price("stake", "24 in", "S", "each", "0.60"));
    OnHand offcut =
        new OnHand(
            Material.FORM_BOARD.of("2x4"), UnitSystem.FT_IN, Length.ofInches(49), 5, "spring");
    assertEquals(List.of(10), cut(buy(cheap, List.of(offcut), floor("A", 1, 10))));
  }
}
