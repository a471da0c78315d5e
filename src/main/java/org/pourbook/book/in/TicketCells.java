package org.pourbook.book.in;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.TimeText;
import org.pourbook.measure.Unit;

/** What plants write into cells of tickets: money with a sign, full times, dates with slashes. */
final class TicketCells {

  private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");
  private static final Pattern DAY_AND_TIME = Pattern.compile("(\\S+)[ T](\\d{1,2}:\\d{2}.*)");
  private static final Pattern WITH_UNIT = Pattern.compile("(\\S+) ?([a-zA-Z]+)");

  /** Other words for the fees that suppliers list. */
  private static final Map<String, String> CHARGES =
      Map.ofEntries(
          Map.entry("short load fee", "short load"),
          Map.entry("short load charge", "short load"),
          Map.entry("delivery fee", "delivery"),
          Map.entry("delivery charge", "delivery"),
          Map.entry("freight", "delivery"),
          Map.entry("waiting time", "waiting"),
          Map.entry("wait time", "waiting"),
          Map.entry("standby", "waiting"),
          Map.entry("load fee", "fee per load"));

  private TicketCells() {}

  /** Returns whether a cell holds more than one row of an order or a bill comes to. */
  static boolean isBeyond(GivenCell cell) {
    return written(cell).filter(number -> number.abs().compareTo(Greatest.LINE) > 0).isPresent();
  }

  /** Returns a charge by the name that our own fees have. */
  static String charge(String words) {
    String key = words.toLowerCase(Locale.ROOT).replace('-', ' ');
    return CHARGES.getOrDefault(key, CHARGES.containsValue(key) ? key : words);
  }

  /**
   * Returns a number, of no more than all jobs together come to; money may carry its sign, or
   * brackets when it is taken off.
   */
  static Optional<BigDecimal> number(GivenCell cell) {
    return written(cell).filter(number -> number.abs().compareTo(Greatest.BATCH) <= 0);
  }

  private static Optional<BigDecimal> written(GivenCell cell) {
    if (cell instanceof GivenCell.Number number && !number.percent()) {
      return Optional.of(NumberText.of(number.number()));
    }
    if (!(cell instanceof GivenCell.Text text)) {
      return Optional.empty();
    }
    String words = text.text().replace("$", "").strip();
    boolean off = words.startsWith("(") && words.endsWith(")");
    return NumberText.read(off ? words.substring(1, words.length() - 1) : words)
        .map(number -> off ? number.negate() : number);
  }

  /**
   * Returns a date.
   *
   * @param order {@code m/d/y} or {@code d/m/y} where the heading says it; else a date with slashes
   *     is read only where one of its numbers can be no month
   */
  static Optional<LocalDate> date(GivenCell cell, String order) {
    if (cell instanceof GivenCell.Date date) {
      return Optional.of(date.date());
    }
    String words = CellWords.of(cell);
    Matcher full = DAY_AND_TIME.matcher(words);
    String day = full.matches() ? full.group(1) : words;
    Matcher slashes = SLASHES.matcher(day);
    return slashes.matches()
        ? slashed(slashes, order.toLowerCase(Locale.ROOT).replace(" ", ""))
        : Amounts.isoDate(day);
  }

  private static Optional<LocalDate> slashed(Matcher slashes, String order) {
    int first = Integer.parseInt(slashes.group(1));
    int second = Integer.parseInt(slashes.group(2));
    boolean monthFirst = order.startsWith("m") || (!order.startsWith("d") && second > 12);
    boolean dayFirst = order.startsWith("d") || (!order.startsWith("m") && first > 12);
    if (!monthFirst && !dayFirst && first != second) {
      return Optional.empty();
    }
    int month = dayFirst ? second : first;
    int dayOfMonth = dayFirst ? first : second;
    return Amounts.isoDate(
        String.format(Locale.ROOT, "%s-%02d-%02d", slashes.group(3), month, dayOfMonth));
  }

  /** Returns a time of day, of a full time too. */
  static Optional<LocalTime> time(GivenCell cell) {
    if (cell instanceof GivenCell.Time time) {
      return Optional.of(time.time());
    }
    if (cell instanceof GivenCell.Date) {
      return Optional.of(LocalTime.MIDNIGHT); // a full time of which the time is 0:00
    }
    String words = CellWords.of(cell);
    Matcher full = DAY_AND_TIME.matcher(words);
    return TimeText.read(full.matches() ? full.group(2) : words);
  }

  /** Returns water in litres; a bare number is in gallons unless the heading says litres. */
  static Optional<OptionalDouble> litres(GivenCell cell, String headingUnit) {
    Matcher worded = WITH_UNIT.matcher(CellWords.of(cell));
    GivenCell amount = worded.matches() ? new GivenCell.Text(worded.group(1)) : cell;
    String word = worded.matches() ? worded.group(2) : headingUnit.isEmpty() ? "gal" : headingUnit;
    return Unit.named(word)
        .filter(unit -> unit == Unit.GAL || unit == Unit.L)
        .flatMap(
            unit ->
                number(amount)
                    .filter(number -> number.signum() >= 0)
                    .filter(number -> number.compareTo(Greatest.QUANTITY) <= 0)
                    .map(n -> OptionalDouble.of(Unit.L.fromBase(unit.toBase(n.doubleValue())))));
  }
}
