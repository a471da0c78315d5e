package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.pourbook.problem.Place;

/**
 * A sheet that holds one table: its columns over its records. Every such sheet is laid out alike,
 * so that other sheets' formulas know where a record stands before anything is written.
 *
 * @param says what the sheet is, in one sentence under its name
 * @param landscape how it is printed
 * @param printed how many of its columns are printed, from the first
 */
record SheetSpec<R>(
    String name, String says, boolean landscape, int printed, List<Column<R>> columns, List<R> rows)
    implements Sheet {

  /** Rows as the spreadsheet counts them, from 1. */
  static final int TITLE_ROW = 1;

  static final int SAYS_ROW = 2;
  static final int TOTAL_ROW = 3;
  static final int HEADING_ROW = 4;
  static final int FIRST_ROW = 5;

  SheetSpec {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  static <R> SheetSpec<R> landscape(
      String name, String says, List<Column<R>> columns, List<R> rows) {
    return new SheetSpec<>(name, says, true, columns.size(), columns, rows);
  }

  static <R> SheetSpec<R> portrait(
      String name, String says, List<Column<R>> columns, List<R> rows) {
    return new SheetSpec<>(name, says, false, columns.size(), columns, rows);
  }

  /** Returns the sheet printed without the columns from a heading on, which only programs read. */
  SheetSpec<R> printedBefore(String heading) {
    int before = columns.stream().map(Column::heading).toList().indexOf(heading);
    if (before < 1) {
      throw new IllegalArgumentException("no column " + heading + " in " + name);
    }
    return new SheetSpec<>(name, says, landscape, before, columns, rows);
  }

  /** Returns the letters of a column. */
  String letter(String heading) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).heading().equals(heading)) {
        return Place.columnName(i);
      }
    }
    throw new IllegalArgumentException("no column " + heading + " in " + name);
  }

  /** Returns the last row of the table, the heading's where it holds no record. */
  int lastRow() {
    return HEADING_ROW + rows.size();
  }

  At<R> at(int index) {
    return new At<>(rows.get(index), FIRST_ROW + index, this);
  }

  @Override
  public void writeTo(SXSSFSheet sheet, Styles styles, Paper paper) {
    new SheetWriter<>(this, sheet, styles, paper).write();
  }
}
