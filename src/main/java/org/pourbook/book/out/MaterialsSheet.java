package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.buy.Line;
import org.pourbook.buy.Price;
import org.pourbook.desk.Estimate;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material;

/** What to buy for each job, from Takeoff's amounts to money by short formulas. */
final class MaterialsSheet {

  static final String NAME = "Materials";
  static final String NET = "Net";
  static final String ALLOWANCE = "Allowance %";
  static final String NEEDED = "Needed";
  static final String HOLDS = "Pack holds";
  static final String STEP = "Step";
  static final String PACKS = "Packs";
  static final String PRICE = "Unit price";
  static final String AMOUNT = "Amount";
  static final String NOTE = "Price note";
  static final String KIND = "Kind";

  /** One for a row whose packs hold what it needs. */
  static final String ENOUGH = "Enough";

  static final String WEIGHT = "Unit weight";
  static final String NO_PRICE = "no price";

  private final SheetSpec<Line> spec;
  private final Spans<String> jobs;

  MaterialsSheet(Estimate estimate, BatchUnits units, TakeoffSheet takeoff, int most) {
    List<Line> lines = estimate.bought().lines();
    this.jobs = Spans.of(lines, Line::job);
    List<Column<Line>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, Line::job));
    columns.addAll(units.column(Line::units));
    MaterialFormulas formulas = new MaterialFormulas(estimate, takeoff);
    columns.addAll(need(formulas));
    columns.addAll(price(formulas));
    columns.addAll(where(formulas));
    this.spec =
        SheetSpec.landscape(
                NAME,
                "What to buy for each job. Unit price and Allowance % may be changed here; needs,"
                    + " packs and amounts follow.",
                columns,
                lines)
            .together(Line::job, most)
            .withPlaces();
  }

  private static List<Column<Line>> need(MaterialFormulas formulas) {
    return List.of(
        Column.text("Material", 16, line -> line.key().material()),
        Column.text("Size", 11, line -> line.key().size()),
        Column.of(NET, Look.NUMBER, 9, formulas::net),
        Column.cell(ALLOWANCE, Look.EDIT_PERCENT, 9, line -> Cell.of(line.allowancePercent())),
        Column.of(NEEDED, Look.NUMBER, 9, formulas::needed),
        Column.text("Unit", 6, Line::unit));
  }

  private static List<Column<Line>> price(MaterialFormulas formulas) {
    return List.of(
        Column.text("Supplier", 20, line -> of(line, Price::supplier)),
        Column.text("Item", 12, Line::item),
        Column.onScreen(Column.number(HOLDS, Look.NUMBER, 8, Line::packHolds)),
        Column.onScreen(Column.number(STEP, Look.NUMBER, 6, formulas::step)),
        Column.of(PACKS, Look.NUMBER, 8, formulas::packs),
        Column.text("Order unit", 7, Line::orderUnit),
        Column.cell(
            PRICE, Look.EDIT_PRICE, 10, line -> Cell.ofPrice(line.price().map(Price::price))),
        Column.of(AMOUNT, Look.MONEY, 11, formulas::amount).inTotal(),
        Column.of(
            NOTE, Look.WORDS, 8, at -> note(at.cell(PRICE), at.record().price().isPresent())));
  }

  private static List<Column<Line>> where(MaterialFormulas formulas) {
    return List.of(
        Column.cell("Needed by", Look.DATE, 13, line -> Cell.ofDay(line.neededBy())),
        Column.text("Order", 9, line -> String.join(", ", line.orders())),
        Column.onScreen(Column.text("Cost code", 8, line -> of(line, Price::costCode))),
        Column.onScreen(Column.text(KIND, 8, line -> kind(line.service()))),
        Column.onScreen(Column.of("Live", Look.TEXT, 5, formulas::live)),
        Column.onScreen(Column.of(ENOUGH, Look.COUNT, 7, MaterialFormulas::enough).inTotal()),
        Column.onScreen(Column.cell(WEIGHT, Look.NUMBER, 7, MaterialsSheet::weight)),
        Column.onScreen(Column.of("Why", Look.LINK, 15, formulas::why)));
  }

  private static String of(Line line, Function<Price, String> part) {
    return line.price().map(part).orElse("");
  }

  /** Returns what tells money for materials from money for services. */
  static String kind(boolean service) {
    return service ? "service" : "material";
  }

  /** Returns what marks a row whose price cell is empty. */
  static Cell note(String priceCell, boolean priced) {
    return Cell.formula(
        "IF(" + priceCell + "=\"\",\"" + NO_PRICE + "\",\"\")", priced ? "" : NO_PRICE);
  }

  private static Cell weight(Line line) {
    Optional<BarSize> bar =
        Material.named(line.key().material()).equals(Optional.of(Material.BAR))
            ? BarSize.named(line.key().size())
            : Optional.empty();
    return bar.map(size -> Cell.of(BatchUnits.weightPerLength(size.massKgPerM(), line.units())))
        .orElse(Cell.BLANK);
  }

  SheetSpec<Line> spec() {
    return spec;
  }

  Optional<Span> rowsOfJob(String job) {
    return jobs.of(job);
  }

  /** Returns a job's rows of a material in all its sizes, which stand next to one another. */
  Optional<Span> rowsOf(String job, Material material) {
    Optional<Span> all = jobs.of(job);
    int first = 0;
    int last = 0;
    for (int row = all.map(Span::first).orElse(1); row <= all.map(Span::last).orElse(0); row++) {
      if (isOf(lineAt(row), material)) {
        first = first == 0 ? row : first;
        last = row;
      }
    }
    return first == 0 ? Optional.empty() : Optional.of(new Span(first, last));
  }

  static boolean isOf(Line line, Material material) {
    return Material.named(line.key().material()).equals(Optional.of(material));
  }

  Line lineAt(int row) {
    return spec.rows().get(row - SheetSpec.FIRST_ROW);
  }

  /** Returns the cells of rows in a column, for other sheets' formulas. */
  String cells(Span rows, String heading) {
    return spec.cells(rows, heading);
  }

  String cell(int row, String heading) {
    return spec.cell(row, heading);
  }

  static Money amount(Line line) {
    return line.amount().orElse(Money.ZERO);
  }
}
