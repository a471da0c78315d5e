package org.pourbook.book.out;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.regex.Pattern;
import org.pourbook.book.InputColumn;

/** A value of a filled sheet as a person would have typed it: a number, a date, a time or text. */
final class FilledCell {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);

  private FilledCell() {}

  static Cell of(InputColumn column, String text) {
    if (text.isEmpty()) {
      return Cell.BLANK;
    }
    try {
      return switch (column.kind()) {
        case DATE -> new Cell.Day(LocalDate.parse(text));
        case TIME -> new Cell.Clock(LocalTime.parse(text, CLOCK));
        case TEXT, CODE, SIZE, CHOICE, YES_NO, BARS, BAR_RUN, SIDES -> Cell.of(text);
        case NUMBER, COUNT, PERCENT, MONEY, LENGTH, LENGTH_OR_WORD ->
            NUMBER.matcher(text).matches() ? Cell.of(Double.parseDouble(text)) : Cell.of(text);
      };
    } catch (DateTimeParseException e) {
      return Cell.of(text);
    }
  }
}
