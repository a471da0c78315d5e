package org.pourbook.book.out;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DateUtil;
import org.pourbook.book.FormulaGuard;
import org.pourbook.problem.Place;

/**
 * Writes a sheet's rows as XML, one below the other: each cell with a style, each formula with its
 * stored value (ECMA-376 SpreadsheetML, {@code sheetData}). Texts stand in their cells, since a
 * table of texts would have to be held until the end.
 */
final class Rows {

  /** The longest text a cell holds (ECMA-376 SpreadsheetML, as spreadsheet programs keep it). */
  private static final int LONGEST_TEXT = 32_767;

  /** A time of day is kept as a part of a day. */
  private static final double SECONDS_OF_DAY = 86_400;

  /** Heights are kept in whole twentieths of a point. */
  private static final int TWENTIETHS = 20;

  private final Styles styles;
  private final OutputStream out;
  private final Utf8 head = new Utf8();
  private final Utf8 cells = new Utf8();
  private String[] columns = new String[0];

  /** The current row, counted from 1; 0 before the first. */
  private int row;

  private float height;
  private int lastColumn;

  /** Writes rows to a stream, from the first. */
  Rows(Styles styles, OutputStream out) {
    this.styles = styles;
    this.out = out;
  }

  Styles styles() {
    return styles;
  }

  /**
   * Ends the current row and begins another below it, counted from 0.
   *
   * @throws UncheckedIOException if the row before cannot be written
   */
  void next(int index) {
    if (index < row) {
      throw new IllegalArgumentException("row " + (index + 1) + " after row " + row);
    }
    end();
    row = index + 1;
    height = 0;
  }

  /** Sets the current row's height in points. */
  void height(float points) {
    height = points;
  }

  /** Writes a cell of the current row; {@code column} counts from 0. */
  void write(int column, Look look, Cell value) {
    Look holding = look.holding(value);
    if (value instanceof Cell.Text text) {
      boolean guarded = FormulaGuard.isTakenForFormula(text.text());
      begin(column, guarded ? styles.quoted(look) : styles.of(holding)).ascii("\" t=\"inlineStr");
      text(cells.ascii("\"><is><t"), text.text()).ascii("</t></is></c>");
    } else if (value instanceof Cell.Formula formula) {
      formula(begin(column, styles.of(holding)), formula);
    } else if (value instanceof Cell.Number number) {
      number(begin(column, styles.of(holding)), number.number());
    } else if (value instanceof Cell.Day day) {
      number(begin(column, styles.of(holding)), DateUtil.getExcelDate(day.day()));
    } else if (value instanceof Cell.Clock clock) {
      double seconds = clock.time().toSecondOfDay();
      number(begin(column, styles.of(holding)), seconds / SECONDS_OF_DAY);
    } else if (value instanceof Cell.YesNo yesNo) {
      begin(column, styles.of(holding)).ascii("\" t=\"b\"><v>");
      cells.ascii(yesNo.yes() ? "1</v></c>" : "0</v></c>");
    } else {
      begin(column, styles.of(holding)).ascii("\"/>");
    }
  }

  /** Returns the cells from the first to the last column and row written: {@code A1:J20}. */
  String area() {
    return "A1:" + name(lastColumn) + Math.max(row, 1);
  }

  private Utf8 begin(int column, CellStyle style) {
    lastColumn = Math.max(lastColumn, column);
    return cells
        .ascii("<c r=\"")
        .ascii(name(column))
        .number(row)
        .ascii("\" s=\"")
        .number(style.getIndex());
  }

  private String name(int column) {
    if (column >= columns.length) {
      String[] more = new String[column + 1];
      for (int i = 0; i <= column; i++) {
        more[i] = Place.columnName(i);
      }
      columns = more;
    }
    return columns[column];
  }

  private static void number(Utf8 cell, double number) {
    value(cell.ascii("\">"), number);
  }

  private static void value(Utf8 cell, double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("a cell cannot hold " + number);
    }
    cell.ascii("<v>").number(number).ascii("</v></c>");
  }

  private static void formula(Utf8 cell, Cell.Formula formula) {
    if (formula.stored() instanceof Cell.Number number) {
      value(cell.ascii("\"><f>").text(formula.formula()).ascii("</f>"), number.number());
    } else if (formula.stored() instanceof Cell.Text text) {
      cell.ascii("\" t=\"str\"><f>").text(formula.formula()).ascii("</f>");
      if (!text.text().isEmpty()) {
        text(cell.ascii("<v"), text.text()).ascii("</v>");
      }
      cell.ascii("</c>");
    } else {
      throw new IllegalArgumentException(
          "a formula stores a number or a text, not " + formula.stored());
    }
  }

  /** Ends an element's tag and writes its text, at whose ends blanks are kept. */
  private static Utf8 text(Utf8 cell, String text) {
    String whole = cut(text);
    boolean blanks =
        !whole.isEmpty() && (whole.charAt(0) <= ' ' || whole.charAt(whole.length() - 1) <= ' ');
    return cell.ascii(blanks ? " xml:space=\"preserve\">" : ">").text(whole);
  }

  private static String cut(String text) {
    if (text.length() <= LONGEST_TEXT) {
      return text;
    }
    int kept = LONGEST_TEXT - 1;
    return text.substring(0, Character.isHighSurrogate(text.charAt(kept - 1)) ? kept - 1 : kept)
        + "…";
  }

  /**
   * Ends the last row.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  void end() {
    if (row == 0) {
      return;
    }
    head.clear();
    head.ascii("<row r=\"").number(row);
    if (height > 0) {
      double kept = (int) (height * TWENTIETHS) / (double) TWENTIETHS;
      head.ascii("\" ht=\"").number(kept).ascii("\" customHeight=\"1");
    }
    head.ascii("\">");
    cells.ascii("</row>");
    try {
      head.writeTo(out);
      cells.writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    cells.clear();
  }
}
