package org.pourbook.book.out;

import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.pourbook.problem.Place;

/**
 * A sheet that holds one table: its columns over its records. Every such sheet is laid out alike,
 * so that other sheets' formulas know where a record stands before anything is written.
 *
 * @param says what the sheet is, in one sentence under its name
 * @param landscape how it is printed
 * @param columns those that are printed come first
 */
record SheetSpec<R>(
    String name, String says, boolean landscape, List<Column<R>> columns, List<R> rows)
    implements Sheet {

  /** Rows as the spreadsheet counts them, from 1. */
  static final int TITLE_ROW = 1;

  static final int SAYS_ROW = 2;
  static final int TOTAL_ROW = 3;
  static final int HEADING_ROW = 4;
  static final int FIRST_ROW = 5;

  SheetSpec {
    columns =
        Stream.concat(
                columns.stream().filter(Column::printed),
                columns.stream().filter(column -> !column.printed()))
            .toList();
    rows = List.copyOf(rows);
  }

  static <R> SheetSpec<R> landscape(
      String name, String says, List<Column<R>> columns, List<R> rows) {
    return new SheetSpec<>(name, says, true, columns, rows);
  }

  static <R> SheetSpec<R> portrait(
      String name, String says, List<Column<R>> columns, List<R> rows) {
    return new SheetSpec<>(name, says, false, columns, rows);
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

  /** Returns how many columns are printed. */
  int printedColumns() {
    return (int) columns.stream().filter(Column::printed).count();
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
