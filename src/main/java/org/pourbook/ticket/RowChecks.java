package org.pourbook.ticket;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/** What is wrong with a row by itself (TICK-4). */
final class RowChecks {

  /** What comes in gallons or litres is no concrete, whatever else a row leaves out. */
  private static final Set<Unit> CONCRETE_UNITS = EnumSet.of(Unit.YD3, Unit.M3, Unit.FT3);

  private static final BigDecimal CENT = new BigDecimal("0.01");

  private final JobTerms terms;
  private final Map<String, Supplier> suppliers = new HashMap<>();
  private final List<Finding> findings;

  RowChecks(JobTerms terms, List<Supplier> suppliers, List<Finding> findings) {
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
    double limit = terms.of(row.job()).dischargeMinutes();
    row.age()
        .filter(minutes -> minutes > limit)
        .ifPresent(
            minutes ->
                add(
                    row,
                    Finding.Name.LATE_DISCHARGE,
                    minutes
                        + " min from batching to the end of discharge, at most "
                        + (int) limit
                        + ". Ask the plant for the batch record.",
                    Optional.empty()));
    if (row.waterAddedL().orElse(0) > 0) {
      Unit unit = isMetric(row) ? Unit.L : Unit.GAL;
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
    boolean metric = goods.stream().anyMatch(RowChecks::isMetric);
    if (volume >= limit - 1e-9) {
      add(
          fee,
          Finding.Name.SHORT_LOAD_NOT_DUE,
          "The "
              + (supplier.get().shortLoadByOrder() ? "order" : "load")
              + " is "
              + volume(volume, metric)
              + ", the fee is due under "
              + volume(limit, metric)
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
    return concrete && CONCRETE_UNITS.contains(unit) ? unit.toBase(row.quantity()) : 0;
  }

  private static boolean isMetric(Ticket row) {
    return Unit.named(row.unit()).equals(Optional.of(Unit.M3));
  }

  private static String volume(double m3, boolean metric) {
    Unit unit = metric ? Unit.M3 : Unit.YD3;
    return BigDecimal.valueOf(unit.fromBase(m3))
            .setScale(2, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " "
        + unit.label();
  }

  private void add(Ticket row, Finding.Name name, String says, Optional<Money> money) {
    findings.add(Findings.of(row, row.key(), name, says, money));
  }
}
