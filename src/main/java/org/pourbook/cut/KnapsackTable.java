package org.pourbook.cut;

import java.util.Arrays;

/**
 * The dynamic program of {@link Knapsack}: one row a part, a part being one, two, four … pieces of
 * a length.
 */
final class KnapsackTable {
  private final long[] sums;
  private final int denseFrom;
  private final long[] worth;
  private int parts;
  private int[] partItem = new int[16];
  private int[] partPieces = new int[16];
  private long[] partWidth = new long[16];
  private long[][] taken = new long[16][];

  KnapsackTable(long[] sums, int denseFrom) {
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

  long worth(int at) {
    return worth[at];
  }

  /** Returns how many cells were filled. */
  long steps() {
    return (long) parts * sums.length;
  }

  /** Returns the pieces of each item that add up to the best worth within a sum. */
  int[] counts(int at, int items) {
    int[] counts = new int[items];
    int sum = at;
    for (int part = parts - 1; part >= 0; part--) {
      boolean again = partPieces[part] == 0;
      while ((taken[part][sum >> 6] >> sum & 1) != 0) {
        counts[partItem[part]] += again ? 1 : partPieces[part];
        sum = Knapsack.floor(sums, sums[sum] - partWidth[part]);
        if (!again) {
          break;
        }
      }
    }
    return counts;
  }
}
