package org.pourbook.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Completes a packing board by board, each filled as full as it can be: slower than {@link
 * FirstFit}, and better where no more than some dozen boards are left.
 */
final class BestFill {

  /** Boards of the longest stock that may be left. */
  static final int MOST_BOARDS = 40;

  /** Weights of a piece's length, and what a piece as long as the longest stock weighs besides. */
  private static final long WEIGHT = 1024;

  private BestFill() {}

  /**
   * Returns the packing that completes {@code fixed}; empty where the stock runs out or steps do.
   *
   * @param favour what a piece as long as the longest stock weighs besides, in 1024ths: long pieces
   *     are hard to place, so they go first
   */
  static Optional<Packing> pack(
      CutModel model, Workshop workshop, List<Packing.Lot> fixed, long favour) {
    int[] wanted = model.demand().clone();
    int[] left = model.limit().clone();
    List<Packing.Lot> lots = new ArrayList<>(fixed);
    for (Packing.Lot lot : fixed) {
      lot.column().takeFrom(wanted, lot.times());
      left[lot.column().stock()] -= lot.times();
    }
    long[] worth = worth(model, favour);
    while (isAny(wanted)) {
      Column next = fullest(model, workshop, wanted, left, worth);
      if (next == null) {
        return Optional.empty();
      }
      int times = Math.min(left[next.stock()], next.timesWithin(wanted));
      next.takeFrom(wanted, times);
      left[next.stock()] -= times;
      lots.add(new Packing.Lot(next, times));
    }
    return Optional.of(Packing.of(model, lots));
  }

  private static long[] worth(CutModel model, long favour) {
    long longest = 1;
    for (long size : model.size()) {
      longest = Math.max(longest, size);
    }
    long[] worth = new long[model.items()];
    for (int i = 0; i < worth.length; i++) {
      long share = Math.multiplyExact(favour, model.width()[i]) / longest;
      worth[i] = Math.multiplyExact(model.width()[i], WEIGHT + share);
    }
    return worth;
  }

  private static boolean isAny(int[] wanted) {
    for (int w : wanted) {
      if (w > 0) {
        return true;
      }
    }
    return false;
  }

  private static @Nullable Column fullest(
      CutModel model, Workshop workshop, int[] wanted, int[] left, long[] worth) {
    if (workshop.steps().areSpent()) {
      return null;
    }
    Knapsack.Best filled = workshop.knapsack().best(model.withDemand(wanted), worth);
    workshop.steps().take(filled.steps());
    Column best = null;
    long bestUsed = 0;
    for (Column column : filled.columns()) {
      int k = column.stock();
      long used = column.used(model);
      if (left[k] > 0
          && used > 0
          && (best == null
              || FirstFit.costsLess(model.cost()[k], used, model.cost()[best.stock()], bestUsed))) {
        best = column;
        bestUsed = used;
      }
    }
    return best;
  }
}
