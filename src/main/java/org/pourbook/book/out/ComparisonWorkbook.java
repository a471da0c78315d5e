package org.pourbook.book.out;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.pourbook.book.Heading;
import org.pourbook.buy.Compared;
import org.pourbook.buy.Quotation;
import org.pourbook.desk.Comparison;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;

/** The comparison workbook of several suppliers' quotations. */
public final class ComparisonWorkbook {

  private static final String TITLE = "Comparison of quotations";

  private ComparisonWorkbook() {}

  /**
   * Writes the workbook to a {@code .xlsx} file, or one CSV a sheet into a folder; whole or not at
   * all.
   *
   * @throws java.nio.file.FileAlreadyExistsException if the target exists and may not be replaced
   * @throws IOException if the target cannot be written
   */
  public static void write(Comparison comparison, Path target, boolean overwrite)
      throws IOException {
    boolean metric = isMetric(comparison.compared());
    WorkbookFile.write(sheets(comparison), new Paper(metric, TITLE), TITLE, target, overwrite);
  }

  /** Returns whether no line is asked for in a US unit. */
  private static boolean isMetric(Compared compared) {
    Set<Unit> us = Set.of(Unit.FT, Unit.FT2, Unit.YD3, Unit.LB, Unit.TON, Unit.GAL);
    return compared.lines().stream()
        .flatMap(line -> Unit.named(line.unit()).stream())
        .noneMatch(us::contains);
  }

  private static List<Sheet> sheets(Comparison comparison) {
    Compared compared = comparison.compared();
    return List.of(
        ways(compared, comparison),
        sideBySide(compared),
        bestSplit(compared),
        quotations(comparison),
        RecordSheets.problems(comparison.problems()),
        RecordSheets.basis(
            "The quotations that were read.",
            RecordSheets.read(comparison.version(), comparison.files())));
  }

  private static SheetSpec<Compared.Way> ways(Compared compared, Comparison comparison) {
    String currency = comparison.quotations().get(0).currency();
    Compared.Way best = compared.best();
    String says =
        "The cheapest that lacks fewest lines: "
            + best.name()
            + ", "
            + best.total()
            + (currency.isEmpty() ? "" : " " + currency)
            + (best.missing() == 0 ? "." : ", " + best.missing() + " lines missing.");
    return SheetSpec.landscape(
        "Ways to buy",
        says,
        List.of(
            Column.text("Way", 34, Compared.Way::name),
            Column.money("Goods", 13, Compared.Way::goods),
            Column.money("Delivery", 12, Compared.Way::delivery),
            Column.money("Tax", 12, Compared.Way::tax),
            Column.of("Total", Look.MONEY, 13, ComparisonWorkbook::total),
            Column.count("Lines missing", 9, Compared.Way::missing),
            Column.count("Stops", 6, Compared.Way::stops),
            Column.money("Cost of stops", 9, Compared.Way::stopCosts),
            Column.text("Says", 46, Compared.Way::says)),
        compared.ways());
  }

  private static Cell total(At<Compared.Way> at) {
    return Cell.formula(
        at.cell("Goods") + "+" + at.cell("Delivery") + "+" + at.cell("Tax"),
        at.record().total().amount().doubleValue());
  }

  private static SheetSpec<Compared.Line> sideBySide(Compared compared) {
    List<Column<Compared.Line>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, Compared.Line::job));
    columns.add(Column.text("Material", 17, line -> line.key().material()));
    columns.add(Column.text("Size", 13, line -> line.key().size()));
    columns.add(Column.number("Asked", Look.NUMBER, 10, Compared.Line::asked));
    columns.add(Column.text("Unit", 6, Compared.Line::unit));
    Set<String> taken = new HashSet<>();
    List.of("Job", "Material", "Size", "Asked", "Unit", "Best")
        .forEach(heading -> taken.add(Heading.key(heading)));
    for (int i = 0; i < compared.suppliers().size(); i++) {
      int supplier = i;
      String name = compared.suppliers().get(i);
      String heading = taken.add(Heading.key(name)) ? name : name + " " + (i + 1) + "th file";
      columns.add(
          Column.<Compared.Line>cell(
                  heading, Look.MONEY, 14, line -> amount(line.amounts().get(supplier)))
              .inTotal());
    }
    columns.add(Column.text("Best", 22, line -> line.best().orElse("nobody")));
    return SheetSpec.landscape(
        "Side by side",
        "What each supplier asks for each line, goods alone; blank where it is not offered.",
        columns,
        compared.lines());
  }

  private static Cell amount(Optional<Money> amount) {
    return amount.map(Cell::of).orElse(Cell.BLANK);
  }

  private static SheetSpec<Compared.Taken> bestSplit(Compared compared) {
    return SheetSpec.landscape(
        "Best split",
        "What to order from whom in the cheapest split; fees stand in Ways to buy.",
        List.of(
            Column.text("Job", 12, Compared.Taken::job),
            Column.text("Material", 17, line -> line.key().material()),
            Column.text("Size", 13, line -> line.key().size()),
            Column.text("Supplier", 24, line -> line.supplier()),
            Column.text("Item", 14, Compared.Taken::item),
            Column.number("Packs", Look.NUMBER, 9, line -> line.packs().doubleValue()),
            Column.text("Order unit", 8, Compared.Taken::orderUnit),
            Column.<Compared.Taken>cell("Amount", Look.MONEY, 12, line -> Cell.of(line.amount()))
                .inTotal(),
            Column.text("Note", 20, line -> line.supplier().isEmpty() ? "nobody offers it" : "")),
        compared.split());
  }

  private static SheetSpec<Quotation> quotations(Comparison comparison) {
    return SheetSpec.landscape(
        "Quotations",
        "The quotations compared, with their terms of delivery.",
        List.of(
            Column.text("Supplier", 28, Quotation::name),
            Column.cell("Valid until", Look.DATE, 13, one -> Cell.ofDay(one.validUntil())),
            Column.cell(
                "Delivery fee", Look.MONEY, 11, one -> amount(one.supplier().deliveryFee())),
            Column.cell("Free from", Look.MONEY, 11, one -> amount(one.supplier().freeFrom())),
            Column.cell(
                "Minimum order", Look.MONEY, 11, one -> amount(one.supplier().minimumOrder())),
            Column.text("Currency", 8, Quotation::currency),
            Column.text("Request", 68, one -> one.request().toLowerCase(Locale.ROOT))),
        comparison.quotations());
  }
}
