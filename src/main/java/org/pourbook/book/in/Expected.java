package org.pourbook.book.in;

import org.pourbook.book.CellKind;
import org.pourbook.book.ColumnUnit;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputColumn.Least;
import org.pourbook.job.BarText;
import org.pourbook.measure.UnitSystem;

/** What would be right in a cell, in words. */
final class Expected {

  private Expected() {}

  static String in(InputColumn column, UnitSystem units) {
    return switch (column.kind()) {
      case CODE, TEXT, SIZE ->
          column.hint().isEmpty() ? "a text" : "a text (" + column.hint() + ")";
      case CHOICE -> String.join(", ", column.choices());
      case YES_NO -> "yes or no";
      case DATE -> "a date, such as 2027-04-13";
      case TIME -> "a time of day, such as 7:00";
      case NUMBER, COUNT, PERCENT, MONEY -> number(column, units);
      case LENGTH -> length(column, units);
      case LENGTH_OR_WORD -> length(column, units) + "; or " + column.hint();
      case BARS ->
          "bars at a spacing, such as "
              + (units.isMetric() ? "10M @ 400 EW" : "#4 @ 16 EW")
              + "; so many of a size stand under Edge bars";
      case BAR_RUN ->
          "so many bars of a size, such as "
              + (units.isMetric() ? "2 10M" : "2 #4")
              + ", at most "
              + BarText.MOST_BARS;
      case SIDES -> "sides: " + column.hint();
    };
  }

  private static String number(InputColumn column, UnitSystem units) {
    String what =
        switch (column.kind()) {
          case COUNT -> "a whole number";
          case PERCENT -> "a percentage from 0 to 100, such as 5 or 5%";
          case MONEY -> "an amount of money";
          default -> "a number";
        };
    String unit = column.kind() == CellKind.PERCENT ? "" : column.unit().in(units);
    return what
        + (column.kind() == CellKind.PERCENT ? "" : least(column))
        + (unit.isEmpty() ? "" : " [" + unit + "]");
  }

  private static String length(InputColumn column, UnitSystem units) {
    boolean small = column.unit() == ColumnUnit.INCHES;
    String example =
        units.isMetric()
            ? (small ? "100 or 100 mm" : "7.5 or 7500 mm")
            : (small ? "4 or 4 1/2\"" : "24'-6 1/2\" or 24.5");
    return "a length" + least(column) + ", such as " + example;
  }

  private static String least(InputColumn column) {
    if (column.least() == Least.ANY) {
      return "";
    }
    return column.least() == Least.ZERO ? ", zero or more" : " above zero";
  }
}
