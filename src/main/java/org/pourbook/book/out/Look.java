package org.pourbook.book.out;

import org.apache.poi.ss.usermodel.HorizontalAlignment;

/** The named styles of every output: one look, here and nowhere else. */
enum Look {
  /** The sheet's name. */
  TITLE(Ink.ACCENT, 15, true, Line.NONE, "@"),
  /** The sentence below it. */
  SAYS(Ink.GREY, 9, false, Line.NONE, "@"),
  /** What the columns of a template are about, in turn with the next. */
  BAND(Ink.ACCENT, 9, true, Line.EDIT, "@"),
  BAND_OTHER(Ink.ACCENT, 9, true, Line.HINT, "@"),
  /** What to write into a column of a template. */
  HINT(Ink.GREY, 8, false, Line.HINT, "@"),
  HEADING(Ink.TEXT, 9, true, Line.HEADING, "@"),
  HEADING_NUMBER(Ink.TEXT, 9, true, Line.HEADING, "@"),

  /** Text, over several lines where it is longer than its column is wide. */
  TEXT(Ink.TEXT, 9, false, Line.ROW, "@"),
  /** Words that a formula gives; a formula in a cell of format text would turn into its text. */
  WORDS(Ink.TEXT, 9, false, Line.ROW, "General"),
  LINK(Ink.ACCENT, 9, false, Line.ROW, "General"),
  /** A word that tells whether all is well; where not, it turns red. */
  LIGHT(Ink.TEXT, 9, true, Line.ROW, "General"),
  /** The same for a whole workbook, beside its title. */
  LIGHT_OF_ALL(Ink.TEXT, 9, true, Line.NONE, "General"),
  /** A box to tick. */
  TICK(Ink.TEXT, 9, false, Line.BOX, "@"),
  /** A value as the input held it. */
  GIVEN(Ink.TEXT, 9, false, Line.ROW, "General"),
  /** A cell beside a table to fill in, for the user's own use. */
  OPEN(Ink.TEXT, 9, false, Line.NONE, "General"),
  COUNT(Ink.TEXT, 9, false, Line.ROW, "#,##0"),
  NUMBER(Ink.TEXT, 9, false, Line.ROW, "#,##0.00"),
  PERCENT(Ink.TEXT, 9, false, Line.ROW, "0.0"),
  MONEY(Ink.TEXT, 9, false, Line.ROW, "#,##0.00"),
  PRICE(Ink.TEXT, 9, false, Line.ROW, "#,##0.00??"),
  DATE(Ink.TEXT, 9, false, Line.ROW, "mmm d, yyyy"),
  TIME(Ink.TEXT, 9, false, Line.ROW, "h:mm AM/PM"),
  /** Figures that the office may change. */
  EDIT_PRICE(Ink.ACCENT, 9, false, Line.EDIT, "#,##0.00??"),
  EDIT_PERCENT(Ink.ACCENT, 9, false, Line.EDIT, "0.0"),

  TOTAL_TEXT(Ink.TEXT, 9, true, Line.NONE, "@"),
  TOTAL_COUNT(Ink.TEXT, 9, true, Line.NONE, "#,##0"),
  TOTAL_NUMBER(Ink.TEXT, 9, true, Line.NONE, "#,##0.00"),

  /** Small words above or before what they name, on printed orders. */
  LABEL(Ink.GREY, 8, false, Line.NONE, "@"),
  /** Plain words on printed orders. */
  PLAIN(Ink.TEXT, 9, false, Line.NONE, "@"),
  STRONG(Ink.TEXT, 9, true, Line.NONE, "@"),
  /** Large type for who works with wet gloves: a page's title, a block's heading, words, boxes. */
  SHOP_TITLE(Ink.ACCENT, 22, true, Line.NONE, "@"),
  SHOP_HEADING(Ink.TEXT, 13, true, Line.BAND, "@"),
  SHOP(Ink.TEXT, 13, false, Line.NONE, "@"),
  SHOP_STRONG(Ink.TEXT, 13, true, Line.NONE, "@"),
  SHOP_PLAIN(Ink.TEXT, 13, false, Line.NONE, "@"),
  SHOP_TICK(Ink.TEXT, 13, false, Line.BOX, "@"),
  /** A line to write on. */
  BLANK_LINE(Ink.TEXT, 9, false, Line.WRITE, "@");

  /** The colours: one accent, and greys. */
  enum Ink {
    TEXT("262626"),
    GREY("595959"),
    ACCENT("1F5C70");

    private final String rgb;

    Ink(String rgb) {
      this.rgb = rgb;
    }

    String rgb() {
      return rgb;
    }
  }

  /** The lines round a cell. */
  enum Line {
    NONE,
    /** A hair line below. */
    ROW,
    /** The band above the headings of a template. */
    HINT,
    /** The band of the headings. */
    HEADING,
    /** The same where words may run on over the cells beside it. */
    BAND,
    /** A tinted cell to write in. */
    EDIT,
    BOX,
    WRITE
  }

  private final Ink ink;
  private final int points;
  private final boolean bold;
  private final Line line;
  private final String format;

  Look(Ink ink, int points, boolean bold, Line line, String format) {
    this.ink = ink;
    this.points = points;
    this.bold = bold;
    this.line = line;
    this.format = format;
  }

  Ink ink() {
    return ink;
  }

  int points() {
    return points;
  }

  boolean isBold() {
    return bold;
  }

  Line line() {
    return line;
  }

  String format() {
    return format;
  }

  /** Returns whether numbers are shown, which are aligned at the right as their heading is. */
  boolean isNumber() {
    return format.contains("0");
  }

  /** Returns whether the cell is one of a table's. */
  private boolean isOfTable() {
    return line == Line.ROW
        || line == Line.HEADING
        || this == HINT
        || this == SHOP
        || this == SHOP_STRONG;
  }

  /** Returns whether text goes on in further lines where its column is too narrow. */
  boolean isWrapped() {
    return isOfTable() && (alignment() != HorizontalAlignment.RIGHT || this == HEADING_NUMBER);
  }

  /** Returns whether the cell is kept from being changed where a sheet is protected. */
  boolean isLocked() {
    return switch (this) {
      case TEXT, GIVEN, DATE, TIME, OPEN -> false;
      default -> true;
    };
  }

  HorizontalAlignment alignment() {
    if (isNumber() || this == HEADING_NUMBER || this == TIME) {
      return HorizontalAlignment.RIGHT;
    }
    return this == GIVEN || this == OPEN ? HorizontalAlignment.GENERAL : HorizontalAlignment.LEFT;
  }

  /** Returns whether the cell's text stands off the column before, which may end in a number. */
  boolean isIndented() {
    return (isOfTable() || this == BAND || this == BAND_OTHER)
        && alignment() == HorizontalAlignment.LEFT;
  }

  /** Returns the look of a cell: days and times of the input are shown as such. */
  Look holding(Cell value) {
    if (this == GIVEN && value instanceof Cell.Day) {
      return DATE;
    }
    return this == GIVEN && value instanceof Cell.Clock ? TIME : this;
  }

  /** Returns the look of the heading above cells of this look. */
  Look heading() {
    return alignment() == HorizontalAlignment.RIGHT ? HEADING_NUMBER : HEADING;
  }

  /** Returns the look of a total of cells of this look. */
  Look total() {
    return this == COUNT ? TOTAL_COUNT : TOTAL_NUMBER;
  }
}
