package org.pourbook.book.out;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.pourbook.buy.Bought;
import org.pourbook.buy.CutSheet;
import org.pourbook.desk.Estimate;
import org.pourbook.desk.Revised;
import org.pourbook.takeoff.TakeOff;

/** The supplement of an order: what changed, what is ordered besides, what can be sent back. */
public final class SupplementWorkbook {

  private static final String TITLE = "Supplement";

  private SupplementWorkbook() {}

  /**
   * Writes the workbook to a {@code .xlsx} file, or one CSV a sheet into a folder; whole or not at
   * all.
   *
   * @throws java.nio.file.FileAlreadyExistsException if the target exists and may not be replaced
   * @throws IOException if the target cannot be written
   */
  public static void write(Revised revised, Path target, boolean overwrite) throws IOException {
    boolean metric = !BatchUnits.of(revised.estimate().batch().jobs()).us();
    WorkbookFile.write(sheets(revised), new Paper(metric, TITLE), TITLE, target, overwrite);
  }

  static List<Sheet> sheets(Revised revised) {
    Estimate estimate = revised.estimate();
    BatchUnits units = BatchUnits.of(estimate.batch().jobs());
    SupplementSheets sheets = new SupplementSheets(revised);
    OrdersSheet orders =
        new OrdersSheet(estimate, materialsOf(estimate, units), SheetSpec.MOST_RECORDS);
    OrderTotalsSheet totals = new OrderTotalsSheet(estimate, orders);
    List<Sheet> all = new ArrayList<>();
    all.add(sheets.summary().withLight(light(sheets, totals)));
    all.add(sheets.changes());
    all.add(RecordSheets.problems(estimate));
    all.add(sheets.materials());
    all.add(orders.spec());
    all.add(totals.spec());
    all.add(new OrderPages(orders, totals));
    all.add(PourSheets.loads(estimate, units));
    all.add(cutList(CutSheets.cutList(estimate.bought().cutSheets(), units)));
    all.add(RunsSheet.spec(estimate.bought().cutSheets(), units));
    all.add(SteelSheets.bolts(with(estimate, revised.newBolts()), units));
    all.add(RecordSheets.basis(estimate));
    all.addAll(GivenSheets.plain(estimate.batch().given()));
    all.add(0, Welcome.supplement(all.stream().map(Sheet::name).collect(Collectors.toSet())));
    return all;
  }

  /** Returns whether Summary, Materials and Order totals tell the same money. */
  private static Cell light(SupplementSheets sheets, OrderTotalsSheet totals) {
    SheetSpec<?> summary = sheets.summary();
    SheetSpec<?> materials = sheets.materials();
    List<Light.Pair> pairs = new ArrayList<>();
    pairs.add(
        new Light.Pair(
            summary, List.of(SupplementSheets.GOODS), materials, List.of(SupplementSheets.AMOUNT)));
    pairs.add(
        new Light.Pair(
            summary,
            List.of(SupplementSheets.CREDIT),
            materials,
            List.of(SupplementSheets.CREDITED)));
    pairs.add(
        new Light.Pair(
            summary,
            List.of(SupplementSheets.GOODS, SupplementSheets.FEES, SupplementSheets.TAX),
            totals.spec(),
            List.of(OrderTotalsSheet.TOTAL)));
    return Light.of(pairs, "Summary, Materials and Order totals");
  }

  /** Returns the cut list with where each stock piece comes from. */
  private static SheetSpec<CutSheets.Row> cutList(SheetSpec<CutSheets.Row> plain) {
    List<Column<CutSheets.Row>> columns = new ArrayList<>(plain.columns());
    columns.add(
        columns.size() - 1,
        Column.text(
            "Stock",
            9,
            row -> CutSheet.isInHand(row.pattern()) ? "ordered before" : "ordered besides"));
    return SheetSpec.landscape(
        plain.name(),
        "How stock is cut where pieces have changed; other cut lists still hold.",
        columns,
        plain.rows());
  }

  /** The Materials of a supplement are others, so its orders stand on figures of their own. */
  private static MaterialsSheet materialsOf(Estimate estimate, BatchUnits units) {
    Bought bought = estimate.bought();
    Estimate bare =
        new Estimate(
            estimate.batch(),
            List.of(),
            new Bought(
                List.of(),
                bought.orders(),
                bought.loads(),
                bought.cutSheets(),
                bought.offcuts(),
                bought.totals(),
                bought.cautions(),
                bought.problems()),
            estimate.problems(),
            estimate.version());
    RulesSheet rules = new RulesSheet(RuleClasses.all(), Documents.read());
    int most = SheetSpec.MOST_RECORDS;
    TakeoffSheet takeoff =
        new TakeoffSheet(
            bare,
            rules,
            new BasisLinks(RecordSheets.basis(bare)),
            new GivenSheets(bare, most),
            most);
    return new MaterialsSheet(bare, units, takeoff, most);
  }

  private static Estimate with(Estimate estimate, List<TakeOff> takeOffs) {
    return new Estimate(
        estimate.batch(), takeOffs, estimate.bought(), estimate.problems(), estimate.version());
  }
}
