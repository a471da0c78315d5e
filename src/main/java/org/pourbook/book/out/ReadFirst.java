package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.book.InputSheet;
import org.pourbook.book.Layout;

/**
 * The first sheet of a workbook: what it is, in which layout, for whom, in which order it is read,
 * what may be changed.
 *
 * @param title what the workbook is
 * @param says one sentence below it
 * @param parts what it tells, one after the other
 */
record ReadFirst(String title, String says, List<Part> parts) implements Sheet {

  /** Widths of the two columns; a portrait page holds them at full size. */
  private static final List<Integer> WIDTHS = List.of(22, 76);

  private static final int TITLE_HEIGHT = 24;

  ReadFirst {
    parts = List.copyOf(parts);
  }

  /** Lines under a heading. */
  record Part(String heading, List<Entry> entries) {
    Part {
      entries = List.copyOf(entries);
    }
  }

  /**
   * A line.
   *
   * @param sheet whether {@code name} is that of a sheet, to be linked to
   */
  record Entry(String name, String text, boolean sheet) {

    static Entry of(String name, String text) {
      return new Entry(name, text, false);
    }

    static Entry toSheet(String name, String text) {
      return new Entry(name, text, true);
    }

    private Cell cell() {
      return sheet
          ? Cell.formula("HYPERLINK(\"#" + Span.quoted(name) + "!A1\",\"" + name + "\")", name)
          : Cell.of(name);
    }
  }

  @Override
  public String name() {
    return InputSheet.READ_FIRST;
  }

  @Override
  public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
    for (int i = 0; i < WIDTHS.size(); i++) {
      sheet.setColumnWidth(i, WIDTHS.get(i) * SheetWriter.WIDTH_UNIT);
    }
    Pen pen = new Pen(rows);
    pen.next(TITLE_HEIGHT).write(0, Look.TITLE, Cell.of(title));
    pen.next().write(0, Look.SAYS, Cell.of(says));
    pen.next().write(0, Look.SAYS, Cell.of(Layout.LABEL));
    pen.write(1, Look.SAYS, Cell.of(Integer.toString(Layout.NUMBER)));
    for (Part part : parts) {
      if (part != parts.get(0)) {
        pen.next();
      }
      pen.next(TextLines.height(1)).write(0, Look.HEADING, Cell.of(part.heading()));
      pen.write(1, Look.HEADING, Cell.BLANK);
      part.entries().forEach(entry -> write(pen, entry));
    }
    sheet.setDisplayGridlines(false);
    paper.set(sheet, false);
    paper.setArea(sheet, pen.row(), WIDTHS.size() - 1, -1);
  }

  private static void write(Pen pen, Entry entry) {
    int lines =
        Math.max(
            TextLines.of(entry.name(), WIDTHS.get(0)), TextLines.of(entry.text(), WIDTHS.get(1)));
    pen.next(TextLines.height(lines));
    pen.write(0, entry.sheet() ? Look.LINK : Look.TEXT, entry.cell());
    pen.write(1, Look.TEXT, Cell.of(entry.text()));
  }
}
