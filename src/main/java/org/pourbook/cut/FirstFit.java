package org.pourbook.cut;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * First-fit decreasing over priced stock lengths: the next board is filled with the longest pieces
 * that still go in, for each stock length, and the one of least cost for the width used is taken.
 */
final class FirstFit {
  private FirstFit() {}

  /** Returns the better of both ways to choose the next board; empty where both run out. */
  static Optional<Packing> pack(CutModel model) {
    return Packing.better(pack(model, List.of(), false), pack(model, List.of(), true));
  }

  /**
   * Returns the packing that completes {@code fixed}; empty where the stock runs out.
   *
   * @param longestFirst only boards that hold the longest piece left are considered, so that scarce
   *     long stock is not spent on short pieces
   */
  static Optional<Packing> pack(CutModel model, List<Packing.Lot> fixed, boolean longestFirst) {
    int[] wanted = model.demand().clone();
    int[] left = model.limit().clone();
    List<Packing.Lot> lots = new ArrayList<>(fixed);
    for (Packing.Lot lot : fixed) {
      lot.column().takeFrom(wanted, lot.times());
      left[lot.column().stock()] -= lot.times();
    }
    int longest = 0;
    while (true) {
      while (longest < wanted.length && wanted[longest] == 0) {
        longest++;
      }
      if (longest == wanted.length) {
        return Optional.of(Packing.of(model, lots));
      }
      Column next = cheapest(model, wanted, left, longestFirst ? model.width()[longest] : 0);
      if (next == null) {
        return Optional.empty();
      }
      int times = Math.min(left[next.stock()], next.timesWithin(wanted));
      next.takeFrom(wanted, times);
      left[next.stock()] -= times;
      lots.add(new Packing.Lot(next, times));
    }
  }

  private static @Nullable Column cheapest(CutModel model, int[] wanted, int[] left, long atLeast) {
    Column best = null;
    long bestUsed = 0;
    for (int k = 0; k < model.stocks(); k++) {
      if (left[k] == 0 || model.size()[k] < atLeast) {
        continue;
      }
      Column filled = fill(model, wanted, k);
      long used = filled.used(model);
      if (used == 0) {
        continue;
      }
      if (best == null || costsLess(model.cost()[k], used, model.cost()[best.stock()], bestUsed)) {
        best = filled;
        bestUsed = used;
      }
    }
    return best;
  }

  /** Compares cost ÷ used exactly; of equals the one that uses more is better. */
  static boolean costsLess(long cost, long used, long otherCost, long otherUsed) {
    int order =
        BigInteger.valueOf(cost)
            .multiply(BigInteger.valueOf(otherUsed))
            .compareTo(BigInteger.valueOf(otherCost).multiply(BigInteger.valueOf(used)));
    return order < 0 || (order == 0 && used > otherUsed);
  }

  private static Column fill(CutModel model, int[] wanted, int stock) {
    int[] counts = new int[wanted.length];
    long room = model.size()[stock];
    for (int i = 0; i < wanted.length; i++) {
      int count = (int) Math.min(wanted[i], room / model.width()[i]);
      counts[i] = count;
      room -= count * model.width()[i];
    }
    return Column.of(stock, counts);
  }
}
