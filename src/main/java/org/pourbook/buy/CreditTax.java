package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;

/** Sales tax that comes back with goods (BUY-6), at the rate of the earlier order. */
final class CreditTax {

  private CreditTax() {}

  /** Returns the tax on the credits, by job; rounded once a supplier. */
  static Map<String, Money> of(Earlier earlier, List<RevisedLine> lines) {
    Map<String, Job> jobs = new HashMap<>();
    earlier.takeOffs().forEach(takeOff -> jobs.put(takeOff.job().code(), takeOff.job()));
    Map<String, Map<String, BigDecimal>> exact = new TreeMap<>();
    for (RevisedLine line : lines) {
      Job job = jobs.get(line.job());
      if (job != null && !line.credit().isZero() && isTaxable(earlier.prices(), line)) {
        Optional<Supplier> supplier = earlier.prices().supplier(line.supplier());
        BigDecimal percent = SalesTax.percent(job, supplier);
        exact
            .computeIfAbsent(line.job(), k -> new TreeMap<>())
            .merge(
                line.supplier(),
                line.credit().amount().multiply(percent).movePointLeft(2),
                BigDecimal::add);
      }
    }
    Map<String, Money> tax = new TreeMap<>();
    exact.forEach(
        (job, bySupplier) ->
            tax.put(job, Money.sum(bySupplier.values().stream().map(Money::rounded).toList())));
    return tax;
  }

  private static boolean isTaxable(PriceBook prices, RevisedLine line) {
    return prices.answering(line.key()).stream()
        .filter(row -> row.supplier().equals(line.supplier()) && row.item().equals(line.item()))
        .findFirst()
        .map(Price::taxable)
        .orElse(true);
  }
}
