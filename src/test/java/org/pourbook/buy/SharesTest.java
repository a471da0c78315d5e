package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Money;

class SharesTest {

  private static List<Long> cents(long total, Double... weights) {
    return Shares.ofMoney(Money.ofCents(total), List.of(weights)).stream()
        .map(Money::cents)
        .toList();
  }

  @Test
  void likeWeightsGiveTheCentsLeftOverToTheFirst() {
    assertEquals(List.of(34L, 33L, 33L), cents(100, 1.0, 1.0, 1.0));
    assertEquals(List.of(34L, 34L, 33L), cents(101, 0.1, 0.1, 0.1));
  }

  @Test
  void theLargestRemainderTakesTheCentLeftOver() {
    // 100 x 1/6 = 16.67, x 2/6 = 33.33, x 3/6 = 50: the cent goes to the first.
    assertEquals(List.of(17L, 33L, 50L), cents(100, 1.0, 2.0, 3.0));
    // 100 x 0.15 = 15 exactly, 42.5 and 42.5: a tie, to the first of the two.
    assertEquals(List.of(15L, 43L, 42L), cents(100, 15.0, 42.5, 42.5));
  }

  @Test
  void withoutAnyWeightAllBearAlike() {
    assertEquals(List.of(4L, 3L), cents(7, 0.0, 0.0));
  }

  @Test
  void sharesAddUpAndAreWithinACentOfTheirPart() {
    SplittableRandom random = new SplittableRandom(20);
    for (int run = 0; run < 2000; run++) {
      List<Double> weights = new ArrayList<>();
      for (int i = random.nextInt(1, 8); i > 0; i--) {
        weights.add(random.nextInt(4) == 0 ? 0.0 : random.nextDouble() * 1000);
      }
      Money total = Money.ofCents(random.nextLong(1_000_000));
      List<Money> shares = Shares.ofMoney(total, weights);
      assertEquals(total, Money.sum(shares), "run " + run + " of seed 20");
      double sum = weights.stream().mapToDouble(w -> w).sum();
      for (int i = 0; i < shares.size() && sum > 0; i++) {
        double exact = total.cents() * weights.get(i) / sum;
        assertTrue(
            Math.abs(shares.get(i).cents() - exact) < 1 + 1e-6, "run " + run + " of seed 20");
      }
    }
  }

  @Test
  void orderUnitsAreSharedToSoManyDecimals() {
    assertEquals(
        List.of(new BigDecimal("0.667"), new BigDecimal("1.333")),
        Shares.of(new BigDecimal("2"), 3, List.of(1.0, 2.0)));
  }
}
