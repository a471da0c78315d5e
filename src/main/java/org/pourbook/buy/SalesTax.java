package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.math.BigDecimal;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.takeoff.Source;

/** Sales tax (BUY-6). */
final class SalesTax {

  private SalesTax() {}

  /** Returns the rate of a job's goods from a supplier in percent; none without a supplier. */
  @Source(
      rule = "BUY-6",
      says =
          "Taxable goods bear the job's Tax %, else the supplier's; fees are not taxed; tax is"
              + " rounded once an order",
      standing = COMMON_PRACTICE)
  static BigDecimal percent(Job job, Optional<Supplier> supplier) {
    return supplier
        .map(known -> job.taxPercent().orElse(known.taxPercent()))
        .orElse(BigDecimal.ZERO);
  }
}
