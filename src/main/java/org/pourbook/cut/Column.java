package org.pourbook.cut;

import java.util.Comparator;

/**
 * One way to cut one stock length.
 *
 * @param stock index of the stock length
 * @param item indices of the distinct lengths cut, ascending (longest first)
 * @param count pieces of each, above zero
 */
record Column(int stock, int[] item, int[] count) {

  /** By stock length, longest first, then by cuts, most of the longest first. */
  static final Comparator<Column> ORDER =
      Comparator.comparingInt(Column::stock).thenComparing(Column::compareCuts);

  /** Returns the column that cuts {@code counts[i]} pieces of each item i. */
  static Column of(int stock, int[] counts) {
    int n = 0;
    for (int c : counts) {
      n += c > 0 ? 1 : 0;
    }
    int[] item = new int[n];
    int[] count = new int[n];
    int at = 0;
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        item[at] = i;
        count[at++] = counts[i];
      }
    }
    return new Column(stock, item, count);
  }

  Column ofStock(int other) {
    return new Column(other, item, count);
  }

  /** Returns the column without pieces that are not wanted. */
  Column within(int[] wanted) {
    int[] counts = new int[wanted.length];
    for (int at = 0; at < item.length; at++) {
      counts[item[at]] = Math.min(count[at], wanted[item[at]]);
    }
    return of(stock, counts);
  }

  long used(CutModel model) {
    long sum = 0;
    for (int at = 0; at < item.length; at++) {
      sum += model.width()[item[at]] * count[at];
    }
    return sum;
  }

  /** Returns how often the column can be cut before more than {@code wanted} comes of an item. */
  int timesWithin(int[] wanted) {
    int times = Integer.MAX_VALUE;
    for (int at = 0; at < item.length; at++) {
      times = Math.min(times, wanted[item[at]] / count[at]);
    }
    return times;
  }

  void takeFrom(int[] wanted, int times) {
    for (int at = 0; at < item.length; at++) {
      wanted[item[at]] -= count[at] * times;
    }
  }

  private static int compareCuts(Column a, Column b) {
    for (int at = 0; at < Math.min(a.item.length, b.item.length); at++) {
      if (a.item[at] != b.item[at]) {
        return Integer.compare(a.item[at], b.item[at]);
      }
      if (a.count[at] != b.count[at]) {
        return Integer.compare(b.count[at], a.count[at]);
      }
    }
    return Integer.compare(b.item.length, a.item.length);
  }
}
