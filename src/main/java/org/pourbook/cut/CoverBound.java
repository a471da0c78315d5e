package org.pourbook.cut;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;

/**
 * The least cost of stock whose worth adds up to the worth of all pieces. It bounds every plan from
 * below, whatever worth each length is given, as long as no board can hold more than its own.
 */
final class CoverBound {
  private CoverBound() {}

  /**
   * Returns a lower bound of the cost of every plan, in exact integers; empty where all the stock
   * there is cannot do it, which is certain.
   *
   * @param worth most that can be cut from a piece of each stock length
   * @param total worth of all pieces wanted
   */
  static OptionalLong of(CutModel model, long[] worth, BigInteger total) {
    BigInteger left = total;
    long cost = 0;
    for (int k : bestFirst(model, worth)) {
      if (left.signum() <= 0) {
        break;
      }
      BigInteger each = BigInteger.valueOf(worth[k]);
      BigInteger all = each.multiply(BigInteger.valueOf(model.limit()[k]));
      if (all.compareTo(left) >= 0) {
        return OptionalLong.of(Math.addExact(cost, ceil(left, model.cost()[k], each)));
      }
      cost = Math.addExact(cost, Math.multiplyExact(model.cost()[k], (long) model.limit()[k]));
      left = left.subtract(all);
    }
    return left.signum() <= 0 ? OptionalLong.of(cost) : OptionalLong.empty();
  }

  /** Returns the same bound in floating point, not rounded up; infinite where there is none. */
  static double nearly(CutModel model, long[] worth, double total) {
    double left = total;
    double cost = 0;
    for (int k : bestFirst(model, worth)) {
      double boards = Math.min(model.limit()[k], left / worth[k]);
      cost += boards * model.cost()[k];
      left -= boards * worth[k];
    }
    return left > 1e-9 * total ? Double.POSITIVE_INFINITY : cost;
  }

  /** Returns the bound by length alone: no board holds more than its own length. */
  static OptionalLong byLength(CutModel model) {
    return of(model, model.size(), BigInteger.valueOf(model.totalWidth()));
  }

  private static List<Integer> bestFirst(CutModel model, long[] worth) {
    return IntStream.range(0, model.stocks())
        .filter(k -> worth[k] > 0)
        .boxed()
        .sorted(byRate(model, worth))
        .toList();
  }

  private static long ceil(BigInteger left, long cost, BigInteger each) {
    BigInteger[] parts = left.multiply(BigInteger.valueOf(cost)).divideAndRemainder(each);
    return parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
  }

  /** Least cost for its worth first, compared exactly. */
  static Comparator<Integer> byRate(CutModel model, long[] worth) {
    Comparator<Integer> rate =
        (a, b) ->
            BigInteger.valueOf(model.cost()[a])
                .multiply(BigInteger.valueOf(worth[b]))
                .compareTo(
                    BigInteger.valueOf(model.cost()[b]).multiply(BigInteger.valueOf(worth[a])));
    return rate.thenComparing(Comparator.naturalOrder());
  }
}
