package org.pourbook.book.out;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Where the rows of each key stand in a sheet: each key's rows are next to one another. */
final class Spans<K> {

  private final Map<K, Span> spans = new HashMap<>();

  private Spans() {}

  /**
   * Returns where each key stands in a table of these records.
   *
   * @throws IllegalArgumentException if a key's records are apart
   */
  static <R, K> Spans<K> of(List<R> rows, Function<R, K> keyOf) {
    Spans<K> all = new Spans<>();
    for (int i = 0; i < rows.size(); i++) {
      all.add(keyOf.apply(rows.get(i)), SheetSpec.FIRST_ROW + i);
    }
    return all;
  }

  private void add(K key, int row) {
    Span span = spans.get(key);
    if (span != null && span.last() != row - 1) {
      throw new IllegalArgumentException("rows of " + key + " are apart");
    }
    spans.put(key, new Span(span == null ? row : span.first(), row));
  }

  Optional<Span> of(K key) {
    return Optional.ofNullable(spans.get(key));
  }
}
