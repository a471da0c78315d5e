package org.pourbook.book.out;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.pourbook.buy.RevisedLine;
import org.pourbook.desk.FoundChange;
import org.pourbook.desk.Revised;
import org.pourbook.desk.Revised.JobRevision;
import org.pourbook.measure.Money;

/** What a revision found beside the sheets that an order workbook has too. */
final class SupplementSheets {

  private static final String BEFORE = "Earlier total";
  static final String GOODS = "Goods besides";
  static final String FEES = "Fees besides";
  static final String TAX = "Tax besides";
  static final String CREDIT = "Sent back";
  private static final String CREDIT_TAX = "Tax on it";
  private static final String BESIDES = "Order besides";
  private static final String BACK = "Send back";
  private static final String ORDERED = "Ordered before";
  private static final String PRICE = "Unit price";
  static final String AMOUNT = "Amount";
  static final String CREDITED = "Credit";

  /** From here on only {@code revise} and {@code reconcile} read the columns. */
  private static final String PACKS = "Packs";

  private final Revised revised;

  SupplementSheets(Revised revised) {
    this.revised = revised;
  }

  SheetSpec<JobRevision> summary() {
    return SheetSpec.landscape(
        "Summary",
        "What each job came to, what is ordered besides, what can be sent back at the price paid,"
            + " and what it comes to then.",
        List.of(
            Column.text("Job", 12, JobRevision::job),
            Column.text("Description", 30, JobRevision::description),
            Column.money(BEFORE, 13, JobRevision::before).inTotal(),
            Column.money(GOODS, 14, JobRevision::goods).inTotal(),
            Column.money(FEES, 13, JobRevision::fees).inTotal(),
            Column.money(TAX, 12, JobRevision::tax).inTotal(),
            Column.money(CREDIT, 11, JobRevision::credit).inTotal(),
            Column.money(CREDIT_TAX, 10, JobRevision::creditTax).inTotal(),
            Column.<JobRevision>of("Total", Look.MONEY, 12, SupplementSheets::total).inTotal(),
            Column.count("Open changes", 9, JobRevision::openChanges),
            Column.count("No price (lines)", 9, JobRevision::unpriced)),
        revised.totals());
  }

  private static Cell total(At<JobRevision> at) {
    return Cell.formula(
        String.join("+", at.cell(BEFORE), at.cell(GOODS), at.cell(FEES), at.cell(TAX))
            + "-"
            + at.cell(CREDIT)
            + "-"
            + at.cell(CREDIT_TAX),
        at.record().total().amount().doubleValue());
  }

  SheetSpec<FoundChange> changes() {
    return SheetSpec.landscape(
        "Changes found",
        revised.changes().isEmpty()
            ? "Nothing has changed since the earlier order."
            : "Every cell and row that reads otherwise than in the earlier order.",
        List.of(
            Column.text("Job", 12, FoundChange::job),
            Column.text("Section", 12, FoundChange::section),
            Column.text("Sheet", 13, FoundChange::sheet),
            Column.text("Row", 18, FoundChange::row),
            Column.text("What", 16, FoundChange::what),
            Column.text("Before", 30, FoundChange::before),
            Column.text("Now", 30, FoundChange::now),
            Column.text("Change", 36, FoundChange::change)),
        revised.changes());
  }

  SheetSpec<RevisedLine> materials() {
    return SheetSpec.landscape(
        "Materials",
        "What was ordered, what is needed now, what to order besides and what can be sent back, in"
            + " order units. What is already bought is used first; rows with something to do come"
            + " first.",
        List.of(
            Column.text("Job", 12, RevisedLine::job),
            Column.text("Material", 16, line -> line.key().material()),
            Column.text("Size", 11, line -> line.key().size()),
            packs(ORDERED, RevisedLine::before),
            packs("Needed now", RevisedLine::now),
            packs(BESIDES, RevisedLine::besides),
            packs(BACK, RevisedLine::back),
            Column.text("Unit", 7, RevisedLine::orderUnit),
            Column.cell(PRICE, Look.PRICE, 10, line -> Cell.ofPrice(line.unitPrice())),
            Column.<RevisedLine>of(AMOUNT, Look.MONEY, 11, SupplementSheets::amount).inTotal(),
            Column.money(CREDITED, 10, RevisedLine::credit).inTotal(),
            Column.text("Standing", 24, RevisedLine::standing),
            Column.text("Supplier", 18, RevisedLine::supplier),
            Column.text("Item", 11, RevisedLine::item),
            Column.onScreen(packs(PACKS, RevisedLine::now)),
            Column.onScreen(Column.number("Pack holds", Look.NUMBER, 8, RevisedLine::packHolds)),
            Column.onScreen(Column.text("Own unit", 6, RevisedLine::unit)),
            Column.onScreen(
                Column.cell(
                    "Net",
                    Look.NUMBER,
                    8,
                    line -> line.net() > 0 ? Cell.of(BigDecimal.valueOf(line.net())) : Cell.BLANK)),
            Column.onScreen(
                Column.<RevisedLine>money("Amount in all", 11, RevisedLine::inAll).inTotal())),
        revised.supplement().lines());
  }

  private static Column<RevisedLine> packs(
      String heading, Function<RevisedLine, BigDecimal> packs) {
    return Column.cell(heading, Look.NUMBER, 8, line -> Cell.of(packs.apply(line)));
  }

  private static Cell amount(At<RevisedLine> at) {
    RevisedLine line = at.record();
    if (line.amount().isEmpty()) {
      return Cell.BLANK;
    }
    double byFormula =
        line.unitPrice()
            .map(price -> Money.ofPrice(line.besides(), price).amount().doubleValue())
            .orElse(0.0);
    return Cell.live(
        "ROUND(" + at.cell(BESIDES) + "*" + at.cell(PRICE) + ",2)",
        byFormula,
        line.amount().get().amount().doubleValue());
  }
}
