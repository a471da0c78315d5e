package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pourbook.book.InputSheet;
import org.pourbook.desk.Estimate;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.Section;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.SectionFigure;

/** The input as it was read, from which later commands work and on which Takeoff's amounts rest. */
final class GivenSheets {

  private final Map<String, GivenTable> tables = new LinkedHashMap<>();

  GivenSheets(Estimate estimate, int most) {
    for (GivenSheet given : estimate.batch().given()) {
      boolean sections = given.name().equals(InputSheet.SECTIONS.label());
      tables.put(
          given.name(),
          GivenTable.of(
              given,
              sections ? new SectionFigures(given, estimate.takeOffs()).columns() : List.of(),
              most));
    }
  }

  /** Returns the sheets of a workbook that rests on them no further. */
  static List<Sheet> plain(List<GivenSheet> given) {
    return given.stream().<Sheet>map(GivenTable::plain).toList();
  }

  List<Sheet> sheets() {
    return tables.values().stream().<Sheet>map(GivenTable::spec).toList();
  }

  /** Returns the cell that holds a section's size in figures, if the input has its column. */
  Optional<String> figure(Section section, SectionFigure figure) {
    return figure(section, figure.heading());
  }

  /** Returns the cell that holds the waste of a section, if the input has its column. */
  Optional<String> waste(Section section) {
    return figure(section, SectionFigures.WASTE);
  }

  private Optional<String> figure(Section section, String heading) {
    return Optional.ofNullable(tables.get(InputSheet.SECTIONS.label()))
        .filter(table -> table.heading(heading).isPresent())
        .flatMap(
            table ->
                table
                    .rowFrom(section.place().sheet(), section.place().row() + 1)
                    .map(row -> table.spec().cell(row, SectionFigures.inFigures(heading))));
  }

  /** Returns a link to the row of the input that stood in a place: {@code Given Sections 7}. */
  Cell link(Place place) {
    for (GivenTable table : tables.values()) {
      Optional<Integer> row = table.rowFrom(place.sheet(), place.row() + 1);
      if (row.isPresent()) {
        String there = table.spec().firstCell(row.get());
        String text = table.spec().name() + " " + table.spec().rowInSheet(row.get());
        return Cell.formula("HYPERLINK(\"#" + there + "\",\"" + text + "\")", text);
      }
    }
    return Cell.BLANK;
  }

  /**
   * Returns the cells that count a job's changes, a range for each sheet that has rows of it.
   *
   * @param job empty for the rows that belong to no job
   */
  List<String> changed(String job) {
    List<String> ranges = new ArrayList<>();
    tables.values().forEach(table -> table.changed(job).ifPresent(ranges::add));
    return ranges;
  }

  /** Returns a formula that counts what stands in the first columns of all given sheets. */
  String firstCells() {
    return tables.values().stream()
        .map(GivenTable::firstCells)
        .collect(Collectors.joining(",", "COUNTA(", ")"));
  }

  /** Returns what that formula gave when the tool ran. */
  int filledFirstCells() {
    return tables.values().stream().mapToInt(GivenTable::filledFirstCells).sum();
  }
}
