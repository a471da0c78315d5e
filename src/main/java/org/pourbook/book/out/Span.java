package org.pourbook.book.out;

/** Rows of a sheet, first to last, as the spreadsheet counts them. */
record Span(int first, int last) {

  /** Returns the cells of these rows in a column of a sheet: {@code Takeoff!$F$10:$F$14}. */
  String in(String sheet, String letter) {
    return cell(sheet, letter, first) + ":$" + letter + "$" + last;
  }

  int size() {
    return last - first + 1;
  }

  /** Returns a cell of another sheet; fixed, so that the reading sheet may be sorted. */
  static String cell(String sheet, String letter, int row) {
    return quoted(sheet) + "!$" + letter + "$" + row;
  }

  /** Returns a sheet's name as formulas write it. */
  static String quoted(String sheet) {
    for (int i = 0; i < sheet.length(); i++) {
      if (!Character.isLetterOrDigit(sheet.charAt(i))) {
        return "'" + sheet + "'";
      }
    }
    return sheet;
  }
}
