package org.pourbook.book.in;

import java.util.List;

/**
 * A sheet or CSV file as it is read.
 *
 * @param place what a {@link org.pourbook.problem.Place} calls it: the sheet's name, of a CSV file
 *     the file's
 * @param name the sheet's name; of a CSV file its name without {@code .csv}
 * @param rows those that hold something
 */
record RawSheet(String place, String name, List<RawRow> rows) {
  RawSheet {
    rows = List.copyOf(rows);
  }
}
