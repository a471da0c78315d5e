package org.pourbook.ticket;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Dimension;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/** What is wrong with a row by itself (TICK-4). */
final class RowChecks {

  private static final BigDecimal CENT = new BigDecimal("0.01");

  private final Terms terms;
  private final Map<String, Supplier> suppliers = new HashMap<>();
  private final List<Finding> findings;

  RowChecks(Terms terms, List<Supplier> suppliers, List<Finding> findings) {
    this.terms = terms;
    suppliers.forEach(
        supplier -> this.suppliers.putIfAbsent(MaterialKey.normal(supplier.name()), supplier));
    this.findings = findings;
  }

  /** Checks a row once, though its ticket may stand on a bill too. */
  void check(Ticket row, Roles roles) {
    if (roles.isBilled(row)) {
      extension(row);
    }
    if (row.isFee() || !roles.isDelivered(row)) {
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
          BigDecimal.valueOf(gal).setScale(1, RoundingMode.HALF_UP)
              + " gal added at the site. Ask the plant whether the mix allows it.",
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
          "Quantity × unit price is "
              + due
              + ", billed "
              + row.amount().get()
              + ". Ask for the bill to be put right.",
          Optional.of(over));
    }
  }

  /** Checks a fee beside the concrete of its ticket. */
  void fee(Ticket fee, List<Ticket> goods, double orderedM3) {
    Optional<Supplier> supplier =
        Optional.ofNullable(suppliers.get(MaterialKey.normal(fee.supplier())));
    switch (fee.charge().toLowerCase(Locale.ROOT)) {
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
          "'"
              + fee.charge()
              + "' is not among the supplier's listed fees. Ask for it to be taken off.",
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
              + ". Ask for it to be taken off.",
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
        BigDecimal.valueOf(Math.max(0, minutes - free)).setScale(9, RoundingMode.HALF_UP);
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
            + " charged. Ask for the times of the truck.",
        Optional.of(charged.minus(due)));
  }

  /** Returns a concrete row's volume; 0 for other goods [m3]. */
  static double volumeM3(Ticket row) {
    boolean concrete =
        row.key().material().isEmpty()
            || Material.named(row.key().material()).filter(Material.CONCRETE::equals).isPresent();
    Unit unit = Unit.named(row.unit().isEmpty() ? "yd3" : row.unit()).orElse(Unit.EACH);
    return concrete && unit.dimension() == Dimension.VOLUME ? unit.toBase(row.quantity()) : 0;
  }

  private static String yd3(double m3) {
    return BigDecimal.valueOf(Unit.YD3.fromBase(m3))
            .setScale(2, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " yd3";
  }

  private void add(Ticket row, Finding.Name name, String says, Optional<Money> money) {
    findings.add(Findings.of(row, row.key(), name, says, money));
  }
}
