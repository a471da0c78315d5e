package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pourbook.book.CellKind;
import org.pourbook.book.ColumnUnit;
import org.pourbook.book.Heading;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.HeadedColumn;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/** Finds the table in a sheet: its heading row, its columns by their headings, its rows. */
final class TableReader {

  private static final String FROM_SHEET = Heading.key(InputSheet.FROM_SHEET);
  private static final String FROM_ROW = Heading.key(InputSheet.FROM_ROW);

  private final InputSheet sheet;
  private final RawSheet raw;
  private final boolean given;
  private final List<Problem> problems;
  private int fromSheetAt = -1;
  private int fromRowAt = -1;

  private TableReader(InputSheet sheet, RawSheet raw, boolean given, List<Problem> problems) {
    this.sheet = sheet;
    this.raw = raw;
    this.given = given;
    this.problems = problems;
  }

  /**
   * Returns the table; empty when no row holds the required headings, which is a problem unless the
   * sheet holds nothing.
   *
   * @param given the sheet is one of an order workbook and says where its rows came from
   */
  static Optional<Table> read(
      InputSheet sheet, RawSheet raw, boolean given, List<Problem> problems) {
    return new TableReader(sheet, raw, given, problems).table();
  }

  private Optional<Table> table() {
    Set<String> required =
        sheet.columns().stream()
            .filter(InputColumn::required)
            .map(InputColumn::key)
            .collect(Collectors.toSet());
    for (int i = 0; i < raw.rows().size(); i++) {
      if (keys(raw.rows().get(i)).containsAll(required)) {
        Table table =
            new Table(sheet, raw.place(), raw.rows().get(i).index(), headed(raw.rows().get(i)));
        noteUnknown(table);
        addRows(table, i + 1);
        return Optional.of(table);
      }
    }
    if (!raw.rows().isEmpty()) {
      problems.add(noHeadings(required));
    }
    return Optional.empty();
  }

  private static List<String> keys(RawRow row) {
    return row.cells().stream()
        .filter(GivenCell.Text.class::isInstance)
        .map(cell -> Heading.key(CellWords.of(cell)))
        .toList();
  }

  private Problem noHeadings(Set<String> required) {
    RawRow best = raw.rows().get(0);
    for (RawRow row : raw.rows()) {
      if (held(row, required) > held(best, required)) {
        best = row;
      }
    }
    List<String> keys = keys(best);
    String missing =
        sheet.columns().stream()
            .filter(column -> column.required() && !keys.contains(column.key()))
            .map(InputColumn::heading)
            .collect(Collectors.joining(", "));
    String all =
        sheet.columns().stream()
            .filter(InputColumn::required)
            .map(InputColumn::heading)
            .collect(Collectors.joining(", "));
    Place place =
        held(best, required) == 0
            ? Place.ofSheet(raw.place())
            : new Place(raw.place(), best.index(), -1);
    Effect effect = sheet.isOfPriceBook() ? Effect.ROW_LEFT_OUT : Effect.JOB_LEFT_OUT;
    return new Problem(
        place, "", "no heading " + missing, "a row with the headings " + all, effect);
  }

  private static long held(RawRow row, Set<String> required) {
    return keys(row).stream().filter(required::contains).distinct().count();
  }

  private List<HeadedColumn> headed(RawRow row) {
    List<HeadedColumn> headed = new ArrayList<>();
    int hidden = 0;
    for (int at = 0; at < row.cells().size(); at++) {
      String heading = CellWords.of(row.cell(at));
      String key = Heading.key(heading);
      if (given && key.equals(FROM_SHEET)) {
        fromSheetAt = at;
        hidden++;
      } else if (given && key.equals(FROM_ROW)) {
        fromRowAt = at;
        hidden++;
      } else if (given && InputSheet.isAdded(heading)) {
        hidden++;
      } else if (!heading.isEmpty()) {
        headed.add(new HeadedColumn(at, at - hidden, heading, sheet.column(heading)));
      }
    }
    return headed;
  }

  private void noteUnknown(Table table) {
    for (HeadedColumn column : table.headed()) {
      if (column.column().isEmpty()) {
        problems.add(
            new Problem(
                table.headingPlace(column),
                "",
                column.heading(),
                "a column of " + sheet.label() + "; this one is not used",
                Effect.NOTE));
      }
    }
  }

  private void addRows(Table table, int first) {
    int next = first == 0 ? 0 : raw.rows().get(first - 1).index() + 1;
    for (RawRow row : raw.rows().subList(first, raw.rows().size())) {
      if (row.index() != next) {
        note(
            new Place(raw.place(), row.index(), -1),
            "a row below the end of the table",
            "no empty row above it; it is not read");
        return;
      }
      if (table.headed().stream().anyMatch(c -> !(row.cell(c.at()) instanceof GivenCell.Blank))) {
        table.add(row(table, row));
      } else {
        note(
            new Place(raw.place(), row.index(), -1),
            "something beside the table",
            "a cell below a heading; it is not read");
      }
      next++;
    }
  }

  private TableRow row(Table table, RawRow row) {
    String from = CellWords.of(row.cell(fromSheetAt));
    if (from.isEmpty() || !(row.cell(fromRowAt) instanceof GivenCell.Number number)) {
      return new TableRow(table, row, raw.place(), row.index());
    }
    return new TableRow(table, row, from, (int) number.number() - 1);
  }

  private void note(Place place, String found, String expected) {
    problems.add(new Problem(place, "", found, expected, Effect.NOTE));
  }

  /**
   * Reports headings that stand twice and those with another unit than their column has, and marks
   * their columns as not to be trusted.
   *
   * @param metricToo headings may name the units of {@code m} jobs
   */
  static void checkHeadings(Table table, boolean metricToo, List<Problem> problems) {
    for (List<HeadedColumn> alike : table.byKey().values()) {
      Optional<InputColumn> column = alike.get(0).column();
      if (column.isEmpty()) {
        continue;
      }
      for (HeadedColumn again : alike.subList(1, alike.size())) {
        refuse(table, again, "one column " + column.get().heading(), problems);
      }
      for (HeadedColumn headed : alike) {
        if (!unitFits(column.get(), Heading.of(headed.heading()), metricToo)) {
          refuse(table, headed, expectedHeading(column.get(), metricToo), problems);
        }
      }
    }
  }

  private static String expectedHeading(InputColumn column, boolean metricToo) {
    return column.title(metricToo ? UnitSystem.M : UnitSystem.FT_IN);
  }

  private static boolean unitFits(InputColumn column, Heading heading, boolean metricToo) {
    Optional<String> unit = heading.unit();
    boolean measured =
        switch (column.kind()) {
          case NUMBER, COUNT, PERCENT, MONEY, LENGTH, LENGTH_OR_WORD -> true;
          default -> column.kind() == CellKind.BARS;
        };
    if (unit.isEmpty() || !measured) {
      return true;
    }
    if (column.unit() == ColumnUnit.VOLUME) {
      return unit.get().equals("yd3") || unit.get().equals("m3");
    }
    return column.unit().isNamed(unit.get(), false)
        || (metricToo && column.unit().isNamed(unit.get(), true));
  }

  private static void refuse(
      Table table, HeadedColumn headed, String expected, List<Problem> problems) {
    InputColumn column = headed.column().orElseThrow();
    List<String> jobs =
        table.rows().stream()
            .filter(row -> !(row.raw().cell(headed.at()) instanceof GivenCell.Blank))
            .map(row -> jobOf(table, row))
            .distinct()
            .toList();
    Effect bad = table.sheet().isOfPriceBook() ? Effect.ROW_LEFT_OUT : Effect.JOB_LEFT_OUT;
    problems.add(
        new Problem(
            table.headingPlace(headed),
            jobs.size() == 1 ? jobs.get(0) : "",
            headed.heading(),
            expected,
            jobs.isEmpty() ? Effect.NOTE : bad));
    table.distrust(column);
  }

  private static String jobOf(Table table, TableRow row) {
    return table.sheet().isOfPriceBook() ? "" : CellWords.of(row.cell("Job"));
  }
}
