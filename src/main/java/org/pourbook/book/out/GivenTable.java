package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pourbook.book.Heading;
import org.pourbook.book.InputSheet;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.GivenSheet.GivenRow;
import org.pourbook.measure.NumberText;
import org.pourbook.problem.Place;

/**
 * An input sheet as it was read, the rows of a job together; beside each row how its cells stood
 * when the tool ran, and how many have changed since.
 */
final class GivenTable {

  private static final int LEAST_WIDTH = 8;
  private static final int MOST_WIDTH = 28;
  private static final int DATE_WIDTH = 13;

  /** A narrower one would make the headings of all columns high. */
  private static final int LEAST_COPY_WIDTH = 16;

  private static final String SAYS = "The input as it was read; later commands work from it.";
  private static final String SAYS_OF_SECTIONS =
      SAYS + " A size or a waste that is changed here counts at once where Takeoff is live.";
  private static final String JOB = "Job";

  /** Columns that every row has something in: its job, or its setting. */
  private static final int COUNTED = 2;

  private static final int ROWS_BELOW = 500;

  private final GivenSheet given;
  private final SheetSpec<GivenRow> spec;
  private final Spans<String> jobs;
  private final Map<String, Integer> rows = new LinkedHashMap<>();
  private final Map<String, Optional<String>> found = new HashMap<>();

  private GivenTable(GivenSheet given, SheetSpec<GivenRow> spec, Spans<String> jobs) {
    this.given = given;
    this.spec = spec;
    this.jobs = jobs;
    for (int i = 0; i < spec.rows().size(); i++) {
      GivenRow row = spec.rows().get(i);
      rows.put(key(row.fromSheet(), row.fromRow()), SheetSpec.FIRST_ROW + i);
    }
  }

  /**
   * Returns the table.
   *
   * @param figures further columns, right of where a row comes from
   */
  static GivenTable of(GivenSheet given, List<Column<GivenRow>> figures, int most) {
    List<GivenRow> rows = new ArrayList<>(given.rows());
    Map<String, Integer> order = new LinkedHashMap<>();
    rows.forEach(row -> order.putIfAbsent(job(given, row), order.size()));
    rows.sort(Comparator.comparingInt(row -> order.getOrDefault(job(given, row), 0)));
    List<Column<GivenRow>> columns = columns(given);
    columns.addAll(figures);
    for (int i = 0; i < given.headings().size(); i++) {
      columns.add(Column.onScreen(copy(column(given, i, copyOf(given.headings().get(i))))));
    }
    columns.add(
        Column.onScreen(Column.of(InputSheet.CHANGED, Look.COUNT, 8, at -> changed(given, at))));
    SheetSpec<GivenRow> spec =
        SheetSpec.landscape(
                InputSheet.GIVEN + given.name(),
                figures.isEmpty() ? SAYS : SAYS_OF_SECTIONS,
                columns,
                rows)
            .together(row -> job(given, row).isEmpty() ? row : job(given, row), most);
    return new GivenTable(given, spec, Spans.of(rows, row -> job(given, row)));
  }

  /** Returns the table without what the tool adds to an order workbook's. */
  static SheetSpec<GivenRow> plain(GivenSheet given) {
    return SheetSpec.landscape(InputSheet.GIVEN + given.name(), SAYS, columns(given), given.rows());
  }

  private static List<Column<GivenRow>> columns(GivenSheet given) {
    List<Column<GivenRow>> columns = new ArrayList<>();
    for (int i = 0; i < given.headings().size(); i++) {
      Column<GivenRow> column = column(given, i, given.headings().get(i));
      columns.add(isFilled(given, i) ? column : Column.onScreen(column));
    }
    columns.add(Column.text(InputSheet.FROM_SHEET, 12, GivenRow::fromSheet));
    columns.add(Column.count(InputSheet.FROM_ROW, 8, GivenRow::fromRow));
    return columns;
  }

  private static Column<GivenRow> copy(Column<GivenRow> column) {
    return Column.of(
        column.heading(),
        column.look(),
        Math.max(column.width(), LEAST_COPY_WIDTH),
        column.value());
  }

  /** Columns that nobody has filled would only make the others small on paper. */
  private static boolean isFilled(GivenSheet given, int column) {
    return given.rows().isEmpty()
        || given.rows().stream()
            .map(GivenRow::cells)
            .anyMatch(cells -> column < cells.size() && isFilled(cells.get(column)));
  }

  private static Column<GivenRow> column(GivenSheet given, int index, String heading) {
    return Column.cell(
        heading,
        Look.GIVEN,
        width(given, index),
        row -> index < row.cells().size() ? cell(row.cells().get(index)) : Cell.BLANK);
  }

  /** Returns the heading of the cells as they stood when the tool ran. */
  static String copyOf(String heading) {
    return heading + InputSheet.WHEN_RUN;
  }

  /**
   * Cell by cell: not every program works out what compares two rows at once. A row that was sorted
   * away counts as one more, since formulas of other sheets find it by its place.
   */
  private static Cell changed(GivenSheet given, At<GivenRow> at) {
    return Cell.formula(
        given.headings().stream()
            .map(heading -> "(" + at.cell(heading) + "<>" + at.cell(copyOf(heading)) + ")")
            .collect(
                Collectors.joining(
                    "+",
                    "",
                    "+(" + at.fixed(InputSheet.FROM_ROW) + "<>" + at.record().fromRow() + ")")),
        0);
  }

  private static String job(GivenSheet given, GivenRow row) {
    for (int i = 0; i < given.headings().size() && i < row.cells().size(); i++) {
      if (Heading.key(given.headings().get(i)).equals(Heading.key(JOB))) {
        return jobKey(words(row.cells().get(i)));
      }
    }
    return "";
  }

  private static String words(GivenCell cell) {
    if (cell instanceof GivenCell.Text text) {
      return text.text();
    }
    return cell instanceof GivenCell.Number number
        ? NumberText.text(NumberText.of(number.number()))
        : "";
  }

  private static String jobKey(String code) {
    return code.strip().toLowerCase(Locale.ROOT);
  }

  private static String key(String sheet, int row) {
    return sheet + "\n" + row;
  }

  private static int width(GivenSheet given, int column) {
    int width = LEAST_WIDTH;
    for (GivenRow row : given.rows()) {
      if (column < row.cells().size()) {
        width = Math.max(width, width(row.cells().get(column)));
      }
    }
    return Math.min(width, MOST_WIDTH);
  }

  /** Returns how many characters a value takes; a date that has too little room shows as ####. */
  private static int width(GivenCell given) {
    if (given instanceof GivenCell.Text text) {
      return text.text().length() + 1;
    }
    return given instanceof GivenCell.Date ? DATE_WIDTH : LEAST_WIDTH;
  }

  private static Cell cell(GivenCell given) {
    if (given instanceof GivenCell.Text text) {
      return Cell.of(text.text());
    } else if (given instanceof GivenCell.Number number) {
      return Cell.of(number.number());
    } else if (given instanceof GivenCell.Date date) {
      return new Cell.Day(date.date());
    } else if (given instanceof GivenCell.Time time) {
      return new Cell.Clock(time.time());
    } else if (given instanceof GivenCell.YesNo yesNo) {
      return new Cell.YesNo(yesNo.yes());
    } else if (given instanceof GivenCell.Error error) {
      return Cell.of(error.code());
    }
    return Cell.BLANK;
  }

  SheetSpec<GivenRow> spec() {
    return spec;
  }

  /** Returns the heading under which a column of the input stands, if it is there. */
  Optional<String> heading(String column) {
    return found.computeIfAbsent(
        column,
        sought ->
            given.headings().stream()
                .filter(heading -> Heading.key(heading).equals(Heading.key(sought)))
                .findFirst());
  }

  /** Returns the row that was read from a row of the input, counted from 1 there. */
  Optional<Integer> rowFrom(String sheet, int row) {
    return Optional.ofNullable(rows.get(key(sheet, row)));
  }

  /** Returns how many cells of a job's rows have changed; of no job's, for an empty code. */
  Optional<String> changed(String job) {
    return jobs.of(jobKey(job))
        .filter(spec::isOnOneSheet)
        .map(span -> spec.cells(span, InputSheet.CHANGED));
  }

  /** Returns the first cells of the rows and of some below, where rows may have been added. */
  String firstCells() {
    int last = spec.parts().count() - 1;
    List<String> ranges = new ArrayList<>();
    for (int part = 0; part <= last; part++) {
      int below = part == last ? spec.lastRowOf(part) + ROWS_BELOW : spec.lastRowOf(part);
      ranges.add(
          Span.cell(spec.nameOf(part), "A", SheetSpec.FIRST_ROW)
              + ":$"
              + Place.columnName(counted() - 1)
              + "$"
              + Math.min(below, Parts.MOST_ROWS));
    }
    return String.join(",", ranges);
  }

  /** Returns how many of those cells held something when the tool ran. */
  int filledFirstCells() {
    return given.rows().stream()
        .mapToInt(
            row -> (int) row.cells().stream().limit(counted()).filter(GivenTable::isFilled).count())
        .sum();
  }

  private int counted() {
    return Math.min(COUNTED, given.headings().size());
  }

  private static boolean isFilled(GivenCell cell) {
    return !(cell(cell) instanceof Cell.Blank);
  }

  String name() {
    return given.name();
  }
}
