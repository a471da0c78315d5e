package org.pourbook.measure;

import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of day as text: {@code 7:00}, {@code 13:30}, {@code 7:30 AM}. */
public final class TimeText {

  private static final Pattern TIME =
      Pattern.compile("(\\d{1,2})(?::(\\d{2})(?::(\\d{2}))?)? ?(am|pm)?");

  private TimeText() {}

  /** Returns the time; empty when the text is none. */
  public static Optional<LocalTime> read(String text) {
    Matcher time = TIME.matcher(text.strip().toLowerCase(Locale.ROOT).replace(".", ""));
    if (!time.matches() || (time.group(2) == null && time.group(4) == null)) {
      return Optional.empty();
    }
    int hour = Integer.parseInt(time.group(1));
    String half = time.group(4);
    if (half != null && (hour < 1 || hour > 12)) {
      return Optional.empty();
    }
    int hour24 = half == null ? hour : hour % 12 + (half.equals("pm") ? 12 : 0);
    int minute = number(time.group(2));
    int second = number(time.group(3));
    return hour24 < 24 && minute < 60 && second < 60
        ? Optional.of(LocalTime.of(hour24, minute, second))
        : Optional.empty();
  }

  private static int number(String digits) {
    return digits == null ? 0 : Integer.parseInt(digits);
  }
}
