package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.buy.Given.book;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.ExhaustiveSearch;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Joined;
import org.pourbook.takeoff.Material;

/** Against every way to place the joints on whole feet, the same in both sizes. */
class TiedRunsProperties {

  private static final int JOBS = 60;
  private static final List<String> SIZES = List.of("2x10", "2x8");
  private static final int LONGEST = 16;
  private static final int SHORTEST = 4;

  /** Runs, each of two pieces, and prices in cents by size of 8, 12 and 16 ft; 0: not sold. */
  private record Case(List<Integer> runs, int[][] cents) {}

  private static final int[] STOCK = {8, 12, 16};

  @Test
  void noWayToPlaceTheJointsIsCheaperInMostJobs() {
    int cheapest = 0;
    for (int seed = 1; seed <= JOBS; seed++) {
      Case one = random(new SplittableRandom(seed));
      Bought bought = bought(one);
      long cents = bought.totals().get(0).total().cents();
      long least = least(one, new ArrayList<>());
      long listed =
          cost(one, one.runs().stream().map(run -> Math.min(LONGEST, run - SHORTEST)).toList());
      assertTrue(cents >= least && cents <= listed, "seed " + seed + ": " + cents);
      cheapest += cents == least ? 1 : 0;
      Iterator<Map<String, Integer>> cuts = TiedRunsTest.cuts(bought).values().iterator();
      assertEquals(cuts.next(), cuts.next(), "seed " + seed + ": same places");
    }
    assertTrue(cheapest >= JOBS * 9 / 10, cheapest + " of " + JOBS + " are the cheapest");
  }

  private static Case random(SplittableRandom random) {
    List<Integer> runs = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      runs.add(LONGEST + 1 + random.nextInt(LONGEST - 1));
    }
    int[][] cents = new int[SIZES.size()][STOCK.length];
    for (int[] ofSize : cents) {
      for (int i = 0; i < STOCK.length; i++) {
        boolean sold = STOCK[i] == LONGEST || random.nextBoolean();
        ofSize[i] = sold ? STOCK[i] * (90 + random.nextInt(30)) : 0;
      }
    }
    return new Case(runs, cents);
  }

  private static Bought bought(Case one) {
    Given job = job("A").pour("2027-04-13").set(Setting.SAW_KERF, Length.ZERO);
    List<Given.Row> rows = new ArrayList<>();
    for (int s = 0; s < SIZES.size(); s++) {
      for (int r = 0; r < one.runs().size(); r++) {
        int run = one.runs().get(r);
        Joined joined =
            new Joined(
                Length.ofFeet(run),
                1,
                Length.ZERO,
                Length.ofFeet(SHORTEST),
                Length.ofFeet(LONGEST),
                1,
                true);
        int first = Math.min(LONGEST, run - SHORTEST);
        for (int piece : new int[] {first, run - first}) {
          job.joined(
              Material.FORM_BOARD, SIZES.get(s), Length.ofFeet(piece), 1, "side " + r, joined);
        }
      }
      for (int i = 0; i < STOCK.length; i++) {
        if (one.cents()[s][i] > 0) {
          String cost = Money.ofCents(one.cents()[s][i]).toString();
          rows.add(
              price("form board", SIZES.get(s), "S", "each", cost).stock(Length.ofFeet(STOCK[i])));
        }
      }
    }
    return Buyer.buy(
        List.of(job.takeOff()),
        book(List.of(), rows.toArray(Given.Row[]::new)),
        OptimalPlanner.usual());
  }

  /** Returns the least cost where the first pieces of some runs are settled. */
  private static long least(Case one, List<Integer> first) {
    if (first.size() == one.runs().size()) {
      return cost(one, first);
    }
    int run = one.runs().get(first.size());
    long least = Long.MAX_VALUE;
    for (int piece = (run + 1) / 2; piece <= Math.min(LONGEST, run - SHORTEST); piece++) {
      List<Integer> more = new ArrayList<>(first);
      more.add(piece);
      least = Math.min(least, least(one, more));
    }
    return least;
  }

  private static long cost(Case one, List<Integer> first) {
    long cents = 0;
    for (int[] ofSize : one.cents()) {
      List<CutJob.Piece> pieces = new ArrayList<>();
      for (int r = 0; r < first.size(); r++) {
        pieces.add(new CutJob.Piece(Length.ofFeet(first.get(r)), 1, "a"));
        int rest = one.runs().get(r) - first.get(r);
        pieces.add(new CutJob.Piece(Length.ofFeet(rest), 1, "b"));
      }
      List<CutJob.Stock> stock = new ArrayList<>();
      for (int i = 0; i < STOCK.length; i++) {
        if (ofSize[i] > 0) {
          stock.add(
              new CutJob.Stock(
                  "" + i, Length.ofFeet(STOCK[i]), ofSize[i] * 10_000L, Integer.MAX_VALUE));
        }
      }
      cents +=
          ExhaustiveSearch.leastCost(new CutJob(pieces, stock, Length.ZERO, Length.ofInches(1, 16)))
              / 10_000;
    }
    return cents;
  }
}
