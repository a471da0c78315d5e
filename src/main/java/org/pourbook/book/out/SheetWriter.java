package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.problem.Place;

/** Writes any declared sheet. */
final class SheetWriter<R> {

  /** Widths count in 1/256 of a character. */
  static final int WIDTH_UNIT = 256;

  /** So many characters are still read where a landscape page is as wide as they. */
  private static final int PAGE_WIDTH = 200;

  private static final int TITLE_HEIGHT = 24;

  /** Column of the light, beside a title over two columns. */
  private static final int LIGHT_COLUMN = 2;

  private static final int TOTAL_HEIGHT = 18;

  private final SheetSpec<R> spec;
  private final int part;
  private final XSSFSheet sheet;
  private final Rows rows;
  private final Paper paper;

  SheetWriter(SheetSpec<R> spec, int part, XSSFSheet sheet, Rows rows, Paper paper) {
    this.spec = spec;
    this.part = part;
    this.sheet = sheet;
    this.rows = rows;
    this.paper = paper;
  }

  void write() {
    List<Column<R>> columns = spec.columns();
    for (int i = 0; i < columns.size(); i++) {
      sheet.setColumnWidth(i, columns.get(i).broadWidth() * WIDTH_UNIT);
    }
    title();
    totals();
    headings();
    int end = spec.parts().end(part, spec.rows().size());
    for (int i = spec.parts().starts().get(part); i < end; i++) {
      row(spec.at(i));
    }
    page();
  }

  private void title() {
    rows.next(SheetSpec.TITLE_ROW - 1);
    rows.height(TITLE_HEIGHT);
    rows.write(0, Look.TITLE, Cell.of(spec.nameOf(part)));
    if (spec.light() instanceof Cell.Formula light && part == 0) {
      rows.write(LIGHT_COLUMN, Look.LIGHT_OF_ALL, light);
      Light.colour(
          sheet,
          Place.columnName(LIGHT_COLUMN) + SheetSpec.TITLE_ROW,
          new CellRangeAddress(0, 0, LIGHT_COLUMN, LIGHT_COLUMN));
    }
    rows.next(SheetSpec.SAYS_ROW - 1);
    rows.write(0, Look.SAYS, Cell.of(says()));
  }

  private String says() {
    return part == 0 ? spec.says() : "Goes on from " + spec.nameOf(part - 1) + ".";
  }

  private void totals() {
    if (part > 0 || spec.rows().isEmpty() || spec.columns().stream().noneMatch(Column::totalled)) {
      return;
    }
    rows.next(SheetSpec.TOTAL_ROW - 1);
    rows.height(TOTAL_HEIGHT);
    rows.write(0, Look.TOTAL_TEXT, Cell.of("Total"));
    for (int i = 1; i < spec.columns().size(); i++) {
      Column<R> column = spec.columns().get(i);
      if (column.totalled()) {
        rows.write(i, column.look().total(), Cell.formula(sum(i), spec.total(column)));
      }
    }
  }

  /** Returns the formula that adds up a column, through all sheets of the table. */
  private String sum(int column) {
    String letter = Place.columnName(column);
    StringBuilder sum = new StringBuilder();
    for (int each = 0; each < spec.parts().count(); each++) {
      String sheet = each == 0 ? "" : Span.quoted(spec.nameOf(each)) + "!";
      sum.append(each == 0 ? "SUM(" : "+SUM(")
          .append(sheet + letter + SheetSpec.FIRST_ROW + ":" + letter + spec.lastRowOf(each) + ")");
    }
    return sum.toString();
  }

  private void headings() {
    rows.next(SheetSpec.HEADING_ROW - 1);
    int lines = 1;
    for (int i = 0; i < spec.columns().size(); i++) {
      Column<R> column = spec.columns().get(i);
      rows.write(i, column.look().heading(), Cell.of(column.heading()));
      lines = Math.max(lines, TextLines.ofHeading(column.heading(), column.broadWidth()));
    }
    rows.height(TextLines.height(lines));
  }

  private void row(At<R> at) {
    rows.next(spec.rowInSheet(at.row()) - 1);
    int lines = 1;
    for (int i = 0; i < spec.columns().size(); i++) {
      Column<R> column = spec.columns().get(i);
      Cell value = column.value().apply(at);
      rows.write(i, column.look(), value);
      if (value instanceof Cell.Text text && column.look().isWrapped()) {
        lines = Math.max(lines, TextLines.of(text.text(), column.broadWidth()));
      }
    }
    rows.height(TextLines.height(lines));
  }

  private void lights() {
    for (int i = 0; i < spec.columns().size(); i++) {
      if (spec.columns().get(i).look() == Look.LIGHT
          && spec.lastRowOf(part) > SheetSpec.HEADING_ROW) {
        int first = SheetSpec.FIRST_ROW;
        Light.colour(
            sheet,
            Place.columnName(i) + first,
            new CellRangeAddress(first - 1, spec.lastRowOf(part) - 1, i, i));
      }
    }
  }

  private void page() {
    int lastColumn = spec.columns().size() - 1;
    sheet.createFreezePane(0, SheetSpec.HEADING_ROW);
    if (!spec.rows().isEmpty()) {
      sheet.setAutoFilter(
          new CellRangeAddress(SheetSpec.HEADING_ROW - 1, spec.lastRowOf(part) - 1, 0, lastColumn));
    }
    lights();
    sheet.setDisplayGridlines(false);
    paper.set(sheet, spec.landscape());
    paper.spread(sheet, (spec.printedWidth() + PAGE_WIDTH - 1) / PAGE_WIDTH);
    int last = spec.lastRowOf(part);
    int below = part == 0 ? spec.below().writeTo(sheet, last + 1) : 0;
    paper.setArea(sheet, last + below - 1, spec.printedColumns() - 1, SheetSpec.HEADING_ROW - 1);
  }
}
