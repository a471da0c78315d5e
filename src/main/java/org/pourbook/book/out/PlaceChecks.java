package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.book.out.Check.Figure;

/** Checks that what formulas rest on still stands where it stood, as it stood. */
final class PlaceChecks {

  private static final String CHANGED =
      "Run the tool again: what was changed counts only where Live says yes; Loads, Cut list and"
          + " Pour plan still hold for what was read";
  private static final String MOVED =
      "Rows were sorted, added or taken out, and formulas find them by their place: undo it, or"
          + " run the tool again";

  private PlaceChecks() {}

  /** Returns a check a sheet whose rows other sheets' formulas find by their place. */
  static List<Check> rows(List<SheetSpec<?>> sheets) {
    List<Check> checks = new ArrayList<>();
    for (SheetSpec<?> sheet : sheets) {
      int rows = sheet.rows().size();
      if (rows > 0) {
        checks.add(
            new Check(
                "",
                sheet.name() + ", rows in their places = rows that the tool wrote",
                new Figure(sheet.total(SheetSpec.IN_PLACE), rows),
                Figure.stored(rows),
                MOVED));
      }
    }
    return checks;
  }

  /** Returns the check that no row was added to the given sheets, and none taken out. */
  static Check givenRows(GivenSheets given) {
    return new Check(
        "",
        "Given sheets, cells filled in the first columns = as the tool read them",
        new Figure(given.firstCells(), given.filledFirstCells()),
        Figure.stored(given.filledFirstCells()),
        "A row added or taken out counts only when the tool is run again");
  }

  /** Returns the check of a job's given cells, none where it has none; of no job's, for "". */
  static List<Check> given(GivenSheets given, String job) {
    List<String> ranges = given.changed(job);
    if (ranges.isEmpty()) {
      return List.of();
    }
    String whose = job.isEmpty() ? "Given cells of no one job" : "Given cells";
    return List.of(
        new Check(
            job,
            whose + " as the tool read them: cells changed",
            new Figure("SUM(" + String.join(",", ranges) + ")", 0),
            Figure.stored(0),
            CHANGED));
  }
}
