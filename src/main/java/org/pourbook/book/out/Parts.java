package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * How the records of a table that is longer than a sheet are divided between sheets: each part is
 * as long as a sheet may be, and groups of records stay together.
 *
 * @param starts index of the first record of each part
 */
record Parts(List<Integer> starts) {

  /** Rows of a sheet (ECMA-376 SpreadsheetML, as spreadsheet programs keep it). */
  static final int MOST_ROWS = 1_048_576;

  static final Parts ONE = new Parts(List.of(0));

  Parts {
    starts = List.copyOf(starts);
  }

  /**
   * Returns the parts of so many records.
   *
   * @param most records of one part
   * @param begins whether a record, by its index, begins a group
   * @throws IllegalArgumentException if a group is longer than a part
   */
  static Parts of(int records, int most, IntPredicate begins) {
    List<Integer> starts = new ArrayList<>(List.of(0));
    int start = 0;
    while (records - start > most) {
      int next = start + most;
      while (next > start && !begins.test(next)) {
        next--;
      }
      if (next == start) {
        throw new IllegalArgumentException("one group has more rows than a sheet");
      }
      starts.add(next);
      start = next;
    }
    return new Parts(starts);
  }

  int count() {
    return starts.size();
  }

  /** Returns the number of the part that holds a record, from 0. */
  int partOf(int index) {
    int found = Collections.binarySearch(starts, index);
    return found >= 0 ? found : -found - 2;
  }

  /** Returns a record's index within its part. */
  int within(int index) {
    return index - starts.get(partOf(index));
  }

  /** Returns the index after the last record of a part, of so many records in all. */
  int end(int part, int records) {
    return part + 1 < starts.size() ? starts.get(part + 1) : records;
  }
}
