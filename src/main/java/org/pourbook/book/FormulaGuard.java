package org.pourbook.book;

/**
 * Keeps a text in a CSV file from being run as a formula by a program that opens it: an apostrophe
 * before it, taken off again when it is read.
 */
public final class FormulaGuard {

  private static final char GUARD = '\'';

  private FormulaGuard() {}

  /** Returns whether a program would take typed text for a formula or a command. */
  public static boolean isTakenForFormula(String text) {
    return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
  }

  /** Returns the text as it stands in a CSV file; one that begins with an apostrophe gets two. */
  public static String guarded(String text) {
    return isTakenForFormula(text) || isGuarded(text) ? GUARD + text : text;
  }

  /** Returns the text that {@link #guarded} was given. */
  public static String unguarded(String text) {
    boolean guarded = isGuarded(text) && text.equals(guarded(text.substring(1)));
    return guarded ? text.substring(1) : text;
  }

  private static boolean isGuarded(String text) {
    return !text.isEmpty() && text.charAt(0) == GUARD;
  }
}
