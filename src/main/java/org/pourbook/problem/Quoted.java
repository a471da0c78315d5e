package org.pourbook.problem;

/** What an input says, as a message can repeat it. */
public final class Quoted {

  private static final int LONGEST = 160;

  private Quoted() {}

  /** Returns the text on one line, cut where it is long, without what would steer a terminal. */
  public static String of(String text) {
    String cut = text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "…";
    StringBuilder plain = new StringBuilder(cut);
    for (int i = 0; i < plain.length(); i++) {
      if (Character.isISOControl(plain.charAt(i))) {
        plain.setCharAt(i, ' ');
      }
    }
    return plain.toString();
  }
}
