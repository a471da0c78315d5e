package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Source;

/** A total handed out by weights, so that the shares add up to it exactly (BUY-4). */
final class Shares {

  /** Decimals of a unit to which remainders are compared, so that like weights tie. */
  private static final int REMAINDER_DECIMALS = 9;

  private Shares() {}

  /**
   * Returns shares to the cent; the cents left over go to the largest remainders, on a tie to the
   * first. Callers order the weights by job code.
   */
  @Source(
      rule = "BUY-4",
      says =
          "Jobs that share a delivery share packs, boards and bars; the cost goes back by need, the"
              + " cents left over to the largest remainders, then by job code",
      standing = COMMON_PRACTICE)
  static List<Money> ofMoney(Money total, List<Double> weights) {
    return of(total.amount(), 2, weights).stream().map(Money::rounded).toList();
  }

  /**
   * Returns shares to {@code scale} decimals. Where no weight is above zero, all weigh alike.
   *
   * @param total of at most {@code scale} decimals
   */
  static List<BigDecimal> of(BigDecimal total, int scale, List<Double> weights) {
    BigDecimal units = total.movePointRight(scale);
    List<BigDecimal> sound = sound(weights);
    BigDecimal sum = sound.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    List<BigDecimal> floors = new ArrayList<>();
    List<BigDecimal> remainders = new ArrayList<>();
    BigDecimal left = units;
    for (BigDecimal weight : sound) {
      BigDecimal exact =
          units.multiply(weight).divide(sum, REMAINDER_DECIMALS, RoundingMode.HALF_UP);
      BigDecimal floor = exact.setScale(0, RoundingMode.FLOOR);
      floors.add(floor);
      remainders.add(exact.subtract(floor));
      left = left.subtract(floor);
    }
    List<Integer> byRemainder =
        IntStream.range(0, sound.size())
            .boxed()
            .sorted(Comparator.comparing(remainders::get, Collections.reverseOrder()))
            .toList();
    for (int i = 0; i < left.intValueExact(); i++) {
      floors.set(byRemainder.get(i), floors.get(byRemainder.get(i)).add(BigDecimal.ONE));
    }
    return floors.stream().map(share -> share.movePointLeft(scale).setScale(scale)).toList();
  }

  private static List<BigDecimal> sound(List<Double> weights) {
    boolean any = weights.stream().anyMatch(weight -> weight > 0);
    return weights.stream()
        .map(weight -> any ? BigDecimal.valueOf(Math.max(0, weight)) : BigDecimal.ONE)
        .toList();
  }
}
