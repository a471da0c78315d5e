package org.pourbook.ticket;

import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/** Makes findings of rows. */
final class Findings {

  private Findings() {}

  /** Returns a finding on a row. */
  static Finding of(
      Ticket row, MaterialKey key, Finding.Name name, String says, Optional<Money> money) {
    return new Finding(
        row.job(), row.supplier(), row.ticket(), row.invoice(), row.date(), key, name, says, money);
  }

  /** Returns a finding on a job's part of a row. */
  static Finding of(Claim claim, Finding.Name name, String says, Optional<Money> money) {
    Ticket row = claim.ticket();
    return new Finding(
        claim.job(),
        row.supplier(),
        row.ticket(),
        row.invoice(),
        row.date(),
        claim.ordered().map(Ordered::key).orElse(row.key()),
        name,
        says,
        money);
  }

  /** Returns a finding on an ordered line as a whole. */
  static Finding of(Ordered ordered, Finding.Name name, String says, Optional<Money> money) {
    String supplier = ordered.items().isEmpty() ? "" : ordered.items().get(0).supplier();
    return new Finding(
        ordered.job(), supplier, "", "", Optional.empty(), ordered.key(), name, says, money);
  }
}
