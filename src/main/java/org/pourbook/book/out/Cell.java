package org.pourbook.book.out;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Money;

/** What is written into a cell. */
sealed interface Cell {

  Cell BLANK = new Blank();

  /** Two figures that differ by less, relative to their size, are one figure. */
  double SAME = 1e-9;

  record Blank() implements Cell {}

  record Text(String text) implements Cell {}

  record Number(double number) implements Cell {}

  record Day(LocalDate day) implements Cell {}

  record Clock(LocalTime time) implements Cell {}

  record YesNo(boolean yes) implements Cell {}

  /**
   * A formula with the value it gives.
   *
   * @param formula without the leading equals sign
   * @param stored a text or a number
   */
  record Formula(String formula, Cell stored) implements Cell {}

  /** Returns a text; an empty one is a blank cell. */
  static Cell of(String text) {
    return text.isEmpty() ? BLANK : new Text(text);
  }

  static Cell of(double number) {
    return new Number(number);
  }

  static Cell of(BigDecimal number) {
    return new Number(number.doubleValue());
  }

  static Cell of(Money money) {
    return of(money.amount());
  }

  static Cell of(OptionalDouble number) {
    return number.isPresent() ? of(number.getAsDouble()) : BLANK;
  }

  static Cell ofPrice(Optional<BigDecimal> price) {
    return price.map(Cell::of).orElse(BLANK);
  }

  static Cell ofDay(Optional<LocalDate> day) {
    return day.<Cell>map(Day::new).orElse(BLANK);
  }

  static Cell ofYesNo(boolean yes) {
    return new Text(yes ? "yes" : "no");
  }

  /** Returns a text formula with the text it gives. */
  static Cell formula(String formula, String stored) {
    return new Formula(formula, new Text(stored));
  }

  /** Returns a formula with the number it gives. */
  static Cell formula(String formula, double stored) {
    return new Formula(formula, new Number(stored));
  }

  /**
   * Returns the formula where it gives the figure that was worked out, else the bare figure: what
   * rests on a layout or a cut plan, or was shared out between jobs, follows from no short formula.
   *
   * @param byFormula what a spreadsheet program will make of the formula
   * @param figure what was worked out and is stored
   */
  static Cell live(String formula, double byFormula, double figure) {
    return same(byFormula, figure) ? formula(formula, figure) : of(figure);
  }

  static boolean same(double one, double other) {
    return Math.abs(one - other) <= SAME * Math.max(1, Math.abs(other));
  }
}
