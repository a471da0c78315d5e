package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.pourbook.buy.StopProblem.Item;
import org.pourbook.buy.StopProblem.Part;
import org.pourbook.buy.StopProblem.Terms;
import org.pourbook.buy.StopProblem.Way;

class StopSearchProperties {

  private static final int NO_LIMIT = Integer.MAX_VALUE;

  private static StopProblem problem(SplittableRandom random, int stops, int items) {
    List<Terms> terms = new ArrayList<>();
    for (int i = 0; i < stops; i++) {
      terms.add(
          new Terms(
              random.nextInt(3) == 0 ? 0 : random.nextLong(100),
              random.nextBoolean() ? Long.MAX_VALUE : random.nextLong(400),
              random.nextInt(3) == 0 ? random.nextLong(300) : 0,
              random.nextInt(4) == 0 ? random.nextLong(500_000) : 0));
    }
    List<Item> all = new ArrayList<>();
    for (int i = 0; i < items; i++) {
      List<Way> ways = new ArrayList<>();
      for (int stop = 0; stop < stops; stop++) {
        if (ways.isEmpty() || random.nextInt(4) > 0) {
          ways.add(way(random, stop, stops));
        }
      }
      all.add(new Item(ways));
    }
    return new StopProblem(terms, all);
  }

  private static Way way(SplittableRandom random, int stop, int stops) {
    long goods = random.nextLong(200);
    List<Part> parts = new ArrayList<>();
    parts.add(new Part(stop, goods, random.nextInt(5) > 0));
    if (random.nextInt(6) == 0) {
      parts.add(new Part((stop + 1) % stops, random.nextLong(50), true));
    }
    return new Way(goods * 10_000 + random.nextLong(200_000), parts);
  }

  private static long bruteForce(StopProblem problem, int[] chosen, int item) {
    if (item == chosen.length) {
      return problem.costMicros(chosen);
    }
    long best = Long.MAX_VALUE;
    for (int way = 0; way < problem.items().get(item).ways().size(); way++) {
      chosen[item] = way;
      best = Math.min(best, bruteForce(problem, chosen, item + 1));
    }
    return best;
  }

  @Test
  void theCheapestOfAllChoicesIsFoundAndProven() {
    for (long seed = 1; seed <= 400; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      StopProblem problem = problem(random, random.nextInt(1, 5), random.nextInt(1, 6));
      StopSearch.Found found = StopSearch.cheapest(problem, NO_LIMIT);
      long best = bruteForce(problem, new int[problem.items().size()], 0);
      assertEquals(best, found.costMicros(), "seed " + seed);
      assertEquals(best, found.boundMicros(), "seed " + seed);
      int[] chosen = found.chosen().stream().mapToInt(way -> way).toArray();
      assertEquals(best, problem.costMicros(chosen), "seed " + seed);
    }
  }

  @Test
  void moreStopsThanSetsAreTriedForAreStillSolved() {
    for (long seed = 1; seed <= 20; seed++) {
      StopProblem problem = problem(new SplittableRandom(seed), StopSearch.MOST_STOPS + 1, 4);
      assertEquals(
          bruteForce(problem, new int[problem.items().size()], 0),
          StopSearch.cheapest(problem, NO_LIMIT).costMicros(),
          "seed " + seed);
    }
  }

  @Test
  void aSearchCutOffTellsABoundThatHolds() {
    int unproven = 0;
    for (long seed = 1; seed <= 100; seed++) {
      StopProblem problem = problem(new SplittableRandom(seed), 4, 6);
      StopSearch.Found cut = StopSearch.cheapest(problem, 3);
      long best = bruteForce(problem, new int[problem.items().size()], 0);
      assertTrue(cut.boundMicros() <= best, "seed " + seed);
      assertTrue(cut.costMicros() >= best, "seed " + seed);
      unproven += cut.isProven() ? 0 : 1;
    }
    assertTrue(unproven > 10, "the limit was reached in " + unproven + " searches only");
  }
}
