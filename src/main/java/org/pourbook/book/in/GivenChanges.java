package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.pourbook.book.Heading;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;
import org.pourbook.desk.FoundChange;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.GivenSheet.GivenRow;
import org.pourbook.measure.UnitSystem;

/** What differs between two inputs, row by row as their keys tell them apart. */
public final class GivenChanges {

  /** The columns that tell rows of a sheet apart, the job's aside; alike rows are counted. */
  private static final Map<InputSheet, List<String>> KEYS =
      new EnumMap<>(
          Map.of(
              InputSheet.JOBS, List.of(),
              InputSheet.POURS, List.of("Pour"),
              InputSheet.SECTIONS, List.of("Section"),
              InputSheet.OUTLINES, List.of("Section", "Ring", "Point"),
              InputSheet.PLATES, List.of("Plate"),
              InputSheet.JOINTS, List.of("Joint"),
              InputSheet.CHANGES, List.of("Change"),
              InputSheet.EXTRAS, List.of("What", "Size", "Section", "Pour"),
              InputSheet.DEPTH_CHECKS, List.of("Section", "X", "Y"),
              InputSheet.PRACTICE, List.of("Setting")));

  /** Columns that nobody reads. */
  private static final Set<String> UNREAD = Set.of("Default", "Source");

  private final InputSheet sheet;
  private final List<FoundChange> found = new ArrayList<>();

  private GivenChanges(InputSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * Returns every cell that reads otherwise, and every row added or removed; sheet by sheet, then
   * as the rows stand. Prices are not compared.
   */
  public static List<FoundChange> between(List<GivenSheet> before, List<GivenSheet> now) {
    Map<String, UnitSystem> unitsBefore = units(before);
    Map<String, UnitSystem> unitsNow = units(now);
    List<FoundChange> all = new ArrayList<>();
    for (InputSheet sheet : InputSheet.values()) {
      if (KEYS.containsKey(sheet)) {
        GivenChanges changes = new GivenChanges(sheet);
        changes.compare(changes.rows(before, unitsBefore), changes.rows(now, unitsNow));
        all.addAll(changes.found);
      }
    }
    return all;
  }

  /** Returns the jobs that any sheet names. */
  public static Set<String> jobs(List<GivenSheet> given) {
    Set<String> jobs = new LinkedHashSet<>();
    for (InputSheet sheet : KEYS.keySet()) {
      GivenChanges rows = new GivenChanges(sheet);
      rows.rows(given, Map.of()).values().forEach(row -> jobs.add(row.job()));
    }
    jobs.remove("");
    return jobs;
  }

  /** A row by its headings. */
  private record Row(String job, Map<InputColumn, GivenCell> cells, UnitSystem units) {

    GivenCell cell(InputColumn column) {
      return cells.getOrDefault(column, RawRow.BLANK);
    }

    String reading(InputColumn column) {
      return CellReading.of(cell(column), column, units);
    }
  }

  private static Map<String, UnitSystem> units(List<GivenSheet> given) {
    Map<String, UnitSystem> units = new HashMap<>();
    GivenChanges jobs = new GivenChanges(InputSheet.JOBS);
    InputColumn column = InputSheet.JOBS.column("Units").orElseThrow();
    for (Row row : jobs.rows(given, units).values()) {
      boolean metric =
          Heading.key(CellWords.of(row.cell(column))).equals(Heading.key(UnitSystem.M.label()));
      units.put(row.job(), metric ? UnitSystem.M : UnitSystem.FT_IN);
    }
    return units;
  }

  /** Returns the rows by what tells them apart, in their order. */
  private Map<String, Row> rows(List<GivenSheet> given, Map<String, UnitSystem> units) {
    Map<String, Row> rows = new LinkedHashMap<>();
    Map<String, Integer> alike = new HashMap<>();
    for (GivenSheet table : given) {
      if (table.name().equals(sheet.label())) {
        for (GivenRow raw : table.rows()) {
          Row row = row(table, raw, units);
          String key = key(row);
          rows.put(key + "\n" + alike.merge(key, 1, Integer::sum), row);
        }
      }
    }
    return rows;
  }

  private Row row(GivenSheet table, GivenRow raw, Map<String, UnitSystem> units) {
    Map<InputColumn, GivenCell> cells = new LinkedHashMap<>();
    for (int i = 0; i < table.headings().size() && i < raw.cells().size(); i++) {
      GivenCell cell = raw.cells().get(i);
      sheet.column(table.headings().get(i)).ifPresent(column -> cells.putIfAbsent(column, cell));
    }
    String job = words(cells, "Job");
    return new Row(job, cells, units.getOrDefault(job, UnitSystem.FT_IN));
  }

  private String words(Map<InputColumn, GivenCell> cells, String heading) {
    return sheet
        .column(heading)
        .map(column -> CellWords.of(cells.getOrDefault(column, RawRow.BLANK)))
        .orElse("");
  }

  private String key(Row row) {
    StringBuilder key = new StringBuilder(row.job());
    for (String heading : KEYS.getOrDefault(sheet, List.of())) {
      key.append('\n').append(row.reading(sheet.column(heading).orElseThrow()));
    }
    return key.toString();
  }

  private void compare(Map<String, Row> before, Map<String, Row> now) {
    Set<String> keys = new LinkedHashSet<>(now.keySet());
    keys.addAll(before.keySet());
    for (String key : keys) {
      Row was = before.get(key);
      Row is = now.get(key);
      if (was == null && is != null) {
        add(is, "added", "", told(is));
      } else if (is == null && was != null) {
        add(was, "removed", told(was), "");
      } else if (was != null && is != null) {
        compareCells(was, is);
      }
    }
  }

  private void compareCells(Row was, Row is) {
    for (InputColumn column : sheet.columns()) {
      boolean read = sheet != InputSheet.PRACTICE || !UNREAD.contains(column.heading());
      if (read && !was.reading(column).equals(is.reading(column))) {
        String before = CellWords.of(was.cell(column));
        add(is, column.heading(), before, CellWords.of(is.cell(column)));
      }
    }
  }

  /** Adds a difference; a setting without a value, which says nothing, is none. */
  private void add(Row row, String what, String before, String now) {
    boolean idle = sheet == InputSheet.PRACTICE && before.isEmpty() && now.isEmpty();
    if (!idle) {
      String section = words(row.cells(), "Section");
      found.add(
          new FoundChange(row.job(), section, sheet.label(), name(row), what, before, now, ""));
    }
  }

  /** Returns what tells a row among those of its job, section aside, in words. */
  private String name(Row row) {
    return String.join(
        " ",
        KEYS.getOrDefault(sheet, List.of()).stream()
            .filter(heading -> !heading.equals("Section"))
            .map(heading -> words(row.cells(), heading))
            .filter(word -> !word.isEmpty())
            .toList());
  }

  /** Returns a row's cells in words, those that name it aside. */
  private String told(Row row) {
    List<String> named = new ArrayList<>(KEYS.getOrDefault(sheet, List.of()));
    named.add("Job");
    return String.join(
        ", ",
        sheet.columns().stream()
            .filter(column -> !named.contains(column.heading()))
            .filter(column -> sheet != InputSheet.PRACTICE || column.heading().equals("Value"))
            .filter(column -> !(row.cell(column) instanceof GivenCell.Blank))
            .map(column -> column.heading() + " " + CellWords.of(row.cell(column)))
            .toList());
  }
}
