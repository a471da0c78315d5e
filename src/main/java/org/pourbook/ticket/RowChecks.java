package org.pourbook.ticket;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;

/** What is wrong with a row by itself (TICK-4). */
final class RowChecks {

  private static final BigDecimal CENT = new BigDecimal("0.01");

  private final Function<String, Terms> terms;
  private final List<Finding> findings;

  RowChecks(Function<String, Terms> terms, List<Finding> findings) {
    this.terms = terms;
    this.findings = findings;
  }

  /**
   * Checks a row once, though its ticket may stand on a bill too.
   *
   * @param job whose terms hold
   */
  void check(Ticket row, String job, Roles roles) {
    if (roles.isBilled(row)) {
      extension(row);
    }
    if (row.isFee() || !roles.isDelivered(row)) {
      return;
    }
    double limit = terms.apply(job).dischargeMinutes();
    row.age()
        .filter(minutes -> minutes > limit)
        .ifPresent(
            minutes ->
                add(
                    row,
                    Finding.Name.LATE_DISCHARGE,
                    minutes
                        + " min from batching to the end of discharge, at most "
                        + Math.round(limit)
                        + ". Ask the plant for the batch record.",
                    Optional.empty()));
    if (row.waterAddedL().orElse(0) > 0) {
      Unit unit = Unit.named(row.unit()).equals(Optional.of(Unit.M3)) ? Unit.L : Unit.GAL;
      double water = unit.fromBase(Unit.L.toBase(row.waterAddedL().getAsDouble()));
      add(
          row,
          Finding.Name.WATER_ADDED,
          BigDecimal.valueOf(water).setScale(1, RoundingMode.HALF_UP)
              + " "
              + unit.label()
              + " added at the site. Ask the plant whether the mix allows it.",
          Optional.empty());
    }
  }

  private void extension(Ticket row) {
    if (row.amount().isEmpty() || row.unitPrice().isEmpty()) {
      return;
    }
    Money due = Money.ofPrice(BigDecimal.valueOf(row.quantity()), row.unitPrice().get());
    Money over = row.amount().get().minus(due);
    if (row.isPriceCredit() && row.unitPrice().get().signum() > 0) {
      over = row.amount().get().plus(due); // a credit may carry its sign on the amount alone
    }
    if (over.amount().abs().compareTo(CENT) > 0) {
      add(
          row,
          Finding.Name.WRONG_EXTENSION,
          "Quantity × unit price is "
              + due
              + ", billed "
              + row.amount().get()
              + ". Ask for the bill to be put right.",
          Optional.of(over));
    }
  }

  private void add(Ticket row, Finding.Name name, String says, Optional<Money> money) {
    findings.add(Findings.of(row, row.key(), name, says, money));
  }
}
