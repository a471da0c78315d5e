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
    StringBuilder key = new StringBuilder();
    BRACKETS
        .matcher(text)
        .replaceAll("")
        .codePoints()
        .filter(Character::isLetterOrDigit)
        .map(Character::toLowerCase)
        .forEach(key::appendCodePoint);
    return key.toString();
  }

  /** Returns the unit in the brackets, as {@link ColumnUnit} compares units. */
  public Optional<String> unit() {
    return ColumnUnit.named(bracket);
  }
}
