package org.pourbook.buy;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;

/** What jobs save by sharing an order (BUY-4). */
final class SharedSaving {

  private final OrderDraft draft;
  private final Supplier supplier;
  private final Function<Lot, List<Option>> options;

  private SharedSaving(OrderDraft draft, Supplier supplier, Function<Lot, List<Option>> options) {
    this.draft = draft;
    this.supplier = supplier;
    this.options = options;
  }

  /**
   * Returns how much more its jobs would pay for goods, delivery and minimums if each ordered alone
   * from the same supplier; empty where the order is not shared or one job could not.
   *
   * @param options the ways to meet a lot
   */
  static Optional<Money> of(OrderDraft draft, Function<Lot, List<Option>> options) {
    if (draft.supplier().isEmpty() || draft.jobs().size() < 2) {
      return Optional.empty();
    }
    SharedSaving saving = new SharedSaving(draft, draft.supplier().get(), options);
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
    Set<Lot> lots = Collections.newSetFromMap(new IdentityHashMap<>());
    draft.goods().forEach(good -> lots.add(good.lot()));
    lots.removeIf(lot -> lot.portionsOf(job).isEmpty());
    Money goods = Money.ZERO;
    for (Lot lot : lots) {
      Optional<Option> option =
          options.apply(lot.ofJob(job)).stream()
              .filter(way -> way.supplier().equals(Optional.of(supplier)))
              .findFirst();
      if (option.isEmpty()) {
        return Optional.empty();
      }
      goods = goods.plus(option.get().goods());
    }
    Money fees =
        OrderFees.delivery(supplier, goods, true).plus(OrderFees.underMinimum(supplier, goods));
    return Optional.of(goods.plus(fees));
  }
}
