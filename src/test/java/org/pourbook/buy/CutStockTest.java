package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.CutPlanner;
import org.pourbook.cut.CutResult;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Material;

/** Boards of which the supplier has too few, or none long enough. */
class CutStockTest {

  private static final PriceBook TWO_BOARDS =
      book(
          List.of(),
          price("form board", "2x6", "S", "each", "12").stock(Length.ofFeet(16)).inStock(2));

  private static Bought buy(CutPlanner planner, long feet, int count) {
    Given job = job("A").pieces(Material.FORM_BOARD, "2x6", Length.ofFeet(feet), count, "floor L1");
    return Buyer.buy(List.of(job.takeOff()), TWO_BOARDS, planner);
  }

  private static String caution(Bought bought) {
    return bought.cautions().get(0).says();
  }

  @Test
  void tooLittleStockIsToldAsCertain() {
    assertEquals(
        "form board 2x6: nobody has enough in stock for the cut plan. There is not enough stock for"
            + " all pieces. Ordered all the same: ask S",
        caution(buy(OptimalPlanner.usual(), 9, 3)));
  }

  @Test
  void aPlanThatWasOnlyNotFoundIsToldAsThat() {
    String why = "No way was found to cut all pieces from the limited stock.";
    CutPlanner blind =
        job ->
            job.stock().get(0).limit() == 2
                ? new CutResult.Impossible(false, why)
                : OptimalPlanner.usual().plan(job);
    assertEquals(
        "form board 2x6: nobody has enough in stock for the cut plan. "
            + why
            + " Ordered all the same: ask S",
        caution(buy(blind, 9, 3)));
  }

  @Test
  void aPieceLongerThanAnyStockIsAProblemAtItsJob() {
    Bought bought = buy(OptimalPlanner.usual(), 17, 1);
    assertEquals("Jobs!A2", bought.problems().get(0).place().toString());
    assertEquals(
        "form board 2x6 cannot be cut: stock of S: A piece of 17'-0\" is longer than the longest"
            + " stock, 16'-0\".",
        bought.problems().get(0).found());
  }
}
