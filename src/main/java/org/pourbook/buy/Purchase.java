package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.measure.Money;

/**
 * What is bought of one item for a lot.
 *
 * @param price the row at the tier reached; empty: no price
 * @param item the supplier's code, or what tells unpriced stock apart ({@code 16'-0"})
 * @param held own units in one order unit, in their base unit
 * @param needed how much of the need it meets, likewise
 * @param packs order units by delivery, first to last
 */
record Purchase(
    Optional<Price> price,
    String item,
    double held,
    String orderUnit,
    double needed,
    Map<Delivery, BigDecimal> packs) {
  Purchase {
    packs =
        packs.size() == 1 // by far the most, in a season's batch
            ? Map.copyOf(packs)
            : Collections.unmodifiableMap(new LinkedHashMap<>(packs));
  }

  BigDecimal totalPacks() {
    return packs.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Returns packs × price, rounded once; zero without a price. */
  Money amount() {
    return price.map(row -> Money.ofPrice(totalPacks(), row.price())).orElse(Money.ZERO);
  }

  /** Returns the amount by delivery, adding up to {@link #amount}. */
  Map<Delivery, Money> amounts() {
    List<Double> weights = packs.values().stream().map(BigDecimal::doubleValue).toList();
    List<Money> shares = Shares.ofMoney(amount(), weights);
    Map<Delivery, Money> amounts = new LinkedHashMap<>();
    packs.keySet().forEach(delivery -> amounts.put(delivery, shares.get(amounts.size())));
    return amounts;
  }
}
