package org.pourbook.book.out;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.pourbook.book.ColumnGroup;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;
import org.pourbook.measure.UnitSystem;

/** An input sheet to be filled in: bands of what columns are about, hints, headings, an example. */
final class TemplateSheet implements Sheet {

  /** The first row to fill in, as the spreadsheet counts. */
  static final int FIRST_ROW = 6;

  private static final int LEAST_WIDTH = 11;
  private static final int TITLE_HEIGHT = 24;

  /** Columns so many characters wide are still read on one page across. */
  private static final int PAGE_WIDTH = 220;

  private final InputSheet input;
  private final UnitSystem units;
  private final InputCells cells;
  private final List<InputColumn> columns;
  private final List<Map<String, Cell>> rows;

  TemplateSheet(
      InputSheet input, UnitSystem units, InputCells cells, List<Map<String, Cell>> rows) {
    this.input = input;
    this.units = units;
    this.cells = cells;
    this.columns = InputCells.columns(input);
    this.rows = List.copyOf(rows);
  }

  @Override
  public String name() {
    return input.label();
  }

  @Override
  public void writeTo(XSSFSheet sheet, Rows out, Paper paper) {
    Pen pen = new Pen(out);
    for (int i = 0; i < columns.size(); i++) {
      sheet.setColumnWidth(i, width(i) * SheetWriter.WIDTH_UNIT);
      sheet.setDefaultColumnStyle(i, out.styles().of(look(columns.get(i))));
    }
    int last = columns.size() - 1;
    pen.next(TITLE_HEIGHT).write(0, Look.TITLE, Cell.of(input.label())).blank(1, last, Look.PLAIN);
    pen.next().write(0, Look.SAYS, Cell.of(says())).blank(1, last, Look.PLAIN);
    bands(pen);
    hints(pen);
    headings(pen);
    CellChecks checks = new CellChecks(sheet, input, cells);
    for (int i = 0; i < columns.size(); i++) {
      checks.add(columns.get(i), i, FIRST_ROW - 1);
    }
    rows.forEach(row -> row(pen, row));
    protectHeadings(sheet, out.styles());
    sheet.createFreezePane(2, FIRST_ROW - 1);
    sheet.setDisplayGridlines(false);
    paper.set(sheet, true);
    paper.spread(sheet, pagesWide());
    paper.setArea(sheet, FIRST_ROW + rows.size() - 2, lastPrinted(), FIRST_ROW - 2);
  }

  /** Columns beside a narrow table are printed too, so that the sentence over it is not cut. */
  private int lastPrinted() {
    int last = columns.size() - 1;
    int room = 0;
    for (int i = 0; i <= last; i++) {
      room += width(i);
    }
    while (room < says().length()) {
      last++;
      room += LEAST_WIDTH;
    }
    return last;
  }

  /**
   * Locks title, hints and headings without a password. Everything else may be done: rows can be
   * deleted whole only where no cell of theirs is locked, so the columns right of the last are open
   * too.
   */
  private void protectHeadings(XSSFSheet sheet, Styles styles) {
    CTCol beside = sheet.getCTWorksheet().getColsArray(0).addNewCol();
    beside.setMin(columns.size() + 1L);
    beside.setMax(SpreadsheetVersion.EXCEL2007.getMaxColumns());
    beside.setWidth(LEAST_WIDTH);
    beside.setStyle(styles.of(Look.OPEN).getIndex());
    sheet.enableLocking();
    sheet.lockFormatCells(false);
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockInsertColumns(false);
    sheet.lockInsertRows(false);
    sheet.lockInsertHyperlinks(false);
    sheet.lockDeleteColumns(false);
    sheet.lockDeleteRows(false);
    sheet.lockSort(false);
    sheet.lockAutoFilter(false);
    sheet.lockObjects(false);
  }

  /** A wide sheet goes over several pages, so that it can be read. */
  private int pagesWide() {
    int all = 0;
    for (int i = 0; i < columns.size(); i++) {
      all += width(i);
    }
    return (all + PAGE_WIDTH - 1) / PAGE_WIDTH;
  }

  private String says() {
    String required = input.isRequired() ? "" : " May be left empty.";
    return Character.toUpperCase(input.rowIs().charAt(0))
        + input.rowIs().substring(1)
        + ". Columns with * must be filled; any other may be blank and takes its default."
        + required;
  }

  /** The name of a group stands over its first column; bands of neighbours differ. */
  private void bands(Pen pen) {
    pen.next(TextLines.height(1));
    boolean other = false;
    for (int i = 0; i < columns.size(); i++) {
      ColumnGroup group = columns.get(i).group();
      boolean first = i == 0 || columns.get(i - 1).group() != group;
      other = first ? !other : other;
      pen.write(
          i, other ? Look.BAND : Look.BAND_OTHER, first ? Cell.of(group.label()) : Cell.BLANK);
    }
  }

  private void hints(Pen pen) {
    int lines = 1;
    for (int i = 0; i < columns.size(); i++) {
      lines = Math.max(lines, TextLines.ofHint(hint(columns.get(i)), width(i)));
    }
    pen.next(TextLines.height(lines));
    for (int i = 0; i < columns.size(); i++) {
      pen.write(i, Look.HINT, Cell.of(hint(columns.get(i))));
    }
  }

  private static String hint(InputColumn column) {
    String usual = column.usual().isEmpty() ? "" : "blank: " + column.usual();
    return column.hint().isEmpty() || usual.isEmpty()
        ? column.hint() + usual
        : column.hint() + "; " + usual;
  }

  private void headings(Pen pen) {
    int lines = 1;
    for (int i = 0; i < columns.size(); i++) {
      lines = Math.max(lines, TextLines.ofHeading(columns.get(i).title(units), width(i)));
    }
    pen.next(TextLines.height(lines));
    for (int i = 0; i < columns.size(); i++) {
      pen.write(i, Look.HEADING, Cell.of(columns.get(i).title(units)));
    }
  }

  private void row(Pen pen, Map<String, Cell> row) {
    int lines = 1;
    for (int i = 0; i < columns.size(); i++) {
      if (value(row, i) instanceof Cell.Text text) {
        lines = Math.max(lines, TextLines.of(text.text(), width(i)));
      }
    }
    pen.next(TextLines.height(lines));
    for (int i = 0; i < columns.size(); i++) {
      pen.write(i, look(columns.get(i)), value(row, i));
    }
  }

  private Cell value(Map<String, Cell> row, int column) {
    return row.getOrDefault(columns.get(column).heading(), Cell.BLANK);
  }

  private int width(int index) {
    InputColumn column = columns.get(index);
    int usual =
        switch (column.kind()) {
          case TEXT -> column.group() == ColumnGroup.NOTES ? 30 : 24;
          case DATE, BARS -> 15;
          default -> LEAST_WIDTH;
        };
    return Math.max(usual, TextLines.widthOfHeading(column.title(units)));
  }

  private static Look look(InputColumn column) {
    return switch (column.kind()) {
      case DATE -> Look.DATE;
      case TIME -> Look.TIME;
      // A program would make a date of 1/2 and of 3-4 in a cell that is not of text.
      case TEXT, CODE, CHOICE, YES_NO, SIZE, BARS, BAR_RUN, SIDES -> Look.TEXT;
      default -> Look.GIVEN;
    };
  }
}
