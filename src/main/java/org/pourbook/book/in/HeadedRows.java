package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.pourbook.book.Heading;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.problem.Place;

/** The rows below the headings of sheets that belong together, told by headings. */
record HeadedRows(List<Row> rows) {
  HeadedRows {
    rows = List.copyOf(rows);
  }

  /** A row with where each heading stands. */
  record Row(String sheet, RawRow raw, Map<String, Integer> at) {

    GivenCell cell(String heading) {
      return raw.cell(at.getOrDefault(Heading.key(heading), -1));
    }

    String text(String heading) {
      return CellWords.of(cell(heading));
    }

    Place place(String heading) {
      return new Place(sheet, raw.index(), at.getOrDefault(Heading.key(heading), -1));
    }
  }

  /** Returns whether a sheet bears a name; a copy, {@code NAME (2)}, does not. */
  static boolean isNamed(String sheet, String name) {
    return sheet.strip().equalsIgnoreCase(name);
  }

  /** Returns the headings of a row, each with the first column it stands in. */
  static Map<String, Integer> headings(RawRow raw) {
    Map<String, Integer> at = new HashMap<>();
    for (int i = 0; i < raw.cells().size(); i++) {
      String key = Heading.key(CellWords.of(raw.cell(i)));
      if (!key.isEmpty()) {
        at.putIfAbsent(key, i);
      }
    }
    return at;
  }

  /**
   * Returns the rows of the sheet of a name.
   *
   * @param required headings by which the heading row is known
   */
  static HeadedRows of(RawBook book, String name, Set<String> required) {
    List<String> keys = required.stream().map(Heading::key).toList();
    List<Row> rows = new ArrayList<>();
    for (RawSheet sheet : book.sheets()) {
      Map<String, Integer> at = Map.of();
      for (RawRow raw : sheet.rows()) {
        if (!isNamed(sheet.name(), name)) {
          break;
        }
        if (at.isEmpty()) {
          Map<String, Integer> headings = headings(raw);
          at = headings.keySet().containsAll(keys) ? headings : at;
        } else {
          rows.add(new Row(sheet.place(), raw, at));
        }
      }
    }
    return new HeadedRows(rows);
  }
}
