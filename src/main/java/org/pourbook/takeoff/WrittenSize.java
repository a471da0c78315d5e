package org.pourbook.takeoff;

import java.util.List;
import java.util.Locale;

/**
 * A size or material as people write it, brought to the one form in which it is compared. It is
 * asked for every row of a batch several times, so it is read once from left to right.
 */
final class WrittenSize {

  /** Words for the unit after a figure, the longest first. */
  private static final List<String> INCH_WORDS = List.of("inches", "inch", "in");

  private WrittenSize() {}

  /** Returns the text in lower case, without spaces, inch marks and words for inch. */
  static String normal(String text) {
    StringBuilder kept = new StringBuilder(text.length());
    int at = 0;
    while (at < text.length()) {
      int past = pastInches(text, at);
      if (past > at) {
        at = past;
      } else {
        char c = text.charAt(at);
        if (!isSpace(c) && !isInchMark(c)) {
          kept.append(c);
        }
        at++;
      }
    }
    String normal = kept.toString().toLowerCase(Locale.ROOT);
    return normal.equals(text) ? text : normal;
  }

  /** Returns where the word for inch ends that follows a figure here, spaces before it or not. */
  private static int pastInches(String text, int from) {
    if (from == 0 || !isFigure(text.charAt(from - 1))) {
      return from;
    }
    int at = from;
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
    for (String word : INCH_WORDS) {
      if (text.regionMatches(true, at, word, 0, word.length())
          && isWordEnd(text, at + word.length())) {
        return at + word.length();
      }
    }
    return from;
  }

  private static boolean isFigure(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isWordEnd(String text, int at) {
    return at == text.length()
        || !(Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_');
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c >= '\t' && c <= '\r';
  }

  private static boolean isInchMark(char c) {
    return c == '"' || c == '\u201d' || c == '\u2033';
  }
}
