package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.takeoff.Source;

/**
 * An item of a supplier with its price tiers.
 *
 * @param tiers rows of the price book, by From ascending; at least one
 */
record Offer(List<Price> tiers) {
  Offer {
    tiers = List.copyOf(tiers);
    if (tiers.isEmpty()) {
      throw new IllegalArgumentException("an offer has a price");
    }
  }

  /** What tells items apart; a row without an item code is told by all that it sells. */
  private record ItemKey(String supplier, String item, Object what) {}

  /** Returns the offers that rows of the price book make, in their order. */
  static List<Offer> of(List<Price> rows) {
    Map<ItemKey, List<Price>> items = new LinkedHashMap<>();
    for (Price row : rows) {
      items.computeIfAbsent(keyOf(row), k -> new ArrayList<>()).add(row);
    }
    return items.values().stream()
        .map(tiers -> tiers.stream().sorted(Comparator.comparing(Price::from)).toList())
        .map(Offer::new)
        .toList();
  }

  private static ItemKey keyOf(Price row) {
    Object what =
        List.of(
            row.key().normal(),
            row.item().isEmpty() ? row.description() : "",
            row.orderUnit(),
            row.pack().stripTrailingZeros(),
            row.stockLength(),
            row.sheetLength(),
            row.sheetWidth());
    return new ItemKey(row.supplier(), row.item(), what);
  }

  /** Returns the row whose price holds without any quantity reached. */
  Price first() {
    return tiers.get(0);
  }

  String supplier() {
    return first().supplier();
  }

  /** Returns the row whose price holds for so many order units (BUY-2); below all, the first. */
  @Source(
      rule = "BUY-2",
      says = "The price is that of the tier which the order units reach",
      standing = COMMON_PRACTICE)
  Price at(BigDecimal packs) {
    Price reached = first();
    for (Price tier : tiers) {
      if (tier.from().compareTo(packs) <= 0) {
        reached = tier;
      }
    }
    return reached;
  }

  /** Returns the cheaper row that holds from more order units than these, if there is one. */
  Optional<Price> next(BigDecimal packs) {
    return tiers.stream().filter(tier -> tier.from().compareTo(packs) > 0).findFirst();
  }

  /** Returns whether so many order units are in stock. */
  boolean inStock(BigDecimal packs) {
    return first().inStock().isEmpty()
        || packs.compareTo(BigDecimal.valueOf(first().inStock().getAsInt())) <= 0;
  }
}
