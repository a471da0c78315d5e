package org.pourbook.problem;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Where something stands in an input: sheet (or CSV file name), row and column, both counted from
 * 0; column −1 means the whole row, row −1 the whole sheet.
 */
public record Place(String sheet, int row, int column) implements Comparable<Place> {

  private static final int LETTERS = 26;

  /** The names of columns A to ZZ, which every formula asks for. */
  private static final List<String> NAMES =
      IntStream.range(0, LETTERS + LETTERS * LETTERS).mapToObj(Place::letters).toList();

  /** Returns the place of a whole sheet or file. */
  public static Place ofSheet(String sheet) {
    return new Place(sheet, -1, -1);
  }

  /**
   * Returns the cell as a spreadsheet names it ({@code C7}), a row's first ({@code A7}), empty for
   * a sheet.
   */
  public String cell() {
    return row < 0 ? "" : columnName(Math.max(0, column)) + (row + 1);
  }

  /** Returns the letters of a column counted from 0: 0 is {@code A}, 26 is {@code AA}. */
  public static String columnName(int column) {
    return column >= 0 && column < NAMES.size() ? NAMES.get(column) : letters(column);
  }

  private static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / LETTERS) {
      letters.append((char) ('A' + (rest - 1) % LETTERS));
    }
    return letters.reverse().toString();
  }

  @Override
  public int compareTo(Place other) {
    int bySheet = sheet.compareTo(other.sheet);
    if (bySheet != 0) {
      return bySheet;
    }
    int byRow = Integer.compare(row, other.row);
    return byRow != 0 ? byRow : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return row < 0 ? sheet : sheet + "!" + cell();
  }
}
