package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/** What jobs save by sharing an order (BUY-4). */
final class SharedSaving {

  private final Supplier supplier;
  private final Alone alone;

  /** What each job would buy alone, by its code. */
  private final Map<String, List<Lot>> lots = new HashMap<>();

  /** What is on hand of a material in a size for the jobs that have not had their turn. */
  private final Map<MaterialKey, List<OnHand>> left = new HashMap<>();

  private SharedSaving(OrderDraft draft, Supplier supplier, Alone alone) {
    this.supplier = supplier;
    this.alone = alone;
    Set<Lot> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    for (OrderDraft.Good good : draft.goods()) {
      if (seen.add(good.lot())) {
        good.lot().byJob().forEach((job, portions) -> add(job, good.lot().alone(portions)));
      }
    }
  }

  private void add(String job, Lot lot) {
    lots.computeIfAbsent(job, k -> new ArrayList<>()).add(lot);
  }

  /**
   * Returns how much more its jobs would pay for goods, delivery and minimums if each ordered alone
   * from the same supplier; empty where the order is not shared or one job could not.
   *
   * @param ways how a job would buy alone
   */
  static Optional<Money> of(OrderDraft draft, Alone ways) {
    if (draft.supplier().isEmpty() || draft.jobs().size() < 2) {
      return Optional.empty();
    }
    SharedSaving saving = new SharedSaving(draft, draft.supplier().get(), ways);
    Money apart = Money.ZERO;
    for (Job job : draft.jobs()) {
      Optional<Money> alone = saving.alone(job);
      if (alone.isEmpty()) {
        return Optional.empty();
      }
      apart = apart.plus(alone.get());
    }
    return Optional.of(apart.minus(draft.goodsAmount().plus(draft.feesAmount())));
  }

  private Optional<Money> alone(Job job) {
    Money goods = Money.ZERO;
    for (Lot lot : lots.getOrDefault(job.code(), List.of())) {
      MaterialKey key = lot.key().normal();
      List<OnHand> there = left.computeIfAbsent(key, k -> Yard.of(alone.onHand(), k));
      Optional<Option> option =
          alone.ways().apply(lot, there).stream()
              .filter(way -> way.supplier().equals(Optional.of(supplier)))
              .findFirst();
      if (option.isEmpty()) {
        return Optional.empty();
      }
      left.put(key, Yard.without(there, List.of(option.get())));
      goods = goods.plus(option.get().goods());
    }
    Money fees =
        OrderFees.delivery(supplier, goods, true).plus(OrderFees.underMinimum(supplier, goods));
    return Optional.of(goods.plus(fees));
  }
}
