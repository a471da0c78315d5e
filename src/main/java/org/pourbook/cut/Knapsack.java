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
    Table table = new Table(sums, denseFrom);
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
      best[k] = table.worth[at];
      columns[k] = Column.of(k, table.counts(at, worth.length));
    }
    return new Best(best, columns, (long) table.parts * sums.length);
  }

  private static int floor(long[] sums, long value) {
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

  /** The dynamic program: one row a part, a part being one, two, four … pieces of a length. */
  private static final class Table {
    private final long[] sums;
    private final int denseFrom;
    private final long[] worth;
    private int parts;
    private int[] partItem = new int[16];
    private int[] partPieces = new int[16];
    private long[] partWidth = new long[16];
    private long[][] taken = new long[16][];

    Table(long[] sums, int denseFrom) {
      this.sums = sums;
      this.denseFrom = denseFrom;
      this.worth = new long[sums.length];
    }

    /** Adds any number of pieces: a part that may be taken again where it was taken. */
    void addUnlimited(int item, long width, long value) {
      long[] bits = newPart(item, 0, width);
      int dense = firstAtLeast(sums[denseFrom] + width);
      int before = 0;
      for (int at = firstAtLeast(width); at < dense; at++) {
        while (sums[before + 1] <= sums[at] - width) {
          before++;
        }
        take(bits, at, worth[before] + value);
      }
      int step = (int) width;
      for (int at = dense; at < sums.length; at++) {
        take(bits, at, worth[at - step] + value);
      }
    }

    void addLimited(int item, long width, long value, int limit) {
      int left = limit;
      for (int pieces = 1; left > 0; pieces *= 2) {
        int part = Math.min(pieces, left);
        addOnce(item, part, width * part, value * part);
        left -= part;
      }
    }

    private void addOnce(int item, int pieces, long width, long value) {
      long[] bits = newPart(item, pieces, width);
      int dense = firstAtLeast(sums[denseFrom] + width);
      int step = (int) width;
      for (int at = sums.length - 1; at >= dense; at--) {
        take(bits, at, worth[at - step] + value);
      }
      int before = dense - 1;
      int from = firstAtLeast(width);
      for (int at = dense - 1; at >= from; at--) {
        while (sums[before] > sums[at] - width) {
          before--;
        }
        take(bits, at, worth[before] + value);
      }
    }

    private void take(long[] bits, int at, long with) {
      if (with > worth[at]) {
        worth[at] = with;
        bits[at >> 6] |= 1L << at;
      }
    }

    private int firstAtLeast(long width) {
      int at = Arrays.binarySearch(sums, width);
      return at >= 0 ? at : -at - 1;
    }

    private long[] newPart(int item, int pieces, long width) {
      if (parts == partItem.length) {
        partItem = Arrays.copyOf(partItem, 2 * parts);
        partPieces = Arrays.copyOf(partPieces, 2 * parts);
        partWidth = Arrays.copyOf(partWidth, 2 * parts);
        taken = Arrays.copyOf(taken, 2 * parts);
      }
      partItem[parts] = item;
      partPieces[parts] = pieces;
      partWidth[parts] = width;
      taken[parts] = new long[(sums.length >> 6) + 1];
      return taken[parts++];
    }

    int[] counts(int at, int items) {
      int[] counts = new int[items];
      int sum = at;
      for (int part = parts - 1; part >= 0; part--) {
        boolean again = partPieces[part] == 0;
        while ((taken[part][sum >> 6] >> sum & 1) != 0) {
          counts[partItem[part]] += again ? 1 : partPieces[part];
          sum = floor(sums, sums[sum] - partWidth[part]);
          if (!again) {
            break;
          }
        }
      }
      return counts;
    }
  }
}
