package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.book.CellKind;
import org.pourbook.book.Heading;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.GivenSheet.GivenRow;
import org.pourbook.problem.Place;

/** The table of an input sheet: where its columns stand, and its rows. */
final class Table {

  /** More different cells are not looked for again. */
  private static final int MOST_ALIKE = 100_000;

  private final InputSheet sheet;
  private final String place;
  private final int headingRow;
  private final List<HeadedColumn> headed;
  private final Map<InputColumn, Integer> at = new HashMap<>();
  private final Set<InputColumn> bad = new HashSet<>();
  private final List<TableRow> rows = new ArrayList<>();

  /**
   * A column with a heading.
   *
   * @param at counted from 0 in the sheet
   * @param shownAt counted from 0 as places show it
   */
  record HeadedColumn(int at, int shownAt, String heading, Optional<InputColumn> column) {}

  Table(InputSheet sheet, String place, int headingRow, List<HeadedColumn> headed) {
    this.sheet = sheet;
    this.place = place;
    this.headingRow = headingRow;
    this.headed = List.copyOf(headed);
    for (HeadedColumn column : headed) {
      column.column().ifPresent(known -> at.putIfAbsent(known, column.at()));
    }
  }

  InputSheet sheet() {
    return sheet;
  }

  List<HeadedColumn> headed() {
    return headed;
  }

  List<TableRow> rows() {
    return rows;
  }

  void add(TableRow row) {
    rows.add(row);
  }

  /** Returns the place of a heading. */
  Place headingPlace(HeadedColumn column) {
    return new Place(place, headingRow, column.shownAt());
  }

  /** Returns the first column of that meaning. */
  Optional<HeadedColumn> headed(String heading) {
    InputColumn known = column(heading);
    for (HeadedColumn column : headed) {
      if (column.column().isPresent() && column.column().get().equals(known)) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  /** Returns the declared column of that heading. */
  InputColumn column(String heading) {
    return sheet
        .column(heading)
        .orElseThrow(() -> new IllegalArgumentException("no column " + heading + " in " + sheet));
  }

  int at(InputColumn column) {
    return at.getOrDefault(column, -1);
  }

  /** Marks a column whose cells cannot be trusted, because of its heading. */
  void distrust(InputColumn column) {
    bad.add(column);
  }

  boolean isDistrusted(InputColumn column) {
    return bad.contains(column);
  }

  /** Returns the input as read, for the order workbook; cells that are alike are one. */
  GivenSheet given() {
    Map<GivenCell, GivenCell> alike = new HashMap<>();
    List<String> headings = headed.stream().map(HeadedColumn::heading).toList();
    List<GivenRow> given = new ArrayList<>(rows.size());
    for (TableRow row : rows) {
      List<GivenCell> cells = new ArrayList<>(headed.size());
      for (HeadedColumn column : headed) {
        GivenCell cell = given(row.raw().cell(column.at()), column);
        GivenCell before =
            alike.size() < MOST_ALIKE ? alike.putIfAbsent(cell, cell) : alike.get(cell);
        cells.add(before == null ? cell : before);
      }
      given.add(new GivenRow(row.fromSheet(), row.fromRow() + 1, cells));
    }
    return new GivenSheet(sheet.label(), headings, given);
  }

  /** A percentage where a number is asked for keeps its sign, to be read the same again. */
  private static GivenCell given(GivenCell cell, HeadedColumn headed) {
    boolean ofPercent = headed.column().filter(c -> c.kind() == CellKind.PERCENT).isPresent();
    return cell instanceof GivenCell.Number number && number.percent() && !ofPercent
        ? new GivenCell.Text(CellWords.of(cell))
        : cell;
  }

  /**
   * A row of the table.
   *
   * @param fromSheet what places call its sheet
   * @param fromRow counted from 0
   */
  record TableRow(Table table, RawRow raw, String fromSheet, int fromRow) {

    GivenCell cell(String heading) {
      return cell(table.column(heading));
    }

    GivenCell cell(InputColumn column) {
      return raw.cell(table.at(column));
    }

    /** Returns the place of a cell; of the table's first column where that one is not there. */
    Place place(String heading) {
      HeadedColumn column = table.headed(heading).orElse(table.headed.get(0));
      return new Place(fromSheet, fromRow, column.shownAt());
    }

    /** Returns the place of the whole row. */
    Place place() {
      return new Place(fromSheet, fromRow, -1);
    }
  }

  /** Returns the columns by their declaration, each with every place it is headed at. */
  Map<String, List<HeadedColumn>> byKey() {
    Map<String, List<HeadedColumn>> byKey = new LinkedHashMap<>();
    for (HeadedColumn column : headed) {
      byKey.computeIfAbsent(Heading.key(column.heading()), k -> new ArrayList<>()).add(column);
    }
    return byKey;
  }
}
