package org.pourbook.book.out;

import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Writes sheets that a crew works from: large type in blocks, none of which is broken by the end of
 * a page.
 */
final class ShopPen {

  /** What a letter page, which is the shorter one, holds between its margins. */
  private static final float PAGE_POINTS = 700;

  private static final float TITLE_POINTS = 30;
  private static final float GAP_POINTS = 12;

  /** The height of a line of large type, with the room of its row. */
  private static final float LINE_POINTS = 17;

  private static final float ROOM_POINTS = 7;

  private final XSSFSheet sheet;
  private final Pen pen;
  private float used;

  ShopPen(XSSFSheet sheet, Rows rows) {
    this.sheet = sheet;
    this.pen = new Pen(rows);
  }

  /** Begins a page with its title. */
  void page(String title, String says) {
    if (pen.row() >= 0) {
      sheet.setRowBreak(pen.row());
    }
    used = 0;
    row(TITLE_POINTS).write(0, Look.SHOP_TITLE, Cell.of(title));
    row(LINE_POINTS).write(0, Look.PLAIN, Cell.of(says));
  }

  /** Begins a block of rows so high together, on the next page where this one has no room. */
  void block(float points) {
    keep(GAP_POINTS + points);
    row(GAP_POINTS);
  }

  /** Goes to the next page where this one has no room for rows so high together. */
  void keep(float points) {
    if (used + points > PAGE_POINTS) {
      sheet.setRowBreak(pen.row());
      used = 0;
    }
  }

  /** Begins a row. */
  Pen row(float points) {
    used += points;
    return pen.next(points);
  }

  /** Returns the height of a row of so many lines of large type. */
  static float height(int lines) {
    return lines * LINE_POINTS + ROOM_POINTS;
  }

  /** Returns the lines of a text of large type in a column so many characters wide. */
  static int lines(String text, int width) {
    return TextLines.of(text, width * Look.TEXT.points() / Look.SHOP.points());
  }

  /** Returns the last row written, counted from 0. */
  int lastRow() {
    return pen.row();
  }
}
