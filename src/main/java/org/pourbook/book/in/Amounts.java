package org.pourbook.book.in;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.pourbook.book.InputColumn;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.Unit;

/** Numbers, lengths and dates out of cells, and the range in which they make sense. */
final class Amounts {

  static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /** A number that no {@link Length} holds, whatever its unit, is no length. */
  private static final BigDecimal LARGEST = BigDecimal.valueOf(1_000_000_000);

  private Amounts() {}

  /** Returns the day of ISO text; a time of day behind it does not matter. */
  static Optional<LocalDate> isoDate(String text) {
    try {
      String day = text.matches(".{10}[ T][0-9:.]+") ? text.substring(0, 10) : text;
      return Optional.of(LocalDate.parse(day));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  static Optional<BigDecimal> percentNumber(GivenCell cell) {
    if (cell instanceof GivenCell.Number number) {
      return Optional.of(NumberText.of(number.number()));
    }
    return words(cell)
        .map(text -> text.endsWith("%") ? text.substring(0, text.length() - 1) : text)
        .flatMap(NumberText::read);
  }

  static Optional<BigDecimal> plainNumber(GivenCell cell) {
    if (cell instanceof GivenCell.Number number) {
      return number.percent() ? Optional.empty() : Optional.of(NumberText.of(number.number()));
    }
    return words(cell).flatMap(NumberText::read);
  }

  static boolean inRange(BigDecimal number, InputColumn column) {
    return column.bounds().hold(number) && hasSign(number.signum(), column);
  }

  static Optional<Length> length(GivenCell cell, Unit bare) {
    if (cell instanceof GivenCell.Number) {
      return plainNumber(cell)
          .filter(number -> number.abs().compareTo(LARGEST) <= 0)
          .map(number -> LengthText.of(number, bare));
    }
    return words(cell).flatMap(text -> LengthText.read(text, bare));
  }

  static boolean inRange(Length length, InputColumn column) {
    return column.bounds().hold(length) && hasSign(Long.signum(length.nanometres()), column);
  }

  private static boolean hasSign(int sign, InputColumn column) {
    return switch (column.least()) {
      case ANY -> true;
      case ZERO -> sign >= 0;
      case ABOVE_ZERO -> sign > 0;
    };
  }

  static Optional<String> words(GivenCell cell) {
    return cell instanceof GivenCell.Text text ? Optional.of(text.text()) : Optional.empty();
  }
}
