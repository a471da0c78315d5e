package org.pourbook.book.out;

/**
 * A record in its row, for columns whose formulas name other cells.
 *
 * @param row as the spreadsheet counts it, from 1, as if the table stood on one sheet
 */
record At<R>(R record, int row, SheetSpec<R> sheet) {

  /** Returns the name of the cell of another column in this row, e.g. {@code F12}. */
  String cell(String heading) {
    return sheet.letter(heading) + sheet.rowInSheet(row);
  }

  /** Returns the same cell for a formula that keeps naming it when its row is sorted away. */
  String fixed(String heading) {
    return "$" + sheet.letter(heading) + "$" + sheet.rowInSheet(row);
  }
}
