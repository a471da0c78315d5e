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

/** Boards that are there already. */
class OnHandTest {

  private static final PriceBook BOARDS =
      book(List.of(), price("form board", "2x6", "S", "each", "12").stock(Length.ofFeet(16)));

  private static OnHand board(long feet, int pieces) {
    return new OnHand(
        Material.FORM_BOARD.of("2X6"), UnitSystem.FT_IN, Length.ofFeet(feet), pieces, "spring");
  }

  private static Given cuts(String code, String day, long feet, int count) {
    return job(code)
        .pour(day)
        .pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(feet), count, "floor L1");
  }

  private static Bought buy(List<OnHand> onHand, Given... jobs) {
    return Buyer.buy(
        Stream.of(jobs).map(Given::takeOff).toList(), BOARDS, OptimalPlanner.usual(), onHand);
  }

  private static List<String> lines(Bought bought) {
    return bought.lines().stream()
        .map(line -> line.job() + " " + line.packs().toPlainString() + " " + line.needed())
        .toList();
  }

  private static List<String> offcuts(Bought bought) {
    return bought.offcuts().stream()
        .map(some -> some.pieces() + " x " + some.length().feet() + ", " + some.from())
        .toList();
  }

  @Test
  void whatIsOnHandIsCutBeforeBoardsAreBought() {
    // Four pieces of 9 ft: two come from 9 ft boards on hand, a 16 ft board yields one.
    Bought bought = buy(List.of(board(9, 2)), cuts("A", "2027-04-13", 9, 4));
    assertEquals(List.of("A 2 32.0"), lines(bought));
    List<String> from =
        bought.cutSheets().get(0).patterns().stream()
            .map(pattern -> pattern.times() + " " + pattern.stock().id())
            .sorted()
            .toList();
    assertEquals(List.of("2 S form board 2x6 16'-0\"", "2 on hand"), from);
    assertEquals("24.00", bought.cutSheets().get(0).cost().toString());
  }

  @Test
  void nothingIsOrderedWhereAllIsOnHandAndTheNeedStillHasItsRow() {
    Bought bought = buy(List.of(board(9, 2)), cuts("A", "2027-04-13", 9, 2));
    assertEquals(List.of("A 0 0.0"), lines(bought));
    assertEquals(18, bought.lines().get(0).net().orElseThrow(), 1e-9);
    assertEquals(List.of(), bought.orders());
    assertEquals(List.of(), offcuts(bought));
  }

  @Test
  void theJobThatNeedsThemFirstTakesThemAndNoneIsCutTwice() {
    Bought bought =
        buy(List.of(board(9, 3)), cuts("A", "2027-04-20", 9, 2), cuts("B", "2027-04-13", 9, 2));
    assertEquals(List.of("A 1 16.0", "B 0 0.0"), lines(bought));
  }

  @Test
  void offcutsOverTheLimitAndWhatWasNotUsedLieInTheYardAfterwards() {
    // 16 ft less 9 ft and a kerf of 1/8 in leaves 6'-11 7/8"; 13 ft leaves under 4 ft.
    Bought bought =
        buy(List.of(board(5, 2)), cuts("A", "2027-04-13", 9, 2), cuts("B", "2027-04-13", 13, 1));
    double left = Length.ofInches(96 - 12, 1).minus(Length.ofInches(1, 8)).feet();
    assertEquals(List.of("2 x 5.0, left in the yard", "2 x " + left + ", A"), offcuts(bought));
  }

  @Test
  void whatSharingSavesCountsStockOnHandOnce() {
    // A board yields two pieces of 7 ft. Together: one on hand, four from two boards, 24.00. Apart:
    // A one on hand and one board, B three pieces from two boards, 36.00.
    Bought bought =
        buy(
            List.of(board(7, 1)),
            cuts("A", "2027-04-13", 7, 2).deliverTo("yard"),
            cuts("B", "2027-04-13", 7, 3).deliverTo("yard"));
    assertEquals(1, bought.orders().size());
    assertEquals("24.00", bought.orders().get(0).total().toString());
    assertEquals(
        List.of("Shared by A, B: 12.00 less than ordered apart, before tax."),
        bought.orders().get(0).notes().stream()
            .filter(note -> note.startsWith("Shared by"))
            .toList());
  }
}
