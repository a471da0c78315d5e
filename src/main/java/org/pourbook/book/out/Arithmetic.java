package org.pourbook.book.out;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Worked;

/** Writes the arithmetic of a figure as a formula, in the units of its cells. */
final class Arithmetic {

  /** Digits of a factor: more than any check compares. */
  private static final MathContext DIGITS = new MathContext(14);

  private static final double WHOLE = 1e-11;
  private static final double MOST_DIVISOR = 1_000_000;

  /** The cell of a figure with the base units in one unit of it. */
  record Cell(String name, double perUnit) {}

  /**
   * What a part of a formula gives, times a factor, is the figure.
   *
   * @param text empty for one
   */
  private record Text(double factor, String text, boolean sum) {}

  private final Function<Worked, Optional<Cell>> cellOf;

  /**
   * Makes a writer.
   *
   * @param cellOf the cell of a {@link Worked.Given} or {@link Worked.Other}, if there is one
   */
  Arithmetic(Function<Worked, Optional<Cell>> cellOf) {
    this.cellOf = cellOf;
  }

  /** Returns the formula that gives a figure in a unit; empty where none does. */
  Optional<String> formula(Worked worked, Unit unit) {
    if (!worked.isLive()) {
      return Optional.empty();
    }
    Text text = text(worked);
    return text.text().isEmpty()
        ? Optional.empty()
        : Optional.of(scaled(text.factor() / unit.toBase(1), text));
  }

  private Text text(Worked worked) {
    if (worked instanceof Worked.Product product) {
      return product(product);
    }
    if (worked instanceof Worked.Sum sum) {
      return sum(sum);
    }
    if (worked instanceof Worked.Least least) {
      return least(text(least.one()), text(least.other()));
    }
    return cellOf
        .apply(worked)
        .map(cell -> new Text(cell.perUnit(), cell.name(), false))
        .orElse(new Text(worked.value(), "", false));
  }

  private Text product(Worked.Product product) {
    double factor = 1;
    List<String> texts = new ArrayList<>();
    for (Worked one : product.factors()) {
      Text text = text(one);
      factor *= text.factor();
      if (!text.text().isEmpty()) {
        String whole = text.sum() ? "(" + text.text() + ")" : text.text();
        int last = texts.size() - 1;
        if (last >= 0 && texts.get(last).equals(whole)) {
          texts.set(last, whole + "^2");
        } else {
          texts.add(whole);
        }
      }
    }
    return new Text(factor, String.join("*", texts), false);
  }

  private Text sum(Worked.Sum sum) {
    List<Text> parts =
        sum.parts().stream().map(this::text).filter(part -> part.factor() != 0).toList();
    double factor =
        parts.stream()
            .filter(part -> !part.text().isEmpty())
            .map(Text::factor)
            .findFirst()
            .orElse(1.0);
    StringBuilder text = new StringBuilder();
    for (Text part : parts) {
      String next = scaled(part.factor() / factor, part);
      text.append(text.isEmpty() || next.startsWith("-") ? "" : "+").append(next);
    }
    return new Text(factor, text.toString(), parts.size() > 1);
  }

  /** Both in the unit of the first that is a cell's. */
  private static Text least(Text one, Text other) {
    double factor = one.text().isEmpty() ? other.factor() : one.factor();
    String both = scaled(one.factor() / factor, one) + "," + scaled(other.factor() / factor, other);
    return new Text(factor, "MIN(" + both + ")", false);
  }

  /** Returns a text times a factor: {@code A1*B1/324}. */
  private static String scaled(double factor, Text of) {
    if (of.text().isEmpty()) {
      return number(factor);
    }
    String whole = of.sum() ? "(" + of.text() + ")" : of.text();
    double size = Math.abs(factor);
    String sign = factor < 0 ? "-" : "";
    if (isWhole(1 / size) && 1 / size < MOST_DIVISOR) {
      long divisor = Math.round(1 / size);
      if (divisor == 1) {
        return sign.isEmpty() ? of.text() : sign + whole;
      }
      return sign + whole + "/" + divisor;
    }
    return sign + whole + "*" + number(size);
  }

  private static boolean isWhole(double number) {
    return Math.abs(number - Math.rint(number)) <= WHOLE * Math.abs(number) && number >= 0.5;
  }

  /** Returns a number as formulas write it. */
  static String number(double number) {
    if (isWhole(Math.abs(number))) {
      return Long.toString(Math.round(number));
    }
    return new BigDecimal(number).round(DIGITS).stripTrailingZeros().toPlainString();
  }
}
