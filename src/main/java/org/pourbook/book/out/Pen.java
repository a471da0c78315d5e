package org.pourbook.book.out;

/** Writes a sheet that is laid out freely, row after row. */
final class Pen {

  private final Rows rows;
  private int row = -1;

  Pen(Rows rows) {
    this.rows = rows;
  }

  /** Begins the next row. */
  Pen next() {
    row++;
    rows.next(row);
    return this;
  }

  Pen next(float heightPoints) {
    next();
    rows.height(heightPoints);
    return this;
  }

  /** Writes a cell of the current row; {@code column} counts from 0. */
  Pen write(int column, Look look, Cell value) {
    rows.write(column, look, value);
    return this;
  }

  /** Gives empty cells a look, from one column to another. */
  Pen blank(int from, int to, Look look) {
    for (int column = from; column <= to; column++) {
      write(column, look, Cell.BLANK);
    }
    return this;
  }

  /** Returns the current row, counted from 0; −1 before the first. */
  int row() {
    return row;
  }
}
