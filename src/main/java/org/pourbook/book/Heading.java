package org.pourbook.book;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A heading or sheet name as it is matched: ignoring case, spaces, punctuation, a trailing {@code
 * *} and what stands in brackets.
 *
 * @param key what is compared
 * @param bracket what stands in the first brackets, empty for none
 */
public record Heading(String key, String bracket) {

  private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^)\\]]*)[)\\]]");

  /** Returns a heading taken apart. */
  public static Heading of(String text) {
    Matcher brackets = BRACKETS.matcher(text);
    String inside = brackets.find() ? brackets.group(1).strip() : "";
    return new Heading(key(text), inside);
  }

  /** Returns what is compared of a heading or sheet name. */
  public static String key(String text) {
    boolean bracketed = text.indexOf('(') >= 0 || text.indexOf('[') >= 0;
    String words = bracketed ? BRACKETS.matcher(text).replaceAll("") : text;
    StringBuilder key = new StringBuilder(words.length());
    int point;
    for (int i = 0; i < words.length(); i += Character.charCount(point)) {
      point = words.codePointAt(i);
      if (Character.isLetterOrDigit(point)) {
        key.appendCodePoint(Character.toLowerCase(point));
      }
    }
    return key.toString();
  }

  /** Returns the unit in the brackets, as {@link ColumnUnit} compares units. */
  public Optional<String> unit() {
    return ColumnUnit.named(bracket);
  }
}
