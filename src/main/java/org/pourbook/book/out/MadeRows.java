package org.pourbook.book.out;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * The rows of a sheet, several a record, each made when it is asked for: those of a season would
 * fill much of the memory. Threads may share it.
 */
final class MadeRows<T, U, R> extends AbstractList<R> implements RandomAccess {

  private final List<T> records;
  private final Function<T, List<U>> itemsOf;
  private final BiFunction<T, U, R> row;

  /** Index of the first row of each record, and after them how many rows there are. */
  private final int[] starts;

  /** Rows are mostly asked for one after the other. */
  private volatile Items<U> last = new Items<>(-1, List.of());

  private record Items<U>(int record, List<U> items) {}

  private MadeRows(List<T> records, Function<T, List<U>> itemsOf, BiFunction<T, U, R> row) {
    this.records = List.copyOf(records);
    this.itemsOf = itemsOf;
    this.row = row;
    this.starts = new int[records.size() + 1];
    for (int i = 0; i < records.size(); i++) {
      starts[i + 1] = starts[i] + itemsOf.apply(records.get(i)).size();
    }
  }

  /**
   * Returns a row for each item of each record.
   *
   * @param itemsOf must give the same items each time
   */
  static <T, U, R> List<R> of(
      List<T> records, Function<T, List<U>> itemsOf, BiFunction<T, U, R> row) {
    return new MadeRows<>(records, itemsOf, row);
  }

  @Override
  public R get(int index) {
    Items<U> some = last;
    int record = some.record();
    if (record < 0 || index < starts[record] || index >= starts[record + 1]) {
      record = recordOf(index);
      some = new Items<>(record, itemsOf.apply(records.get(record)));
      last = some;
    }
    return row.apply(records.get(record), some.items().get(index - starts[record]));
  }

  /** Returns the last record that begins at the index or before: one without items is skipped. */
  private int recordOf(int index) {
    if (index < 0 || index >= size()) {
      throw new IndexOutOfBoundsException(index);
    }
    int low = 0;
    int high = records.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (starts[middle] <= index) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  @Override
  public int size() {
    return starts[starts.length - 1];
  }
}
