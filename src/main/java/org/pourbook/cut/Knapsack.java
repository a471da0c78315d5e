package org.pourbook.cut;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * The best that can be cut from a board of every stock length at once, for a worth given to each
 * length: a bounded knapsack over the sums that pieces can add up to. No more of a length is cut
 * than is wanted, which makes bounds stronger than those of patterns without that limit.
 */
final class Knapsack {
  /** Sums of widths that pieces can add up to, ascending from zero. */
  private final long[] sums;

  /** From here on sums go up by one, so that the one below by a width is found by subtracting. */
  private final int denseFrom;

  private Knapsack(long[] sums) {
    this.sums = sums;
    int at = sums.length - 1;
    while (at > 0 && sums[at - 1] == sums[at] - 1) {
      at--;
    }
    this.denseFrom = at;
  }

  /** Returns the knapsack of a model; empty where it would have more than {@code most} sums. */
  static Optional<Knapsack> of(CutModel model, int most) {
    long longest = Arrays.stream(model.size()).max().orElse(0);
    long[] sums = {0};
    for (int i = 0; i < model.items(); i++) {
      long copies = Math.min(model.demand()[i], longest / model.width()[i]);
      for (long c = 0; c < copies; c++) {
        int before = sums.length;
        sums = withOneMore(sums, model.width()[i], longest);
        if (sums.length > most) {
          return Optional.empty();
        }
        if (sums.length == before) {
          break;
        }
      }
    }
    return Optional.of(new Knapsack(sums));
  }

  /**
   * Returns the knapsack of a model with pieces of width 1, which add up to any sum; empty where it
   * would have more than {@code most}.
   */
  static Optional<Knapsack> ofGrains(CutModel model, int most) {
    long longest = Arrays.stream(model.size()).max().orElse(0);
    return longest >= most
        ? Optional.empty()
        : Optional.of(new Knapsack(LongStream.rangeClosed(0, longest).toArray()));
  }

  /**
   * What {@link #best} found: the most worth of each stock length, and the columns that reach it.
   */
  record Best(long[] worth, Column[] columns, long steps) {}

  /**
   * Returns the best column of each stock length; equal ones are told apart the same way always.
   */
  Best best(CutModel model, long[] worth) {
    int[] demand = model.demand();
    KnapsackTable table = new KnapsackTable(sums, denseFrom);
    long longest = sums[sums.length - 1];
    for (int i = 0; i < worth.length; i++) {
      if (worth[i] > 0 && demand[i] > 0) {
        long most = longest / model.width()[i];
        if (demand[i] >= most) {
          table.addUnlimited(i, model.width()[i], worth[i]);
        } else {
          table.addLimited(i, model.width()[i], worth[i], demand[i]);
        }
      }
    }
    long[] best = new long[model.stocks()];
    Column[] columns = new Column[model.stocks()];
    for (int k = 0; k < best.length; k++) {
      int at = floor(sums, model.size()[k]);
      best[k] = table.worth(at);
      columns[k] = Column.of(k, table.counts(at, worth.length));
    }
    return new Best(best, columns, table.steps());
  }

  /** Returns the place of the largest sum that is no larger than the value. */
  static int floor(long[] sums, long value) {
    int at = Arrays.binarySearch(sums, value);
    return at >= 0 ? at : -at - 2;
  }

  private static long[] withOneMore(long[] sums, long width, long longest) {
    long[] merged = new long[2 * sums.length];
    int n = 0;
    int a = 0;
    int b = 0;
    while (a < sums.length || b < sums.length) {
      long plain = a < sums.length ? sums[a] : Long.MAX_VALUE;
      long more = b < sums.length ? sums[b] + width : Long.MAX_VALUE;
      long next = Math.min(plain, more);
      if (next > longest) {
        break;
      }
      merged[n++] = next;
      a += plain == next ? 1 : 0;
      b += more == next ? 1 : 0;
    }
    return Arrays.copyOf(merged, n);
  }
}
