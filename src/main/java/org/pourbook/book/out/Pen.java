package org.pourbook.book.out;

import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.jspecify.annotations.Nullable;

/** Writes a sheet that is laid out freely, row after row. */
final class Pen {

  private final SXSSFSheet sheet;
  private final CellWriter cells;
  private @Nullable SXSSFRow current;
  private int row = -1;

  Pen(SXSSFSheet sheet, CellWriter cells) {
    this.sheet = sheet;
    this.cells = cells;
  }

  /** Begins the next row. */
  Pen next() {
    row++;
    current = sheet.createRow(row);
    return this;
  }

  Pen next(float heightPoints) {
    next();
    if (current != null) {
      current.setHeightInPoints(heightPoints);
    }
    return this;
  }

  /** Writes a cell of the current row; {@code column} counts from 0. */
  Pen write(int column, Look look, Cell value) {
    if (current == null) {
      throw new IllegalStateException("no row begun");
    }
    cells.write(current, column, look, value);
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
