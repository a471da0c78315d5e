package org.pourbook.book;

import java.math.BigDecimal;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.UnitSystem;

/**
 * The least and the greatest that a cell of a column may hold; signs are {@link
 * InputColumn.Least}'s matter.
 *
 * @param least of a number; of a length in nanometres; 0 for none
 * @param most likewise
 */
public record Bounds(BigDecimal least, BigDecimal most) {

  /** So long a bound is told in metres. */
  private static final Length LONG = Length.ofMillimetres(10_000);

  /** Returns what is usual for a column of that kind. */
  static Bounds of(CellKind kind, ColumnUnit unit) {
    boolean small = unit == ColumnUnit.INCHES;
    BigDecimal most =
        switch (kind) {
          case MONEY -> Greatest.MONEY;
          case COUNT -> Greatest.COUNT;
          case LENGTH, LENGTH_OR_WORD -> nanometres(small ? Greatest.DEPTH : Greatest.LENGTH);
          default -> Greatest.QUANTITY;
        };
    return new Bounds(BigDecimal.ZERO, most);
  }

  private static BigDecimal nanometres(Length length) {
    return BigDecimal.valueOf(length.nanometres());
  }

  Bounds from(BigDecimal number) {
    return new Bounds(number, most);
  }

  Bounds from(Length length) {
    return from(nanometres(length));
  }

  Bounds upTo(BigDecimal number) {
    return new Bounds(least, number);
  }

  Bounds upTo(Length length) {
    return upTo(nanometres(length));
  }

  /** Returns whether a number is within, whatever its sign; 0 says that there is none. */
  public boolean hold(BigDecimal number) {
    BigDecimal size = number.abs();
    return size.compareTo(most) <= 0 && (size.signum() == 0 || size.compareTo(least) >= 0);
  }

  public boolean hold(Length length) {
    return hold(nanometres(length));
  }

  /** Returns in words what a number should be: {@code at most 10000000}; empty where it is. */
  public String passedBy(BigDecimal number) {
    return hold(number)
        ? ""
        : number.abs().compareTo(most) > 0
            ? "at most " + NumberText.text(most)
            : "at least " + NumberText.text(least);
  }

  /** Returns the same of a length. */
  public String passedBy(Length length, UnitSystem units) {
    if (hold(length)) {
      return "";
    }
    boolean over = nanometres(length).abs().compareTo(most) > 0;
    Length bound = new Length((over ? most : least).longValueExact());
    boolean inMetres = units.isMetric() && !bound.isLessThan(LONG);
    return (over ? "at most " : "at least ")
        + (inMetres ? LengthFormat.metres(bound) : LengthFormat.of(bound, units));
  }
}
