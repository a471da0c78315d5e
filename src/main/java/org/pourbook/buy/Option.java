package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.Money;

/**
 * One supplier's way to meet a lot whole.
 *
 * @param supplier empty where nobody prices it
 * @param plan of a cut-planned material
 * @param pours of ready-mixed concrete
 * @param cautions told to every job of the lot when this option is chosen
 */
record Option(
    Optional<Supplier> supplier,
    List<Purchase> purchases,
    Optional<CutResult.Planned> plan,
    List<PourOrder> pours,
    List<Told> cautions) {
  Option {
    purchases = List.copyOf(purchases);
    pours = List.copyOf(pours);
    cautions = List.copyOf(cautions);
  }

  static Option of(Supplier supplier, List<Purchase> purchases, List<Told> cautions) {
    return new Option(Optional.of(supplier), purchases, Optional.empty(), List.of(), cautions);
  }

  /** Returns what is bought where nobody prices the material. */
  static Option unpriced(List<Purchase> purchases) {
    return new Option(Optional.empty(), purchases, Optional.empty(), List.of(), List.of());
  }

  /** Returns this option with one caution more. */
  Option with(Told caution) {
    List<Told> all = new ArrayList<>(cautions);
    all.add(caution);
    return new Option(supplier, purchases, plan, pours, all);
  }

  /** Returns the option whose goods cost least; empty where none has a price. */
  static Optional<Option> cheapest(List<Option> options) {
    return options.stream().filter(Option::isPriced).min(Comparator.comparing(Option::goods));
  }

  Money goods() {
    return Money.sum(purchases.stream().map(Purchase::amount).toList());
  }

  /** Returns the truck fees of all pours. */
  Money loadFees() {
    return Money.sum(
        pours.stream().map(pour -> pour.plan().shortFee().plus(pour.plan().loadFee())).toList());
  }

  boolean isPriced() {
    return supplier.isPresent();
  }
}
