package org.pourbook.buy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.pourbook.buy.Quotation.LineKey;
import org.pourbook.buy.Quotation.Row;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/**
 * The lines of a request that must come from one supplier: jobs' shares of one shared delivery, and
 * boards with the splices that their lengths make necessary, where whoever sells the boards sells
 * the splices too.
 */
final class QuoteItems {

  /** Shares of one purchase. */
  private record Shared(Delivery delivery, MaterialKey key) {}

  private final Comparing quotes;
  private final List<LineKey> keys;
  private final List<List<LineKey>> items;

  QuoteItems(Comparing quotes, List<LineKey> keys) {
    this.quotes = quotes;
    this.keys = keys;
    DisjointSets joined = new DisjointSets(keys.size());
    Map<LineKey, Integer> at = new HashMap<>();
    IntStream.range(0, keys.size()).forEach(i -> at.put(keys.get(i), i));
    for (int i = 0; i < keys.size(); i++) {
      joinShares(keys.get(i), i, joined);
      Integer board = at.get(boardOf(keys.get(i)));
      if (board != null && soldTogether(keys.get(board), keys.get(i))) {
        joined.join(board, i);
      }
    }
    this.items =
        joined.groups().stream().map(group -> group.stream().map(keys::get).toList()).toList();
  }

  private void joinShares(LineKey key, int index, DisjointSets joined) {
    for (int supplier = 0; supplier < quotes.suppliers(); supplier++) {
      for (Row row : quotes.rows(supplier, key)) {
        if (row.delivery().isShared()) {
          joined.joinBy(new Shared(row.delivery(), key.key()), index);
        }
      }
    }
  }

  /** Returns the board that a line of splices is for, else the line itself. */
  private static LineKey boardOf(LineKey key) {
    return key.key().material().equals(MaterialKey.normal(Material.SPLICE.label()))
        ? new LineKey(key.job(), Material.FORM_BOARD.of(key.key().size()).normal())
        : key;
  }

  private boolean soldTogether(LineKey board, LineKey splices) {
    return IntStream.range(0, quotes.suppliers())
        .filter(supplier -> quotes.offers(supplier, board))
        .allMatch(supplier -> quotes.offers(supplier, splices));
  }

  /** Returns the lines in the order they were asked. */
  List<LineKey> keys() {
    return keys;
  }

  /** Returns the lines, item by item. */
  List<List<LineKey>> all() {
    return items;
  }

  Comparing quotes() {
    return quotes;
  }

  /** Returns the suppliers that offer every line of an item. */
  List<Integer> sellers(List<LineKey> item) {
    return IntStream.range(0, quotes.suppliers())
        .filter(supplier -> item.stream().allMatch(key -> quotes.offers(supplier, key)))
        .boxed()
        .toList();
  }
}
