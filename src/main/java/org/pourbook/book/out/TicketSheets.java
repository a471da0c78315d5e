package org.pourbook.book.out;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.ticket.ConcreteLoad;
import org.pourbook.ticket.Finding;
import org.pourbook.ticket.Learned;
import org.pourbook.ticket.Matched;
import org.pourbook.ticket.Reconciliation;

/** What tickets and bills say beside the orders. */
final class TicketSheets {

  private TicketSheets() {}

  static SheetSpec<Finding> findings(Reconciliation result) {
    return SheetSpec.landscape(
        "Findings",
        result.findings().isEmpty()
            ? "Tickets and bills agree with the orders."
            : "What to take up with the suppliers, dearest first.",
        List.of(
            Column.text("Job", 12, Finding::job),
            Column.text("Supplier", 22, Finding::supplier),
            Column.text("Ticket", 10, Finding::ticket),
            Column.text("Invoice", 10, Finding::invoice),
            Column.cell("Date", Look.DATE, 13, finding -> Cell.ofDay(finding.day())),
            Column.text("Material", 16, finding -> finding.key().material()),
            Column.text("Size", 12, finding -> finding.key().size()),
            Column.text("Finding", 22, finding -> finding.name().label()),
            Column.text("Says", 56, Finding::says),
            Column.<Finding>cell("Money", Look.MONEY, 11, finding -> money(finding.money()))
                .inTotal()),
        result.findings());
  }

  private static Cell money(Optional<Money> money) {
    return money.map(Cell::of).orElse(Cell.BLANK);
  }

  static SheetSpec<Matched> matched(Reconciliation result) {
    return SheetSpec.landscape(
        "Matched",
        "What was estimated, ordered, delivered and billed of each material, in its own unit.",
        List.of(
            Column.text("Job", 12, Matched::job),
            Column.text("Material", 17, row -> row.key().material()),
            Column.text("Size", 12, row -> row.key().size()),
            Column.text("Unit", 6, Matched::unit),
            Column.number("Estimated", Look.NUMBER, 10, Matched::estimated),
            Column.number("Ordered", Look.NUMBER, 10, Matched::ordered),
            Column.number("Delivered", Look.NUMBER, 10, Matched::delivered),
            Column.number("Billed", Look.NUMBER, 10, Matched::billed),
            Column.money("Ordered amount", 12, Matched::orderedAmount).inTotal(),
            Column.money("Billed amount", 12, Matched::billedAmount).inTotal(),
            Column.<Matched>of(
                    "Difference",
                    Look.MONEY,
                    11,
                    at ->
                        Cell.formula(
                            at.cell("Billed amount") + "-" + at.cell("Ordered amount"),
                            at.record().difference().amount().doubleValue()))
                .inTotal(),
            Column.text("Standing", 26, Matched::standing)),
        result.matched());
  }

  static SheetSpec<ConcreteLoad> loads(Reconciliation result) {
    return SheetSpec.landscape(
        "Concrete loads",
        "Every load of concrete as its ticket tells it; minutes from batching to the end of"
            + " discharge.",
        List.of(
            Column.text("Job", 12, ConcreteLoad::job),
            Column.text("Supplier", 24, ConcreteLoad::supplier),
            Column.text("Ticket", 12, ConcreteLoad::ticket),
            Column.number("Volume", Look.NUMBER, 9, ConcreteLoad::volume),
            Column.text("Unit", 6, ConcreteLoad::unit),
            clock("Batched", ConcreteLoad::batched),
            clock("Discharged", ConcreteLoad::discharged),
            Column.cell(
                "Minutes",
                Look.COUNT,
                8,
                load ->
                    load.minutes().map(minutes -> Cell.of((double) minutes)).orElse(Cell.BLANK)),
            Column.cell("Water added", Look.NUMBER, 9, TicketSheets::water),
            Column.text(
                "Water unit",
                7,
                load -> load.waterAddedL().isEmpty() ? "" : waterUnit(load).label())),
        result.loads());
  }

  private static Column<ConcreteLoad> clock(
      String heading, Function<ConcreteLoad, Optional<LocalTime>> time) {
    return Column.cell(
        heading,
        Look.TIME,
        11,
        load -> time.apply(load).<Cell>map(Cell.Clock::new).orElse(Cell.BLANK));
  }

  private static Cell water(ConcreteLoad load) {
    OptionalDouble litres = load.waterAddedL();
    return litres.isPresent()
        ? Cell.of(waterUnit(load).fromBase(Unit.L.toBase(litres.getAsDouble())))
        : Cell.BLANK;
  }

  private static Unit waterUnit(ConcreteLoad load) {
    return Unit.named(load.unit()).equals(Optional.of(Unit.M3)) ? Unit.L : Unit.GAL;
  }

  static SheetSpec<Learned> learned(Reconciliation result, boolean metric) {
    Unit unit = metric ? Unit.M3 : Unit.YD3;
    return SheetSpec.portrait(
        "Learned",
        "The waste that pours really took; offered as the next Waste allowance.",
        List.of(
            Column.text("Kind", 14, Learned::kind),
            Column.count("Pours", 8, Learned::pours),
            Column.number("Net", Look.NUMBER, 10, row -> unit.fromBase(row.netM3())),
            Column.number("Delivered", Look.NUMBER, 10, row -> unit.fromBase(row.deliveredM3())),
            Column.text("Unit", 6, row -> unit.label()),
            Column.number("Waste %", Look.PERCENT, 10, Learned::wastePercent),
            Column.cell(
                "Spread",
                Look.PERCENT,
                10,
                row -> Double.isNaN(row.spread()) ? Cell.BLANK : Cell.of(row.spread()))),
        result.learned());
  }
}
