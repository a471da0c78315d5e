package org.pourbook.job;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/**
 * An input sheet as it was read: its headings and cells, unknown columns too. Written to the order
 * workbook as {@code Given NAME}, from which later commands work.
 *
 * @param name the canonical sheet name, e.g. {@code Sections}
 * @param headings as written
 */
public record GivenSheet(String name, List<String> headings, List<GivenRow> rows) {
  public GivenSheet {
    headings = List.copyOf(headings);
    rows = List.copyOf(rows);
  }

  /**
   * A row of the table.
   *
   * @param fromSheet the sheet or CSV file it stood in
   * @param fromRow its row there, counted from 1
   */
  public record GivenRow(String fromSheet, int fromRow, List<GivenCell> cells) {
    public GivenRow {
      cells = List.copyOf(cells);
    }
  }

  /** A cell's value. */
  public sealed interface GivenCell {
    record Blank() implements GivenCell {}

    record Text(String text) implements GivenCell {}

    /** A number; one of a percent-formatted cell is held as the cell shows it, 5 for 5 %. */
    record Number(double number, boolean percent) implements GivenCell {}

    record Date(LocalDate date) implements GivenCell {}

    record Time(LocalTime time) implements GivenCell {}

    record YesNo(boolean yes) implements GivenCell {}

    /** An error value such as {@code #REF!}. */
    record Error(String code) implements GivenCell {}
  }
}
