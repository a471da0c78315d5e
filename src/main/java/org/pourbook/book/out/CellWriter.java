package org.pourbook.book.out;

import org.apache.poi.xssf.streaming.SXSSFCell;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.pourbook.book.FormulaGuard;

/** Writes cells of one workbook: each with a style, each formula with its stored value. */
final class CellWriter {

  /** The longest text a cell holds (ECMA-376 SpreadsheetML, as spreadsheet programs keep it). */
  private static final int LONGEST_TEXT = 32_767;

  /** A time of day is kept as a part of a day. */
  private static final double SECONDS_OF_DAY = 86_400;

  private final Styles styles;

  CellWriter(Styles styles) {
    this.styles = styles;
  }

  /** Writes a cell; {@code column} counts from 0. */
  void write(SXSSFRow row, int column, Look look, Cell value) {
    SXSSFCell cell = row.createCell(column);
    cell.setCellStyle(styles.of(look.holding(value)));
    if (value instanceof Cell.Text text) {
      if (FormulaGuard.isTakenForFormula(text.text())) {
        cell.setCellStyle(styles.quoted(look));
      }
      cell.setCellValue(cut(text.text()));
    } else if (value instanceof Cell.Number number) {
      cell.setCellValue(number.number());
    } else if (value instanceof Cell.Day day) {
      cell.setCellValue(day.day());
    } else if (value instanceof Cell.Clock clock) {
      cell.setCellValue(clock.time().toSecondOfDay() / SECONDS_OF_DAY);
    } else if (value instanceof Cell.YesNo yesNo) {
      cell.setCellValue(yesNo.yes());
    } else if (value instanceof Cell.Formula formula) {
      cell.setCellFormula(formula.formula());
      store(cell, formula.stored());
    }
  }

  private static void store(SXSSFCell cell, Cell stored) {
    if (stored instanceof Cell.Number number) {
      cell.setCellValue(number.number());
    } else if (stored instanceof Cell.Text text) {
      cell.setCellValue(cut(text.text()));
    } else {
      throw new IllegalArgumentException("a formula stores a number or a text, not " + stored);
    }
  }

  private static String cut(String text) {
    return text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT - 1) + "…";
  }
}
