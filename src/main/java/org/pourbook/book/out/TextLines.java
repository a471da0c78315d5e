package org.pourbook.book.out;

/**
 * How many lines a text takes in a column, estimated on the safe side: a row's height must be
 * written down, since not every program works it out when it opens a workbook.
 */
final class TextLines {

  /** Points of a line of 9-point text, and of the room above and below. */
  private static final float LINE_POINTS = 11.5f;

  private static final float ROOM_POINTS = 3.5f;

  /** The tallest row a spreadsheet has, in points. */
  private static final float TALLEST = 409;

  /** Characters that the indent and the cell's own edges take. */
  private static final double EDGES = 1.3;

  /** Text of 8 points is narrower than that of 9. */
  private static final double SMALL = 0.9;

  /** Bold text is wider. */
  private static final double BOLD = 1.1;

  /** The width of the widest letters in digits. */
  private static final double WIDEST = 1.45;

  /** The width of the narrowest letters, and of a space. */
  private static final double NARROWEST = 0.52;

  private static final String NARROW = "iljtfrI.,;:'!|()[]- ";
  private static final String WIDE = "mwMW%@×=+#";

  private TextLines() {}

  /** Returns the lines of a heading in a column so many characters wide. */
  static int ofHeading(String text, int width) {
    return lines(text, (width - EDGES) / BOLD);
  }

  /** Returns the lines of a hint, which is smaller. */
  static int ofHint(String text, int width) {
    return lines(text, (width - EDGES) / SMALL);
  }

  static int of(String text, int width) {
    return lines(text, width - EDGES);
  }

  /** Returns the width at which no word of a heading is broken. */
  static int widthOfHeading(String text) {
    double widest = 0;
    for (String word : text.split(" ")) {
      widest = Math.max(widest, width(word, 0, word.length()));
    }
    return (int) Math.ceil(widest * BOLD + EDGES);
  }

  static float height(int lines) {
    return Math.min(TALLEST, lines * LINE_POINTS + ROOM_POINTS);
  }

  private static int lines(String text, double width) {
    if (text.length() * WIDEST <= width && text.indexOf('\n') < 0) {
      return 1;
    }
    if (text.indexOf('\n') < 0) {
      return paragraphLines(text, width);
    }
    int lines = 0;
    for (String paragraph : text.split("\n", -1)) {
      lines += paragraphLines(paragraph, width);
    }
    return lines;
  }

  /** Words go on the line as long as they fit; a word longer than a line is broken. */
  private static int paragraphLines(String paragraph, double width) {
    int lines = 1;
    double used = 0;
    int from = 0;
    while (from <= paragraph.length()) {
      int space = paragraph.indexOf(' ', from);
      int to = space < 0 ? paragraph.length() : space;
      double wide = width(paragraph, from, to);
      if (used > 0 && used + wide > width) {
        lines++;
        used = 0;
      }
      lines += (int) Math.floor((used + wide) / (width + 1e-9));
      used = (used + wide) % width + NARROWEST;
      from = to + 1;
    }
    return lines;
  }

  /** The width of 9-point text in the digits of 10 points that column widths count. */
  private static double width(String text, int from, int to) {
    double width = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      width += NARROW.indexOf(c) >= 0 ? NARROWEST : WIDE.indexOf(c) >= 0 ? WIDEST : usual(c);
    }
    return width;
  }

  private static double usual(char c) {
    return Character.isUpperCase(c) ? 1.12 : Character.isLowerCase(c) ? 0.88 : 0.97;
  }
}
