package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.book.out.Check.Figure;
import org.pourbook.buy.Buyer;
import org.pourbook.buy.Line;
import org.pourbook.buy.Load;
import org.pourbook.buy.Order;
import org.pourbook.desk.Estimate;
import org.pourbook.takeoff.Material;

/** Cross-foots: each line has one figure from two sheets, live, with a light in words. */
final class ChecksSheet {

  static final String NAME = "Checks";
  private static final String FOUND = "Found";
  private static final String AGAINST = "Against";
  private static final String DIFFERENCE = "Difference";
  private static final String TO_LOOK_AT = "To look at";

  private final Estimate estimate;
  private final Sheets sheets;
  private final List<Check> checks = new ArrayList<>();

  /** The sheets that are checked against one another. */
  record Sheets(
      BatchUnits units,
      SheetSpec<SummarySheet.Row> summary,
      SheetSpec<TakeoffSheet.Row> takeoff,
      MaterialsSheet materials,
      SheetSpec<OrdersSheet.Row> orders,
      SheetSpec<Order> totals,
      SheetSpec<Load> loads,
      SheetSpec<CutSheets.Row> cuts,
      GivenSheets given) {}

  private ChecksSheet(Estimate estimate, Sheets sheets) {
    this.estimate = estimate;
    this.sheets = sheets;
  }

  static SheetSpec<Check> spec(Estimate estimate, Sheets sheets) {
    ChecksSheet checks = new ChecksSheet(estimate, sheets);
    checks.all();
    return SheetSpec.landscape(
        NAME,
        "The same figure from two places, worked out afresh whenever something changes: a line"
            + " that does not agree says look.",
        columns(),
        checks.checks);
  }

  private void all() {
    MoneyChecks money = new MoneyChecks(sheets);
    checks.addAll(money.ofAll());
    cuts();
    enough();
    checks.addAll(
        PlaceChecks.rows(
            List.of(
                sheets.takeoff(), sheets.materials().spec(), sheets.orders(), sheets.totals())));
    checks.add(PlaceChecks.givenRows(sheets.given()));
    checks.addAll(PlaceChecks.given(sheets.given(), ""));
    jobs(money);
  }

  private static List<Column<Check>> columns() {
    return List.of(
        Column.text("Job", 12, Check::job),
        Column.text("Check", 58, Check::what),
        Column.cell(FOUND, Look.NUMBER, 12, check -> check.found().cell()),
        Column.cell(AGAINST, Look.NUMBER, 12, check -> check.against().cell()),
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
                        "IF(ISERROR("
                            + at.cell(DIFFERENCE)
                            + "),1,IF(ABS("
                            + at.cell(DIFFERENCE)
                            + ")<"
                            + Check.SMALL
                            + ",0,1))",
                        at.record().isOk() ? 0 : 1))
            .inTotal(),
        Column.of(
            "Light",
            Look.LIGHT,
            8,
            at ->
                Cell.formula(
                    "IF(" + at.cell(TO_LOOK_AT) + "=0,\"" + Light.OK + "\",\"" + Light.LOOK + "\")",
                    at.record().isOk() ? Light.OK : Light.LOOK)),
        Column.text("When it says look", 52, Check::whatThen));
  }

  /** Returns the light of all checks, for the top of Summary. */
  static Cell light(SheetSpec<Check> checks) {
    long looks = checks.rows().stream().filter(check -> !check.isOk()).count();
    String count = checks.total(TO_LOOK_AT);
    return Cell.formula(
        "IF("
            + count
            + "=0,\"ok: all checks agree\",\"look: \"&"
            + count
            + "&\" of the Checks do not agree\")",
        looks == 0 ? "ok: all checks agree" : "look: " + looks + " of the Checks do not agree");
  }

  private void cuts() {
    int asked = Buyer.piecesAsked(estimate.takeOffs(), estimate.batch().prices());
    if (asked > 0) {
      int cut = sheets.cuts().rows().stream().mapToInt(CutSheets::pieces).sum();
      String total = sheets.cuts().rows().isEmpty() ? "" : sheets.cuts().total(CutSheets.PIECES);
      checks.add(
          new Check(
              "",
              "Cut list, Pieces = pieces that the take-off asks for",
              new Figure(total, cut),
              Figure.stored(asked),
              "See Problems for what cannot be cut from what is on offer"));
    }
  }

  private void enough() {
    SheetSpec<Line> lines = sheets.materials().spec();
    if (!lines.rows().isEmpty()) {
      long rows = lines.rows().stream().filter(MaterialFormulas::isEnough).count();
      checks.add(
          new Check(
              "",
              "Materials, rows whose packs hold what is needed = when the tool ran",
              new Figure(lines.total(MaterialsSheet.ENOUGH), rows),
              Figure.stored(rows),
              "Look on Materials for a 0 under Enough: fewer packs were typed than are needed"));
    }
  }

  private void jobs(MoneyChecks money) {
    SheetSpec<SummarySheet.Row> summary = sheets.summary();
    Spans<String> loadsOf = Spans.of(sheets.loads().rows(), Load::job);
    for (int i = 0; i < summary.rows().size(); i++) {
      SummarySheet.Row row = summary.rows().get(i);
      int at = SheetSpec.FIRST_ROW + i;
      checks.addAll(money.of(row, at));
      loadsOf.of(row.code()).ifPresent(span -> loads(row, at, span));
      checks.addAll(PlaceChecks.given(sheets.given(), row.code()));
    }
  }

  private void loads(SummarySheet.Row row, int at, Span span) {
    double sum = 0;
    for (int i = span.first(); i <= span.last(); i++) {
      double m3 = sheets.loads().rows().get(i - SheetSpec.FIRST_ROW).volumeM3();
      sum += BatchUnits.loaded(m3, row.units());
    }
    double stored =
        sheets.materials().rowsOf(row.code(), Material.CONCRETE).map(this::held).orElse(0.0);
    checks.add(
        new Check(
            row.code(),
            "Loads, Volume = concrete ordered (Summary)",
            new Figure(
                "SUM("
                    + sheets.loads().cells(span, sheets.units().volumeHeading(PourSheets.VOLUME))
                    + ")",
                sum),
            new Figure(
                sheets
                    .summary()
                    .cell(at, sheets.units().volumeHeading(SummarySheet.CONCRETE_ORDER)),
                stored),
            "Run the tool again: the loads were worked out for another quantity"));
  }

  private double held(Span rows) {
    double sum = 0;
    for (int row = rows.first(); row <= rows.last(); row++) {
      Line line = sheets.materials().lineAt(row);
      sum += line.packs().doubleValue() * line.packHolds();
    }
    return sum;
  }
}
