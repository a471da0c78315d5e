package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PurchasePairsTest {

  /** Two proofs and a free offcut, against looking at every purchase. */
  @Test
  void theCheapestIsThatOfLookingAtEveryPurchase() {
    int found = 0;
    int excludedByTheSecond = 0;
    for (long seed = 0; seed < 2_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      long[] cost = {2 + random.nextInt(12), 0, 2 + random.nextInt(12)};
      int[] limit = {random.nextInt(12), random.nextInt(3), random.nextInt(12)};
      CutModel model = new CutModel(new long[] {1}, new int[] {99}, cost, cost, limit);
      List<Relaxation.Certificate> proofs = List.of(proof(random), proof(random));
      long least = Math.min(60, least(model, proofs));
      PurchasePairs pairs = PurchasePairs.of(model).orElseThrow();
      proofs.forEach(pairs::exclude);
      Optional<int[]> boards = pairs.cheapest(0, 60);
      long more = pairs.cheapest(least + 1, 70).map(model::costOf).orElse(70L);
      assertEquals(Math.min(70, least(model, proofs, least + 1)), more, "seed " + seed);
      assertEquals(least, boards.map(model::costOf).orElse(60L), "seed " + seed);
      found += boards.isPresent() ? 1 : 0;
      excludedByTheSecond += least > Math.min(60, least(model, proofs.subList(0, 1))) ? 1 : 0;
    }
    assertTrue(found > 500, "found " + found);
    assertTrue(excludedByTheSecond > 200, "excluded by the second " + excludedByTheSecond);
  }

  /** Prices by weight share no cent: there are too many totals to look at each. */
  @Test
  void pricesInMicrosAreFoundAtOnce() {
    long[] cost = {22_101_237, 11_252_413};
    int[] limit = {10_000, 10_000};
    CutModel model = new CutModel(new long[] {1}, new int[] {10_000}, cost, cost, limit);
    PurchasePairs pairs = PurchasePairs.of(model).orElseThrow();
    pairs.exclude(new Relaxation.Certificate(new long[] {2, 1}, BigInteger.valueOf(10_001)));
    // 5,000 long ones and a short one; 5,001 long ones cost more.
    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () -> assertArrayEquals(new int[] {5_000, 1}, pairs.cheapest(0, 1L << 50).orElseThrow()));
  }

  @Test
  void moreOrFewerPricedLengthsAreNoPair() {
    long[] size = {3, 2, 1};
    int[] limit = {9, 9, 9};
    for (long[] cost : List.of(new long[] {3, 2, 1}, new long[] {3, 0, 0})) {
      CutModel model = new CutModel(new long[] {1}, new int[] {9}, size, cost, limit);
      assertTrue(PurchasePairs.of(model).isEmpty());
    }
  }

  /** Worth a board is rounded up and worth needed down, so that no purchase is excluded by it. */
  @Test
  void aCoarserProofExcludesNoMore() {
    Relaxation.Certificate exact =
        new Relaxation.Certificate(new long[] {17, 16, 0}, BigInteger.valueOf(1023));
    Relaxation.Certificate coarse = exact.ofBits(6);
    assertArrayEquals(new long[] {2, 1, 0}, coarse.stockWorth());
    assertEquals(BigInteger.valueOf(63), coarse.total());
    assertArrayEquals(exact.stockWorth(), exact.ofBits(10).stockWorth());
  }

  private static Relaxation.Certificate proof(SplittableRandom random) {
    long[] worth = {random.nextInt(15), random.nextInt(15), random.nextInt(15)};
    return new Relaxation.Certificate(worth, BigInteger.valueOf(random.nextInt(100)));
  }

  private static long least(CutModel model, List<Relaxation.Certificate> proofs) {
    return least(model, proofs, 0);
  }

  private static long least(CutModel model, List<Relaxation.Certificate> proofs, long from) {
    long least = Long.MAX_VALUE;
    for (int a = 0; a <= model.limit()[0]; a++) {
      for (int b = 0; b <= model.limit()[2]; b++) {
        int[] boards = {a, model.limit()[1], b};
        boolean enough = true;
        for (Relaxation.Certificate proof : proofs) {
          long worth = 0;
          for (int k = 0; k < boards.length; k++) {
            worth += proof.stockWorth()[k] * boards[k];
          }
          enough &= worth >= proof.total().longValueExact();
        }
        if (enough && model.costOf(boards) >= from) {
          least = Math.min(least, model.costOf(boards));
        }
      }
    }
    return least;
  }
}
