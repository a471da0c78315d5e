package org.pourbook.cut;

import java.util.Arrays;

/**
 * A cut job in whole units, kerf included: a board of {@code size} holds pieces while their widths
 * add up to no more, since n pieces need n − 1 kerfs and {@code Σ(length + kerf) ≤ stock + kerf}
 * says the same.
 *
 * @param width length + kerf of each distinct length, longest first
 * @param demand pieces wanted of each
 * @param size stock + kerf of each stock length, longest first
 * @param cost of one stock piece in the smallest unit that all prices share
 * @param limit stock pieces there are; never more than there are pieces
 */
record CutModel(long[] width, int[] demand, long[] size, long[] cost, int[] limit) {

  int items() {
    return width.length;
  }

  int stocks() {
    return size.length;
  }

  int pieces() {
    int sum = 0;
    for (int d : demand) {
      sum = Math.addExact(sum, d);
    }
    return sum;
  }

  /** Returns the widths of all pieces wanted, added up. */
  long totalWidth() {
    long sum = 0;
    for (int i = 0; i < width.length; i++) {
      sum = Math.addExact(sum, Math.multiplyExact(width[i], (long) demand[i]));
    }
    return sum;
  }

  /** Returns whether the limit of a stock length can bind. */
  boolean isLimited(int stock) {
    return limit[stock] < pieces();
  }

  /** Returns the cost of so many boards of each stock length. */
  long costOf(int[] boards) {
    long sum = 0;
    for (int k = 0; k < size.length; k++) {
      sum = Math.addExact(sum, Math.multiplyExact(cost[k], (long) boards[k]));
    }
    return sum;
  }

  CutModel withDemand(int[] other) {
    return new CutModel(width, other, size, cost, limit);
  }

  /**
   * Returns the model where at least {@code lower} boards of each stock length are bought, which
   * are free from then on (stock {@code stocks() + k}), and at most {@code upper}.
   */
  CutModel between(int[] lower, int[] upper) {
    int n = stocks();
    long[] sizes = Arrays.copyOf(size, 2 * n);
    long[] costs = Arrays.copyOf(cost, 2 * n);
    int[] limits = Arrays.copyOf(lower, 2 * n);
    for (int k = 0; k < n; k++) {
      sizes[n + k] = size[k];
      limits[n + k] = lower[k];
      limits[k] = upper[k] - lower[k];
    }
    return new CutModel(width, demand, sizes, costs, limits);
  }

  CutModel withLimit(int[] other) {
    return new CutModel(width, demand, size, cost, other);
  }
}
