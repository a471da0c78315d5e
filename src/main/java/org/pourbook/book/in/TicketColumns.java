package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.pourbook.book.Heading;
import org.pourbook.book.TicketColumn;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/**
 * What the headings of ticket files mean where they are none of the known ones: rows of a table
 * {@code Ticket columns} with Ours, Theirs, Always (a value for every row, where a file has no such
 * column) and File (blank: every file).
 */
final class TicketColumns {

  static final String SHEET = "Ticket columns";
  private static final String OURS = Heading.key("Ours");
  private static final String THEIRS = Heading.key("Theirs");
  private static final String ALWAYS = Heading.key("Always");
  private static final String FILE = Heading.key("File");

  private final List<Row> rows = new ArrayList<>();
  private final List<Problem> problems;

  /**
   * A row of the table.
   *
   * @param bracket the unit or order of a date in brackets behind our heading
   */
  private record Row(TicketColumn ours, String bracket, String theirs, String always, String file) {

    boolean isFor(String name) {
      return file.isEmpty() || file.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT));
    }
  }

  /** What a heading means. */
  record Meaning(TicketColumn column, String bracket) {}

  TicketColumns(List<Problem> problems) {
    this.problems = problems;
  }

  /**
   * Adds the rows of a sheet.
   *
   * @param file for which a row holds that names none; empty means every file
   */
  void add(RawSheet sheet, String file) {
    Map<String, Integer> at = Map.of();
    for (RawRow raw : sheet.rows()) {
      if (at.isEmpty()) {
        Map<String, Integer> headings = HeadedRows.headings(raw);
        at = headings.containsKey(OURS) ? headings : at;
      } else {
        add(sheet, raw, at, file);
      }
    }
    if (at.isEmpty()) {
      refuse(
          Place.ofSheet(sheet.place()), "no heading Ours", "a row with the headings Ours, Theirs");
    }
  }

  private void add(RawSheet sheet, RawRow raw, Map<String, Integer> at, String holdsFor) {
    String ours = word(raw, at, OURS);
    Optional<TicketColumn> column = TicketColumn.named(ours);
    if (column.isEmpty()) {
      refuse(
          new Place(sheet.place(), raw.index(), at.getOrDefault(OURS, -1)),
          ours.isEmpty() ? "blank" : ours,
          "one of our headings, such as Ticket, Supplier, Job, Quantity");
      return;
    }
    String file = word(raw, at, FILE);
    rows.add(
        new Row(
            column.get(),
            Heading.of(ours).bracket(),
            Heading.key(word(raw, at, THEIRS)),
            word(raw, at, ALWAYS),
            file.isEmpty() ? holdsFor : file));
  }

  private static String word(RawRow raw, Map<String, Integer> at, String key) {
    return CellWords.of(raw.cell(at.getOrDefault(key, -1)));
  }

  private void refuse(Place place, String found, String expected) {
    problems.add(new Problem(place, "", found, expected, Effect.ROW_LEFT_OUT));
  }

  /** Returns what a heading of a file was said to mean. */
  Optional<Meaning> meaning(String file, String heading) {
    String key = Heading.key(heading);
    return rows.stream()
        .filter(row -> row.isFor(file) && !key.isEmpty() && row.theirs().equals(key))
        .findFirst()
        .map(row -> new Meaning(row.ours(), row.bracket()));
  }

  /** Returns the values that every row of a file has. */
  Map<TicketColumn, GivenCell> always(String file) {
    Map<TicketColumn, GivenCell> values = new EnumMap<>(TicketColumn.class);
    for (Row row : rows) {
      if (row.isFor(file) && !row.always().isEmpty()) {
        values.putIfAbsent(row.ours(), new GivenCell.Text(row.always()));
      }
    }
    return values;
  }
}
