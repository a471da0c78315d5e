package org.pourbook.book;

import static org.pourbook.book.ColumnUnit.FEET;
import static org.pourbook.book.ColumnUnit.INCHES;
import static org.pourbook.book.ColumnUnit.PERCENT;
import static org.pourbook.book.ColumnUnit.SPEED;
import static org.pourbook.book.ColumnUnit.TEMPERATURE;

import java.util.List;
import org.pourbook.measure.Greatest;

/** The kinds of columns that several input sheets share. */
final class Columns {

  private Columns() {}

  static InputColumn text(ColumnGroup group, String heading, String hint) {
    return InputColumn.of(group, heading, CellKind.TEXT, hint);
  }

  static InputColumn code(String heading, String hint) {
    return InputColumn.of(ColumnGroup.WHAT, heading, CellKind.CODE, hint);
  }

  static InputColumn job() {
    return code("Job", "the job's code on sheet Jobs").mustBeGiven();
  }

  static InputColumn choice(ColumnGroup group, String heading, List<String> words, String hint) {
    return InputColumn.of(group, heading, CellKind.CHOICE, hint).oneOf(words);
  }

  static InputColumn yesNo(ColumnGroup group, String heading, String hint) {
    return InputColumn.of(group, heading, CellKind.YES_NO, hint).oneOf(List.of("yes", "no"));
  }

  /** A length whose bare number is feet, or metres in an m job. */
  static InputColumn feet(ColumnGroup group, String heading, String hint) {
    return InputColumn.of(group, heading, CellKind.LENGTH, hint).in(FEET);
  }

  /** X or Y of a place in a plan. */
  static InputColumn place(String heading, String hint) {
    return feet(ColumnGroup.POSITION, heading, hint).upTo(Greatest.PLACE);
  }

  /** A length whose bare number is inches, or millimetres in an m job. */
  static InputColumn inches(ColumnGroup group, String heading, String hint) {
    return InputColumn.of(group, heading, CellKind.LENGTH, hint).in(INCHES);
  }

  static InputColumn count(ColumnGroup group, String heading, String hint) {
    return InputColumn.of(group, heading, CellKind.COUNT, hint).aboveZero();
  }

  static InputColumn number(ColumnGroup group, String heading, String hint) {
    return InputColumn.of(group, heading, CellKind.NUMBER, hint);
  }

  static InputColumn percent(ColumnGroup group, String heading, String hint) {
    return InputColumn.of(group, heading, CellKind.PERCENT, hint).in(PERCENT).zeroOrMore();
  }

  static InputColumn money(String heading, String hint) {
    return InputColumn.of(ColumnGroup.BUYING, heading, CellKind.MONEY, hint).zeroOrMore();
  }

  static InputColumn of(ColumnGroup group, String heading, CellKind kind, String hint) {
    return InputColumn.of(group, heading, kind, hint);
  }

  static List<InputColumn> weather() {
    ColumnGroup group = ColumnGroup.WEATHER;
    return List.of(
        number(group, "Air temp", "forecast for the pour").in(TEMPERATURE),
        percent(group, "Humidity", "forecast relative humidity"),
        number(group, "Wind", "forecast wind").in(SPEED).zeroOrMore(),
        number(group, "Concrete temp", "expected at the chute").in(TEMPERATURE),
        percent(group, "Rain chance", "forecast"));
  }
}
