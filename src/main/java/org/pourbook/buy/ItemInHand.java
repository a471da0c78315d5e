package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.measure.Money;

/** What an earlier order brings of one item, by job, and how much of it is still needed. */
final class ItemInHand {

  /** What tells items apart; of unpriced stock {@code item} is its length. */
  record Id(String supplier, String item, String orderUnit, BigDecimal held) {
    static Id of(String supplier, String item, String orderUnit, double held) {
      return new Id(
          supplier, item, orderUnit, BigDecimal.valueOf(held).setScale(6, RoundingMode.HALF_UP));
    }
  }

  private final InHand first;
  private final double held;
  private final Map<String, BigDecimal> packs = new TreeMap<>();
  private final Map<String, Money> amounts = new TreeMap<>();
  private BigDecimal kept = BigDecimal.ZERO;

  /**
   * Returns an item of which nothing is there yet.
   *
   * @param held own units in one order unit, in their base unit
   */
  ItemInHand(InHand first, double held) {
    this.first = first;
    this.held = held;
  }

  void add(InHand row) {
    packs.merge(row.job(), row.packs(), BigDecimal::add);
    row.amount().ifPresent(amount -> amounts.merge(row.job(), amount, Money::plus));
    keepAll();
  }

  InHand first() {
    return first;
  }

  Id id() {
    return Id.of(first.supplier(), first.item(), first.orderUnit(), held);
  }

  double held() {
    return held;
  }

  /** Returns the price of one own unit in its base unit; 0 where none is known. */
  double perBaseUnit() {
    return first.unitPrice().map(price -> price.doubleValue() / held).orElse(0.0);
  }

  BigDecimal packs() {
    return packs.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  BigDecimal packsOf(String job) {
    return packs.getOrDefault(job, BigDecimal.ZERO);
  }

  Optional<Money> amountOf(String job) {
    return Optional.ofNullable(amounts.get(job));
  }

  /** Returns whether a job has or has paid for some of it. */
  boolean isOf(String job) {
    return packs.containsKey(job);
  }

  BigDecimal kept() {
    return kept;
  }

  void keepAll() {
    kept = packs();
  }

  /** Keeps all but so many order units. */
  void giveBack(BigDecimal back) {
    kept = packs().subtract(back.min(packs()).max(BigDecimal.ZERO));
  }
}
