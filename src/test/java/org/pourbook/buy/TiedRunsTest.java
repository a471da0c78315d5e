package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.CutResult;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Joined;
import org.pourbook.takeoff.Material;

/** Boards of two sizes one above the other, butted at the same places; prices invented. */
class TiedRunsTest {

  private static final Joined RUN =
      new Joined(Length.ofFeet(24), 1, Length.ZERO, Length.ofFeet(4), Length.ofFeet(16), 1, true);

  private static Given.Row board(String size, long feet, String price) {
    return price("form board", size, "S", "each", price).stock(Length.ofFeet(feet));
  }

  private static PriceBook boards(Given.Row... more) {
    return book(
        List.of(),
        Stream.concat(
                Stream.of(
                    board("2x10", 12, "17.90"),
                    board("2x10", 16, "24.10"),
                    board("2x8", 12, "12.95"),
                    board("2x8", 16, "17.30")),
                Stream.of(more))
            .toArray(Given.Row[]::new));
  }

  /** A side of 24 ft, as take-off lists it: 16 ft and 8 ft of each size. */
  private static Given side(String code) {
    Given job = job(code).pour("2027-04-13");
    for (String size : List.of("2x10", "2x8")) {
      job.joined(Material.FORM_BOARD, size, Length.ofFeet(16), 1, "F side L1", RUN);
      job.joined(Material.FORM_BOARD, size, Length.ofFeet(8), 1, "F side L1", RUN);
    }
    return job;
  }

  private static Bought buy(PriceBook prices, Given... jobs) {
    return Buyer.buy(Stream.of(jobs).map(Given::takeOff).toList(), prices, OptimalPlanner.usual());
  }

  /** Returns the feet cut by size, with how often, and where they go. */
  static Map<String, Map<String, Integer>> cuts(Bought bought) {
    Map<String, Map<String, Integer>> bySize = new TreeMap<>();
    for (CutSheet sheet : bought.cutSheets()) {
      Map<String, Integer> cuts = bySize.computeIfAbsent(sheet.key().size(), k -> new TreeMap<>());
      for (CutResult.Pattern pattern : sheet.patterns()) {
        for (CutResult.Cut cut : pattern.cuts()) {
          String what = cut.goesTo() + " " + cut.length().feet();
          cuts.merge(what, cut.count() * pattern.times(), Integer::sum);
        }
      }
    }
    return bySize;
  }

  private static String total(Bought bought) {
    return bought.totals().get(0).total().toString();
  }

  @Test
  void bothSizesAreButtedWhereBothTogetherAreCheapest() {
    // 12 + 12 ft: 2 × 17.90 + 2 × 12.95 = 61.70. As listed: 24.10 + 17.90 + 17.30 + 12.95 = 72.25.
    Bought bought = buy(boards(), side("A"));
    assertEquals("61.70", total(bought));
    Map<String, Integer> halves = Map.of("F side L1 12.0", 2);
    assertEquals(Map.of("2x10", halves, "2x8", halves), cuts(bought));
  }

  @Test
  void theSizeForWhichMoreIsAtStakePlacesTheJoints() {
    // 8 ft of 2x8 at 6.00 makes 16 + 8 ft 23.30, less than 25.90; but 2x10 would be 42.00, not
    // 35.80: 61.70 in all against 65.30.
    assertEquals("61.70", total(buy(boards(board("2x8", 8, "6.00")), side("A"))));
    // At 2.00 it is the other way: 42.00 + 19.30 = 61.30.
    Bought bought = buy(boards(board("2x8", 8, "2.00")), side("A"));
    assertEquals("61.30", total(bought));
    Map<String, Integer> listed = Map.of("F side L1 16.0", 1, "F side L1 8.0", 1);
    assertEquals(Map.of("2x10", listed, "2x8", listed), cuts(bought));
  }

  @Test
  void everyCourseOfEveryRunIsCut() {
    Joined twice = RUN.of(2, true);
    Given job = job("A").pour("2027-04-13");
    for (long feet : new long[] {16, 8}) {
      job.joined(Material.FORM_BOARD, "2x10", Length.ofFeet(feet), 3, "F side L1", RUN);
      job.joined(Material.FORM_BOARD, "2x8", Length.ofFeet(feet), 3, "F side L1", twice);
    }
    // Three runs, one course of 2x10 and two of 2x8, all 12 + 12 ft.
    assertEquals(
        Map.of("2x10", Map.of("F side L1 12.0", 6), "2x8", Map.of("F side L1 12.0", 12)),
        cuts(buy(boards(), job)));
  }

  @Test
  void jobsThatShareADeliveryAreSettledTogether() {
    Bought bought = buy(boards(), side("A").deliverTo("yard"), side("B").deliverTo("yard"));
    Map<String, Integer> halves = Map.of("A: F side L1 12.0", 2, "B: F side L1 12.0", 2);
    assertEquals(Map.of("2x10", halves, "2x8", halves), cuts(bought));
  }

  @Test
  void aRevisionCutsWhatWasOrderedWhereverItsJointsWere() {
    // Two of 12 ft of each size were ordered. A piece of 5 ft besides takes one of 12 ft more; were
    // the sides cut as listed, none of what is in hand would hold 16 ft.
    Given before = side("A");
    Given now = side("A").pieces(Material.FORM_BOARD, "2x10", Length.ofFeet(5), 1, "F side W1");
    List<InHand> inHand =
        buy(boards(), before).lines().stream().map(SupplementProperties::inHand).toList();
    Earlier order = new Earlier(List.of(before.takeOff()), boards(), inHand, List.of(), 1);
    Supplement supplement =
        SupplementBuyer.buy(order, List.of(now.takeOff()), boards(), OptimalPlanner.usual());
    assertEquals(
        List.of("2x10 1 besides, 0 back", "2x8 0 besides, 0 back"),
        supplement.lines().stream()
            .map(
                line ->
                    line.key().size()
                        + " "
                        + line.besides().toPlainString()
                        + " besides, "
                        + line.back().toPlainString()
                        + " back")
            .toList());
  }
}
