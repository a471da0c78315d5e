package org.pourbook.ticket;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Material;

/** What is wrong with a row by itself (TICK-4). */
final class RowChecks {

  private static final BigDecimal CENT = new BigDecimal("0.01");

  private final Terms terms;
  private final List<Supplier> suppliers;
  private final List<Finding> findings;

  RowChecks(Terms terms, List<Supplier> suppliers, List<Finding> findings) {
    this.terms = terms;
    this.suppliers = suppliers;
    this.findings = findings;
  }

  void check(Ticket row) {
    extension(row);
    if (row.isFee()) {
      return;
    }
    row.age()
        .filter(minutes -> minutes > terms.dischargeMinutes())
        .ifPresent(
            minutes ->
                add(
                    row,
                    Finding.Name.LATE_DISCHARGE,
                    minutes
                        + " min from batching to the end of discharge, at most "
                        + (int) terms.dischargeMinutes()
                        + ". Ask the plant for the batch record.",
                    Optional.empty()));
    if (row.waterAddedL().orElse(0) > 0) {
      double gal = Unit.GAL.fromBase(Unit.L.toBase(row.waterAddedL().getAsDouble()));
      add(
          row,
          Finding.Name.WATER_ADDED,
          BigDecimal.valueOf(gal).setScale(1, java.math.RoundingMode.HALF_UP)
              + " gal added at the site: within the mix's limit?",
          Optional.empty());
    }
  }

  private void extension(Ticket row) {
    if (row.amount().isEmpty() || row.unitPrice().isEmpty()) {
      return;
    }
    Money due = Money.ofPrice(BigDecimal.valueOf(row.quantity()), row.unitPrice().get());
    Money over = row.amount().get().minus(due);
    if (over.amount().abs().compareTo(CENT) > 0) {
      add(
          row,
          Finding.Name.WRONG_EXTENSION,
          "Quantity × unit price is " + due + ", billed " + row.amount().get() + ".",
          Optional.of(over));
    }
  }

  /** Checks a fee beside the concrete of its ticket. */
  void fee(Ticket fee, List<Ticket> goods, double orderedM3) {
    Optional<Supplier> supplier =
        suppliers.stream().filter(known -> known.name().equals(fee.supplier())).findFirst();
    switch (fee.charge().toLowerCase(java.util.Locale.ROOT)) {
      case "short load" -> shortLoad(fee, supplier, goods, orderedM3);
      case "delivery" -> listed(fee, supplier.flatMap(Supplier::deliveryFee).isPresent());
      case "waiting" -> waiting(fee, supplier, goods);
      case "fee per load", "load" ->
          listed(fee, supplier.flatMap(Supplier::feePerLoad).isPresent());
      case "minimum order" -> listed(fee, supplier.flatMap(Supplier::minimumOrder).isPresent());
      default -> listed(fee, false);
    }
  }

  private void listed(Ticket fee, boolean isListed) {
    if (!isListed) {
      add(
          fee,
          Finding.Name.FEE_NOT_LISTED,
          "'" + fee.charge() + "' is not among the supplier's listed fees.",
          fee.money());
    }
  }

  private void shortLoad(
      Ticket fee, Optional<Supplier> supplier, List<Ticket> goods, double orderedM3) {
    if (supplier.isEmpty() || supplier.get().shortLoadUnderM3().isEmpty()) {
      listed(fee, false);
      return;
    }
    double limit = supplier.get().shortLoadUnderM3().getAsDouble();
    double volume =
        supplier.get().shortLoadByOrder()
            ? orderedM3
            : goods.stream().mapToDouble(RowChecks::volumeM3).sum();
    if (volume >= limit - 1e-9) {
      add(
          fee,
          Finding.Name.SHORT_LOAD_NOT_DUE,
          "The "
              + (supplier.get().shortLoadByOrder() ? "order" : "load")
              + " is "
              + yd3(volume)
              + ", the fee is due under "
              + yd3(limit)
              + ".",
          fee.money());
    }
  }

  private void waiting(Ticket fee, Optional<Supplier> supplier, List<Ticket> goods) {
    if (supplier.isEmpty() || supplier.get().waitingPerMinute().isEmpty()) {
      listed(fee, false);
      return;
    }
    int minutes = goods.stream().map(Ticket::onSite).mapToInt(m -> m.orElse(0)).max().orElse(0);
    double free =
        supplier.get().freeMinutesPerM3().orElse(0)
            * goods.stream().mapToDouble(RowChecks::volumeM3).sum();
    BigDecimal beyond =
        BigDecimal.valueOf(Math.max(0, minutes - free)).setScale(9, java.math.RoundingMode.HALF_UP);
    Money due = Money.ofPrice(beyond, supplier.get().waitingPerMinute().get());
    Money charged = fee.money().orElse(Money.ZERO);
    add(
        fee,
        Finding.Name.WAITING_CHARGED,
        minutes
            + " min on site, "
            + Math.round(free)
            + " free: "
            + due
            + " is due, "
            + charged
            + " charged.",
        Optional.of(charged.minus(due)));
  }

  /** Returns a concrete row's volume; 0 for other goods [m3]. */
  static double volumeM3(Ticket row) {
    boolean concrete =
        row.key().material().isEmpty()
            || Material.named(row.key().material()).filter(Material.CONCRETE::equals).isPresent();
    Unit unit = Unit.named(row.unit().isEmpty() ? "yd3" : row.unit()).orElse(Unit.EACH);
    return concrete && unit.dimension() == org.pourbook.measure.Dimension.VOLUME
        ? unit.toBase(row.quantity())
        : 0;
  }

  private static String yd3(double m3) {
    return BigDecimal.valueOf(Unit.YD3.fromBase(m3))
            .setScale(2, java.math.RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " yd3";
  }

  private void add(Ticket row, Finding.Name name, String says, Optional<Money> money) {
    findings.add(Findings.of(row, row.key(), name, says, money));
  }
}
