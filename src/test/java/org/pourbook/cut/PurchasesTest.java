package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PurchasesTest {
  private static final Effort.Steps STEPS = new Effort.Steps(0);

  @Test
  void theLeastTotalIsOneThatPricesAddUpTo() {
    CutModel model = model(new long[] {40, 20}, new long[] {442, 225}, 100);
    Relaxation.Certificate certificate =
        new Relaxation.Certificate(new long[] {442, 221}, BigInteger.valueOf(15_801));
    Purchases purchases = Purchases.below(model, certificate, 0, 17_000, STEPS).orElseThrow();
    // 36 × 442 = 15,912 is the first total of 442s and 225s whose worth reaches 15,801.
    assertEquals(15_912, purchases.least());
    assertEquals(36, purchases.cheapest(1).get(0)[0]);
  }

  /** Prices in millionths that share no greater unit leave billions of totals to look at. */
  @Test
  void noMoreThanSoManyTotalsAreLookedAt() {
    long[] asked = new long[1];
    Purchases.Table never =
        new Purchases.Table() {
          @Override
          public long worth(long total) {
            asked[0]++;
            return NONE;
          }

          @Override
          public Optional<int[]> boards(long total) {
            return Optional.empty();
          }

          @Override
          public long steps() {
            return 0;
          }
        };
    Purchases purchases = new Purchases(never, 1, 7, Long.MAX_VALUE / 2);
    assertEquals(7 + 4_194_304, purchases.least(), "a bound all the same");
    assertEquals(List.of(), purchases.cheapest(3));
    assertEquals(2 * 4_194_304, asked[0]);
  }

  /** Limits, free stock, and worth out of proportion to price, against counting every purchase. */
  @Test
  void theLeastTotalIsThatOfCountingEveryPurchase() {
    for (long seed = 0; seed < 2_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int pieces = 100;
      int n = 1 + random.nextInt(3);
      long[] cost = new long[n];
      long[] worth = new long[n];
      int[] limit = new int[n];
      for (int k = 0; k < n; k++) {
        cost[k] = random.nextInt(6) == 0 ? 0 : 2L + random.nextInt(12);
        worth[k] = random.nextInt(15);
        limit[k] = random.nextBoolean() && cost[k] > 0 ? pieces : random.nextInt(4);
      }
      long total = 1L + random.nextInt(100);
      CutModel model = new CutModel(new long[] {1}, new int[] {pieces}, worth, cost, limit);
      Relaxation.Certificate certificate =
          new Relaxation.Certificate(worth, BigInteger.valueOf(total));
      long least = count(cost, worth, limit, 0, total);
      OptionalLong bound = CoverBound.of(model, worth, BigInteger.valueOf(total));
      assertTrue(bound.orElse(Long.MAX_VALUE) <= least, "seed " + seed);
      if (bound.orElse(Long.MAX_VALUE) >= 300) {
        continue;
      }
      long found =
          Purchases.below(model, certificate, bound.orElse(0), 300, STEPS).orElseThrow().least();
      assertEquals(Math.min(least, 300), found, "seed " + seed);
    }
  }

  /** Told apart by rest, against counting: exact where no limit binds, never less than there is. */
  @Test
  void noBoardsAreWorthMoreThanTheirRestSays() {
    int exact = 0;
    for (long seed = 0; seed < 2_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int n = 1 + random.nextInt(4);
      long[] cost = new long[n];
      long[] worth = new long[n];
      int[] limit = new int[n];
      boolean limited = random.nextBoolean();
      for (int k = 0; k < n; k++) {
        cost[k] = random.nextInt(8) == 0 ? 0 : 2L + random.nextInt(12);
        worth[k] = 1L + random.nextInt(15);
        limit[k] = limited || cost[k] == 0 ? random.nextInt(5) : 1000;
      }
      CutModel model = new CutModel(new long[] {1}, new int[] {1000}, worth, cost, limit);
      Optional<PurchasesByRest> table = PurchasesByRest.of(model, worth, 1L + random.nextInt(60));
      if (table.isEmpty()) {
        continue;
      }
      for (int total = 1; total < 100; total++) {
        long most = mostWorth(cost, worth, limit, 0, total);
        long said = table.get().worth(total);
        String where = "seed " + seed + " total " + total;
        assertTrue(said >= most, where);
        Optional<int[]> boards = table.get().boards(total);
        if (boards.isPresent() && said != Purchases.Table.NONE) {
          assertEquals(most, said, where);
          assertEquals(most, spentOn(boards.get(), cost, worth, limit, total), where);
          exact++;
        }
      }
    }
    assertTrue(exact > 40_000, "exact " + exact);
  }

  /** Returns the worth of boards with a price, which cost {@code total}. */
  private static long spentOn(int[] boards, long[] cost, long[] worth, int[] limit, long total) {
    long left = total;
    long sum = 0;
    for (int k = 0; k < boards.length; k++) {
      assertTrue(boards[k] >= 0 && boards[k] <= limit[k], "limit");
      left -= boards[k] * cost[k];
      sum += cost[k] == 0 ? 0 : boards[k] * worth[k];
    }
    assertEquals(0, left);
    return sum;
  }

  private static long mostWorth(long[] cost, long[] worth, int[] limit, int k, int total) {
    if (k == cost.length) {
      return total == 0 ? 0 : Purchases.Table.NONE;
    }
    long best = Purchases.Table.NONE;
    long most = cost[k] == 0 ? 0 : Math.min(limit[k], total / cost[k]);
    for (int n = 0; n <= most; n++) {
      long rest = mostWorth(cost, worth, limit, k + 1, (int) (total - n * cost[k]));
      best = rest < 0 ? best : Math.max(best, rest + n * worth[k]);
    }
    return best;
  }

  @Test
  void purchasesComeCheapestFirst() {
    CutModel model = model(new long[] {12, 8}, new long[] {100, 64}, 50);
    Relaxation.Certificate certificate =
        new Relaxation.Certificate(new long[] {12, 8}, BigInteger.valueOf(30));
    List<int[]> boards =
        Purchases.below(model, certificate, 0, 400, STEPS).orElseThrow().cheapest(3);
    long[] costs = boards.stream().mapToLong(b -> 100L * b[0] + 64L * b[1]).toArray();
    assertEquals(256, costs[0], "four of 8");
    for (int i = 1; i < costs.length; i++) {
      assertTrue(costs[i] > costs[i - 1]);
    }
  }

  private static CutModel model(long[] size, long[] cost, int pieces) {
    return new CutModel(new long[] {1}, new int[] {pieces}, size, cost, new int[] {pieces, pieces});
  }

  private static long count(long[] cost, long[] worth, int[] limit, int k, long left) {
    if (left <= 0) {
      return 0;
    }
    if (k == cost.length) {
      return Long.MAX_VALUE;
    }
    long best = Long.MAX_VALUE;
    long most = worth[k] == 0 ? 0 : Math.min(limit[k], (left + worth[k] - 1) / worth[k]);
    for (int n = 0; n <= most; n++) {
      long rest = count(cost, worth, limit, k + 1, left - n * worth[k]);
      best = rest == Long.MAX_VALUE ? best : Math.min(best, n * cost[k] + rest);
    }
    return best;
  }
}
