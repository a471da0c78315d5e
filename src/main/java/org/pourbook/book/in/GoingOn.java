package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.book.Heading;

/**
 * Sheets of an order workbook that go on from a full one: {@code Materials (2)} from {@code
 * Materials}. A copy that somebody made of a sheet may be called the same; but a sheet that goes on
 * bears its own name in its first cell.
 */
final class GoingOn {

  private static final Pattern NUMBERED = Pattern.compile("(.+) \\(([2-9]|[1-9][0-9]{1,3})\\)");

  /** A heading row stands among the first rows. */
  private static final int TOP_ROWS = 12;

  /** The rows by which a sheet that goes on is known: its name, and what it goes on from. */
  static final int NAME_ROWS = 1;

  private GoingOn() {}

  /** Returns the sheet that a sheet of this name would go on from, if the book has it. */
  static Optional<String> from(String name, List<String> names) {
    Matcher numbered = NUMBERED.matcher(name);
    return numbered.matches() && names.contains(numbered.group(1))
        ? Optional.of(numbered.group(1))
        : Optional.empty();
  }

  /** Returns whether a sheet with these first rows goes on from another. */
  static boolean isOne(String name, List<RawRow> rows) {
    return !rows.isEmpty() && CellWords.of(rows.get(0).cell(0)).equals(name);
  }

  /**
   * Returns a sheet with the rows of the one that goes on from it, counted on from its own.
   *
   * @throws XlsxBook.Damage if their headings differ
   */
  static RawSheet joined(RawSheet first, RawSheet next) throws XlsxBook.Damage {
    List<RawRow> rows = new ArrayList<>(first.rows());
    int heading = headingOf(first, next);
    int shift =
        first.rows().get(first.rows().size() - 1).index() - next.rows().get(heading).index();
    for (RawRow row : next.rows().subList(heading + 1, next.rows().size())) {
      rows.add(new RawRow(row.index() + shift, row.cells()));
    }
    return new RawSheet(first.place(), first.name(), rows);
  }

  /** Returns which row of the next sheet holds the headings that the first one has. */
  private static int headingOf(RawSheet first, RawSheet next) throws XlsxBook.Damage {
    for (int i = NAME_ROWS; i < Math.min(TOP_ROWS, next.rows().size()); i++) {
      List<String> words = words(next.rows().get(i));
      if (first.rows().stream().limit(TOP_ROWS).anyMatch(row -> words(row).equals(words))) {
        return i;
      }
    }
    throw new XlsxBook.Damage(
        "sheet " + next.name() + " goes on from " + first.name() + " but has other headings");
  }

  private static List<String> words(RawRow row) {
    return row.cells().stream().map(cell -> Heading.key(CellWords.of(cell))).toList();
  }
}
