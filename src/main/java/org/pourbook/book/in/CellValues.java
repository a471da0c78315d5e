package org.pourbook.book.in;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DateUtil;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.measure.NumberText;

/** Turns what files store into cell values. */
final class CellValues {

  /** Stands for the value of a formula that no program has calculated. */
  static final GivenCell NOT_CALCULATED = new GivenCell.Error("a formula without a stored value");

  /** 10000-01-01 as a spreadsheet counts days. */
  private static final double END_OF_DATES = 2_958_466;

  private static final DateTimeFormatter DATE_AND_TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

  private CellValues() {}

  static GivenCell text(String text) {
    String words = trimmed(text);
    return words.isEmpty() ? RawRow.BLANK : new GivenCell.Text(words);
  }

  /** Returns the text without spaces, also the ones that do not break, at its ends. */
  private static String trimmed(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isSpace(text.charAt(from))) {
      from++;
    }
    while (to > from && isSpace(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c)
        || c == '\u00a0'
        || c == '\u2007'
        || c == '\u202f'
        || c == '\u200b'
        || c == '\ufeff';
  }

  static GivenCell number(double number, CellStyle style, boolean date1904) {
    return switch (style) {
      case PLAIN -> new GivenCell.Number(number, false);
      case PERCENT ->
          new GivenCell.Number(NumberText.of(number).movePointRight(2).doubleValue(), true);
      case DATE -> date(number, date1904);
    };
  }

  private static GivenCell date(double days, boolean date1904) {
    if (days < 0 || days >= END_OF_DATES) {
      return new GivenCell.Number(days, false);
    }
    if (days < 1) {
      long second = Math.min(Math.round(days * 86_400), 86_399);
      return new GivenCell.Time(LocalTime.ofSecondOfDay(second));
    }
    LocalDateTime moment = DateUtil.getLocalDateTime(days, date1904, true);
    return moment.toLocalTime().equals(LocalTime.MIDNIGHT)
        ? new GivenCell.Date(moment.toLocalDate())
        : new GivenCell.Text(DATE_AND_TIME.format(moment));
  }

  /** How a number is to be understood. */
  enum CellStyle {
    PLAIN,
    PERCENT,
    DATE;

    /** Returns the style of a number format. */
    static CellStyle of(int formatId, String format) {
      if (DateUtil.isADateFormat(formatId, format)) {
        return DATE;
      }
      return showsPercent(format) ? PERCENT : PLAIN;
    }

    private static boolean showsPercent(String format) {
      return format.replaceAll("\"[^\"]*\"|\\\\.|_.|\\*.|\\[[^\\]]*\\]", "").contains("%");
    }
  }
}
