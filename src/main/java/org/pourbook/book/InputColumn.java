package org.pourbook.book;

import java.math.BigDecimal;
import java.util.List;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;

/**
 * A column of an input sheet: one declaration for the reader and the template.
 *
 * @param heading without star and unit
 * @param least the least value of a number or length
 * @param bounds how small or great one may be
 * @param choices the words that a {@link CellKind#CHOICE} may hold
 * @param usual the default in words, empty for none
 * @param hint what to write, one line
 */
public record InputColumn(
    String heading,
    boolean required,
    CellKind kind,
    ColumnUnit unit,
    Least least,
    Bounds bounds,
    ColumnGroup group,
    List<String> choices,
    String usual,
    String hint) {

  /** The least value that makes sense. */
  public enum Least {
    ANY,
    ZERO,
    ABOVE_ZERO
  }

  public InputColumn {
    choices = List.copyOf(choices);
  }

  static InputColumn of(ColumnGroup group, String heading, CellKind kind, String hint) {
    return new InputColumn(
        heading,
        false,
        kind,
        ColumnUnit.NONE,
        Least.ANY,
        Bounds.of(kind, ColumnUnit.NONE),
        group,
        List.of(),
        "",
        hint);
  }

  InputColumn mustBeGiven() {
    return new InputColumn(heading, true, kind, unit, least, bounds, group, choices, usual, hint);
  }

  InputColumn in(ColumnUnit bareUnit) {
    return new InputColumn(
        heading,
        required,
        kind,
        bareUnit,
        least,
        Bounds.of(kind, bareUnit),
        group,
        choices,
        usual,
        hint);
  }

  InputColumn aboveZero() {
    return atLeast(Least.ABOVE_ZERO);
  }

  InputColumn zeroOrMore() {
    return atLeast(Least.ZERO);
  }

  /** Smaller ones make no sense, but for none at all. */
  InputColumn from(Length length) {
    return within(bounds.from(length));
  }

  InputColumn from(String number) {
    return within(bounds.from(new BigDecimal(number)));
  }

  InputColumn upTo(BigDecimal number) {
    return within(bounds.upTo(number));
  }

  InputColumn upTo(Length length) {
    return within(bounds.upTo(length));
  }

  private InputColumn within(Bounds others) {
    return new InputColumn(
        heading, required, kind, unit, least, others, group, choices, usual, hint);
  }

  private InputColumn atLeast(Least lowest) {
    return new InputColumn(
        heading, required, kind, unit, lowest, bounds, group, choices, usual, hint);
  }

  InputColumn oneOf(List<String> words) {
    return new InputColumn(heading, required, kind, unit, least, bounds, group, words, usual, hint);
  }

  InputColumn usually(String words) {
    return new InputColumn(
        heading, required, kind, unit, least, bounds, group, choices, words, hint);
  }

  /** Returns the heading as a template shows it: {@code Thickness* (in)}. */
  public String title(UnitSystem units) {
    String name = required ? heading + "*" : heading;
    String bracket = unit == ColumnUnit.PERCENT ? "" : unit.in(units);
    return bracket.isEmpty() ? name : name + " (" + bracket + ")";
  }

  /** Returns the hash of the heading, by which columns of a sheet differ. */
  @Override
  public int hashCode() {
    return heading.hashCode();
  }

  /** Returns what headings are compared by. */
  public String key() {
    return Heading.key(heading);
  }
}
