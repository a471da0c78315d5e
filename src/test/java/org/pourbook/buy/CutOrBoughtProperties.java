package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.ExhaustiveSearch;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.measure.Length;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material;

/** Against every number of stakes cut, each with every way to cut it. */
class CutOrBoughtProperties {

  private static final int BATCHES = 60;
  private static final Length STAKE = Length.ofInches(24);
  private static final Length KERF = Length.ofInches(1, 8);
  private static final Length STEP = Length.ofInches(1, 16);

  /** A job in figures: prices in cents, lengths in inches. */
  private record Case(
      List<int[]> boards, int stakes, int pack, long packCents, List<long[]> stock) {}

  @Test
  void noNumberOfStakesCutIsCheaper() {
    for (int seed = 1; seed <= BATCHES; seed++) {
      Case one = random(new SplittableRandom(seed));
      assertEquals(leastCents(one), boughtCents(one), "seed " + seed + ": " + one);
    }
  }

  private static Case random(SplittableRandom random) {
    List<int[]> boards = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(2); i++) {
      boards.add(new int[] {30 + random.nextInt(66), 1 + random.nextInt(2)});
    }
    List<long[]> stock = new ArrayList<>();
    stock.add(new long[] {96, 380 + random.nextInt(60)});
    if (random.nextBoolean()) {
      stock.add(new long[] {144, 560 + random.nextInt(90)});
    }
    int pack = random.nextBoolean() ? 1 : 4;
    return new Case(boards, 1 + random.nextInt(7), pack, pack * (90 + random.nextInt(60)), stock);
  }

  private static long boughtCents(Case one) {
    Given job = job("A").pour("2027-04-13");
    for (int[] board : one.boards()) {
      job.pieces(Material.FORM_BOARD, "2x4", Length.ofInches(board[0]), board[1], "F side L1");
    }
    job.pegs(Material.STAKE, "24 in", STAKE, one.stakes(), "F stakes", 1);
    List<Given.Row> rows = new ArrayList<>();
    for (long[] stock : one.stock()) {
      rows.add(
          price("form board", "2x4", "S", "each", Money.ofCents(stock[1]).toString())
              .stock(Length.ofInches(stock[0])));
    }
    rows.add(
        price("stake", "24 in", "S", "bundle", Money.ofCents(one.packCents()).toString())
            .pack(Integer.toString(one.pack())));
    Bought bought =
        CutOrBought.buy(
                List.of(job.takeOff()),
                book(List.of(), rows.toArray(Given.Row[]::new)),
                OptimalPlanner.usual(),
                List.of())
            .bought();
    return bought.totals().get(0).total().cents();
  }

  private static long leastCents(Case one) {
    long least = Long.MAX_VALUE;
    for (int cut = 0; cut <= one.stakes(); cut++) {
      List<CutJob.Piece> pieces = new ArrayList<>();
      one.boards().forEach(b -> pieces.add(new CutJob.Piece(Length.ofInches(b[0]), b[1], "L")));
      if (cut > 0) {
        pieces.add(new CutJob.Piece(STAKE, cut, "S"));
      }
      List<CutJob.Stock> stock = new ArrayList<>();
      for (long[] s : one.stock()) {
        stock.add(
            new CutJob.Stock("" + s[0], Length.ofInches(s[0]), s[1] * 10_000, Integer.MAX_VALUE));
      }
      long boards = ExhaustiveSearch.leastCost(new CutJob(pieces, stock, KERF, STEP)) / 10_000;
      // Stakes bought carry 5 % (BUY-1): hundredths of a stake, exactly.
      long hundredths = (one.stakes() - cut) * 105L;
      long packs = (hundredths + one.pack() * 100L - 1) / (one.pack() * 100L);
      least = Math.min(least, boards + packs * one.packCents());
    }
    return least;
  }
}
