package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.buy.CutSheet;
import org.pourbook.measure.LengthFormat;

/** The cut list for the saw: large type, a block a plan, a box a set-up. */
final class CuttingSheet implements Sheet {

  static final String NAME = "Cutting";

  private static final int BOX = 0;
  private static final int TAKE = 1;
  private static final int CUTS = 2;
  private static final int REST = 3;
  private static final List<Integer> WIDTHS = List.of(5, 21, 50, 16);

  private final List<CutSheet> plans;

  CuttingSheet(List<CutSheet> plans) {
    this.plans = List.copyOf(plans);
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
    for (int i = 0; i < WIDTHS.size(); i++) {
      sheet.setColumnWidth(i, WIDTHS.get(i) * SheetWriter.WIDTH_UNIT);
    }
    ShopPen pen = new ShopPen(sheet, rows);
    if (plans.isEmpty()) {
      pen.page(NAME, "Nothing is cut.");
    }
    List<String> before = List.of();
    for (CutSheet plan : plans) {
      if (!plan.jobs().equals(before)) {
        pen.page("Cutting " + String.join(", ", plan.jobs()), "Tick a line when it is cut.");
        before = plan.jobs();
      }
      plan(pen, plan);
    }
    sheet.setDisplayGridlines(false);
    paper.set(sheet, false);
    paper.setArea(sheet, pen.lastRow(), WIDTHS.size() - 1, -1);
  }

  private static void plan(ShopPen pen, CutSheet plan) {
    List<List<CutSheets.Row>> setUps = setUps(plan);
    pen.block(ShopPen.height(1) + (setUps.isEmpty() ? 0 : height(setUps.get(0))));
    Pen head = pen.row(ShopPen.height(1));
    head.write(
        BOX, Look.SHOP_HEADING, Cell.of((plan.key().material() + " " + plan.key().size()).strip()));
    head.blank(TAKE, TAKE, Look.SHOP_HEADING);
    head.write(CUTS, Look.SHOP_HEADING, Cell.of("cut into"));
    head.write(REST, Look.SHOP_HEADING, Cell.of("left over"));
    for (int i = 0; i < setUps.size(); i++) {
      if (i > 0) {
        pen.keep(height(setUps.get(i)));
      }
      setUp(pen, setUps.get(i));
    }
  }

  /** Returns the rows of a plan's cut list by set-up of the saw. */
  private static List<List<CutSheets.Row>> setUps(CutSheet plan) {
    Map<Integer, List<CutSheets.Row>> setUps = new TreeMap<>();
    CutSheets.rows(plan)
        .forEach(row -> setUps.computeIfAbsent(row.setUp(), key -> new ArrayList<>()).add(row));
    return List.copyOf(setUps.values());
  }

  private static void setUp(ShopPen pen, List<CutSheets.Row> rows) {
    CutSheets.Row first = rows.get(0);
    Pen cut = pen.row(ShopPen.height(lines(rows)));
    cut.write(BOX, Look.SHOP_TICK, Cell.BLANK);
    cut.write(TAKE, Look.SHOP_STRONG, Cell.of(take(rows)));
    cut.write(CUTS, Look.SHOP, Cell.of(CutSheets.cuts(first)));
    cut.write(REST, Look.SHOP, Cell.of(LengthFormat.of(first.pattern().offcut(), first.units())));
    Pen below = pen.row(TextLines.height(linesOfPlaces(rows)));
    below.blank(BOX, TAKE, Look.TEXT);
    below.write(CUTS, Look.TEXT, Cell.of(places(rows)));
    below.write(REST, Look.TEXT, Cell.BLANK);
  }

  /** Returns how many of what stock: {@code 21 x 40'-0"}. */
  private static String take(List<CutSheets.Row> rows) {
    CutSheets.Row first = rows.get(0);
    int times = rows.stream().mapToInt(row -> row.pattern().times()).sum();
    return times + " x " + LengthFormat.of(first.pattern().stock().length(), first.units());
  }

  /** Returns where the pieces go; of several rows each with how many stock pieces it takes. */
  private static String places(List<CutSheets.Row> rows) {
    if (rows.size() == 1) {
      return CutSheets.goesTo(rows.get(0));
    }
    return rows.stream()
        .map(row -> row.pattern().times() + " for " + CutSheets.goesTo(row))
        .collect(Collectors.joining("\n"));
  }

  private static int lines(List<CutSheets.Row> rows) {
    return Math.max(
        ShopPen.lines(take(rows), WIDTHS.get(TAKE)),
        ShopPen.lines(CutSheets.cuts(rows.get(0)), WIDTHS.get(CUTS)));
  }

  private static int linesOfPlaces(List<CutSheets.Row> rows) {
    return TextLines.of(places(rows), WIDTHS.get(CUTS));
  }

  private static float height(List<CutSheets.Row> rows) {
    return ShopPen.height(lines(rows)) + TextLines.height(linesOfPlaces(rows));
  }
}
