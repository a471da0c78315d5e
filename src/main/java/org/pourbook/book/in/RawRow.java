package org.pourbook.book.in;

import java.util.List;
import java.util.Map;
import org.pourbook.job.GivenSheet.GivenCell;

/**
 * A row as the file holds it.
 *
 * @param index counted from 0
 * @param cells from column A on, without the blank ones at the end
 */
record RawRow(int index, List<GivenCell> cells) {

  static final GivenCell BLANK = new GivenCell.Blank();

  RawRow {
    int end = cells.size();
    while (end > 0 && cells.get(end - 1) instanceof GivenCell.Blank) {
      end--;
    }
    cells = List.copyOf(cells.subList(0, end));
  }

  GivenCell cell(int column) {
    return column >= 0 && column < cells.size() ? cells.get(column) : BLANK;
  }

  boolean isBlank() {
    return cells.isEmpty();
  }

  /** Returns the same row with one cell for all that are alike. */
  RawRow sharing(Map<GivenCell, GivenCell> alike) {
    return new RawRow(
        index, cells.stream().map(cell -> alike.computeIfAbsent(cell, c -> c)).toList());
  }
}
