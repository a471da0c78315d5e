package org.pourbook.book.out;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.pourbook.measure.Money;

/**
 * A column of an output sheet.
 *
 * @param width in characters
 * @param totalled whether the line above the headings adds it up
 * @param printed whether it stands on paper; what only the screen needs stands right of the page
 */
record Column<R>(
    String heading,
    Look look,
    int width,
    boolean totalled,
    boolean printed,
    Function<At<R>, Cell> value) {

  /** Returns a column whose cells know their row. */
  static <R> Column<R> of(String heading, Look look, int width, Function<At<R>, Cell> value) {
    return new Column<>(heading, look, width, false, true, value);
  }

  static <R> Column<R> cell(String heading, Look look, int width, Function<R, Cell> value) {
    return of(heading, look, width, at -> value.apply(at.record()));
  }

  static <R> Column<R> text(String heading, int width, Function<R, String> value) {
    return cell(heading, Look.TEXT, width, row -> Cell.of(value.apply(row)));
  }

  static <R> Column<R> count(String heading, int width, ToDoubleFunction<R> value) {
    return number(heading, Look.COUNT, width, value);
  }

  static <R> Column<R> number(String heading, Look look, int width, ToDoubleFunction<R> value) {
    return cell(heading, look, width, row -> Cell.of(value.applyAsDouble(row)));
  }

  static <R> Column<R> money(String heading, int width, Function<R, Money> value) {
    return cell(heading, Look.MONEY, width, row -> Cell.of(value.apply(row)));
  }

  /** Returns the column as one that only the screen shows. */
  static <R> Column<R> onScreen(Column<R> column) {
    return new Column<>(
        column.heading, column.look, column.width, column.totalled, false, column.value);
  }

  /** Returns the width, no narrower than the heading's longest word. */
  int broadWidth() {
    return Math.max(width, TextLines.widthOfHeading(heading));
  }

  /** Returns the column added up above the headings. */
  Column<R> inTotal() {
    return new Column<>(heading, look, width, true, printed, value);
  }
}
