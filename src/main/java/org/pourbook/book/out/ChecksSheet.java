package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.buy.JobTotals;
import org.pourbook.buy.Line;
import org.pourbook.buy.Load;
import org.pourbook.buy.Order;
import org.pourbook.desk.Estimate;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.PieceNeed;

/** Cross-foots: each line has one figure from two sheets, live, with a light in words. */
final class ChecksSheet {

  static final String NAME = "Checks";
  private static final String FOUND = "Found";
  private static final String AGAINST = "Against";
  private static final String DIFFERENCE = "Difference";
  private static final String TO_LOOK_AT = "To look at";

  /** Half a cent, and less of anything else than anybody orders. */
  private static final String SMALL = "0.005";

  private static final String CHANGED =
      "Run the tool again: what was changed counts only where Live says yes; Loads, Cut list and"
          + " Pour plan still hold for what was read";
  private static final String MONEY = "Look for a figure that was typed over a formula";

  /** A figure, live where it has a formula. */
  private record Figure(String formula, double value) {
    Cell cell() {
      return formula.isEmpty() ? Cell.of(value) : Cell.formula(formula, value);
    }
  }

  /** A line: the same figure, found in one place and in another. */
  record Check(
      String job, String what, Cell found, Cell against, double difference, String whatThen) {}

  private final Estimate estimate;
  private final BatchUnits units;
  private final SheetSpec<SummarySheet.Row> summary;
  private final MaterialsSheet materials;
  private final SheetSpec<OrdersSheet.Row> orders;
  private final SheetSpec<Order> totals;
  private final SheetSpec<Load> loads;
  private final SheetSpec<CutSheets.Row> cuts;
  private final GivenSheets given;
  private final List<Check> checks = new ArrayList<>();

  /** The sheets that are checked against one another. */
  record Sheets(
      BatchUnits units,
      SheetSpec<SummarySheet.Row> summary,
      MaterialsSheet materials,
      SheetSpec<OrdersSheet.Row> orders,
      SheetSpec<Order> totals,
      SheetSpec<Load> loads,
      SheetSpec<CutSheets.Row> cuts,
      GivenSheets given) {}

  private ChecksSheet(Estimate estimate, Sheets sheets) {
    this.estimate = estimate;
    this.units = sheets.units();
    this.summary = sheets.summary();
    this.materials = sheets.materials();
    this.orders = sheets.orders();
    this.totals = sheets.totals();
    this.loads = sheets.loads();
    this.cuts = sheets.cuts();
    this.given = sheets.given();
  }

  static SheetSpec<Check> spec(Estimate estimate, Sheets sheets) {
    ChecksSheet checks = new ChecksSheet(estimate, sheets);
    checks.money();
    checks.cuts();
    checks.given("", "Given cells of no one job, as the tool read them: cells changed");
    checks.jobs();
    return SheetSpec.landscape(
        NAME,
        "The same figure from two places, worked out afresh whenever something changes: a line"
            + " that does not agree says look.",
        columns(),
        checks.checks);
  }

  private static List<Column<Check>> columns() {
    return List.of(
        Column.text("Job", 12, Check::job),
        Column.text("Check", 58, Check::what),
        Column.cell(FOUND, Look.NUMBER, 12, Check::found),
        Column.cell(AGAINST, Look.NUMBER, 12, Check::against),
        Column.of(
            DIFFERENCE,
            Look.NUMBER,
            11,
            at -> Cell.formula(at.cell(FOUND) + "-" + at.cell(AGAINST), at.record().difference())),
        Column.<Check>of(
                TO_LOOK_AT,
                Look.COUNT,
                8,
                at ->
                    Cell.formula(
                        "IF(ABS(" + at.cell(DIFFERENCE) + ")<" + SMALL + ",0,1)",
                        isOk(at.record()) ? 0 : 1))
            .inTotal(),
        Column.of(
            "Light",
            Look.LIGHT,
            8,
            at ->
                Cell.formula(
                    "IF(" + at.cell(TO_LOOK_AT) + "=0,\"" + Light.OK + "\",\"" + Light.LOOK + "\")",
                    isOk(at.record()) ? Light.OK : Light.LOOK)),
        Column.text("When it says look", 52, Check::whatThen));
  }

  private static boolean isOk(Check check) {
    return Math.abs(check.difference()) < Double.parseDouble(SMALL);
  }

  /** Returns the light of all checks, for the top of Summary. */
  static Cell light(SheetSpec<Check> checks) {
    long looks = checks.rows().stream().filter(check -> !isOk(check)).count();
    String count = checks.total(TO_LOOK_AT);
    return Cell.formula(
        "IF("
            + count
            + "=0,\"ok: all checks agree\",\"look: \"&"
            + count
            + "&\" of the Checks do not agree\")",
        looks == 0 ? "ok: all checks agree" : "look: " + looks + " of the Checks do not agree");
  }

  private void add(String job, String what, Figure found, Figure against, String whatThen) {
    checks.add(
        new Check(
            job, what, found.cell(), against.cell(), found.value() - against.value(), whatThen));
  }

  private void money() {
    List<Line> lines = materials.spec().rows();
    Figure bought = total(materials.spec(), MaterialsSheet.AMOUNT, lines, MaterialsSheet::amount);
    List<Order> all = totals.rows();
    Figure goods = total(totals, OrderTotalsSheet.GOODS, all, Order::goods);
    Figure fees = total(totals, OrderTotalsSheet.FEES, all, Order::fees);
    Figure tax = total(totals, OrderTotalsSheet.TAX, all, Order::tax);
    add("", "Materials, Amount = Order totals, Goods", bought, goods, MONEY);
    Figure ordered =
        total(
            orders,
            OrdersSheet.AMOUNT,
            orders.rows(),
            row -> row.line().amount().orElse(Money.ZERO));
    add("", "Orders, Amount = Order totals, Goods and Fees", ordered, plus(goods, fees), MONEY);
    Figure things = ofJobs(SummarySheet.MATERIALS, JobTotals::materials);
    Figure services = ofJobs(SummarySheet.SERVICES, JobTotals::services);
    add("", "Summary, Materials and Services = Materials", plus(things, services), bought, MONEY);
    Figure delivery = ofJobs(SummarySheet.FEES, JobTotals::deliveryAndFees);
    add("", "Summary, Delivery and fees = Order totals, Fees", delivery, fees, shared("fees"));
    add(
        "",
        "Summary, Tax = Order totals, Tax",
        ofJobs(SummarySheet.TAX, JobTotals::tax),
        tax,
        shared("tax"));
    add(
        "",
        "Summary, Total = Order totals, Total",
        ofJobs(SummarySheet.TOTAL, JobTotals::total),
        total(totals, OrderTotalsSheet.TOTAL, all, Order::total),
        MONEY);
  }

  private static String shared(String what) {
    return "The " + what + " of a shared order are shared out by the tool: run it again";
  }

  private static <R> Figure total(
      SheetSpec<?> spec, String heading, List<R> rows, Function<R, Money> of) {
    double sum = Money.sum(rows.stream().map(of).toList()).amount().doubleValue();
    return new Figure(rows.isEmpty() ? "" : spec.total(heading), sum);
  }

  private Figure ofJobs(String heading, Function<JobTotals, Money> of) {
    return total(summary, heading, summary.rows(), row -> of.apply(row.totals()));
  }

  private static Figure plus(Figure one, Figure other) {
    boolean live = !one.formula().isEmpty() && !other.formula().isEmpty();
    return new Figure(
        live ? one.formula() + "+" + other.formula() : "", one.value() + other.value());
  }

  private void cuts() {
    int asked =
        estimate.takeOffs().stream()
            .flatMap(takeOff -> takeOff.pieces().stream())
            .mapToInt(PieceNeed::count)
            .sum();
    if (asked > 0) {
      int cut = cuts.rows().stream().mapToInt(CutSheets::pieces).sum();
      add(
          "",
          "Cut list, Pieces = pieces that the take-off asks for",
          new Figure(cuts.rows().isEmpty() ? "" : cuts.total(CutSheets.PIECES), cut),
          new Figure("", asked),
          "See Problems for what cannot be cut from what is on offer");
    }
  }

  private void given(String job, String what) {
    List<String> ranges = given.changed(job);
    if (!ranges.isEmpty()) {
      Figure changed = new Figure("SUM(" + String.join(",", ranges) + ")", 0);
      add(job, what, changed, new Figure("", 0), CHANGED);
    }
  }

  private void jobs() {
    Spans<String> loadsOf = Spans.of(loads.rows(), Load::job);
    for (int i = 0; i < summary.rows().size(); i++) {
      SummarySheet.Row row = summary.rows().get(i);
      int at = SheetSpec.FIRST_ROW + i;
      goods(row, at);
      loadsOf.of(row.code()).ifPresent(span -> loads(row, at, span));
      given(row.code(), "Given cells as the tool read them: cells changed");
    }
  }

  private void goods(SummarySheet.Row row, int at) {
    Optional<Span> lines = materials.rowsOfJob(row.code());
    double sum = row.totals().materials().plus(row.totals().services()).amount().doubleValue();
    lines.ifPresent(
        span ->
            add(
                row.code(),
                "Summary, Materials and Services = the job's Materials",
                new Figure(
                    summary.cell(at, SummarySheet.MATERIALS)
                        + "+"
                        + summary.cell(at, SummarySheet.SERVICES),
                    sum),
                new Figure(
                    "SUM(" + materials.cells(span, MaterialsSheet.AMOUNT) + ")", amount(span)),
                MONEY));
  }

  private double amount(Span rows) {
    Money sum = Money.ZERO;
    for (int row = rows.first(); row <= rows.last(); row++) {
      sum = sum.plus(MaterialsSheet.amount(materials.lineAt(row)));
    }
    return sum.amount().doubleValue();
  }

  private void loads(SummarySheet.Row row, int at, Span span) {
    double sum = 0;
    for (int i = span.first(); i <= span.last(); i++) {
      double m3 = loads.rows().get(i - SheetSpec.FIRST_ROW).volumeM3();
      sum += BatchUnits.volume(m3, row.units());
    }
    double stored = materials.rowsOf(row.code(), Material.CONCRETE).map(this::held).orElse(0.0);
    add(
        row.code(),
        "Loads, Volume = concrete ordered (Summary)",
        new Figure("SUM(" + loads.cells(span, units.volumeHeading(PourSheets.VOLUME)) + ")", sum),
        new Figure(summary.cell(at, units.volumeHeading(SummarySheet.CONCRETE_ORDER)), stored),
        "Run the tool again: the loads were worked out for another quantity");
  }

  private double held(Span rows) {
    double sum = 0;
    for (int row = rows.first(); row <= rows.last(); row++) {
      Line line = materials.lineAt(row);
      sum += line.packs().doubleValue() * line.packHolds();
    }
    return sum;
  }
}
