package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.buy.CutSheet;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.UnitSystem;

/** Where the cut plans butt runs of boards and lap runs of bars. */
final class RunsSheet {

  static final String NAME = "Runs";

  private RunsSheet() {}

  /** Like runs of a plan, divided alike. */
  record Row(CutSheet sheet, CutResult.Division division) {
    UnitSystem units() {
      return sheet.units();
    }
  }

  static SheetSpec<Row> spec(List<CutSheet> sheets, BatchUnits units) {
    List<Row> rows = new ArrayList<>();
    for (CutSheet sheet : sheets) {
      sheet.divisions().forEach(division -> rows.add(new Row(sheet, division)));
    }
    List<Column<Row>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, row -> String.join(", ", row.sheet().jobs())));
    columns.addAll(units.column(Row::units));
    columns.add(Column.cell("Done", Look.TICK, 6, row -> Cell.BLANK));
    columns.add(Column.text("Material", 13, row -> row.sheet().key().material()));
    columns.add(Column.text("Size", 8, row -> row.sheet().key().size()));
    columns.add(Column.text("Goes to", 30, row -> row.division().run().goesTo()));
    columns.add(Column.count("Runs", 6, row -> row.division().times()));
    columns.addAll(
        BatchUnits.lengths(
            units.lengthHeading("Length"),
            "Length as read",
            Row::units,
            row -> Optional.of(row.division().run().length())));
    columns.add(Column.count("Courses", 8, row -> row.division().run().courses()));
    columns.add(Column.count("Joints", 7, row -> row.division().run().joints()));
    columns.add(
        Column.cell(
            units.smallHeading("Lap"),
            Look.NUMBER,
            8,
            row -> lap(row.division().run().lap(), row)));
    columns.add(Column.text("Pieces", 36, RunsSheet::pieces));
    return SheetSpec.landscape(
        NAME,
        "What each run is joined of, in each of its courses; the pieces may lie in any order, but"
            + " the laps of bars side by side are set apart.",
        columns,
        rows);
  }

  private static Cell lap(Length lap, Row row) {
    return lap.isZero() ? Cell.BLANK : Cell.of(BatchUnits.small(lap, row.units()));
  }

  /** Returns the pieces of a course, longest first: {@code 2 x 16'-0" + 1 x 8'-1 1/2"}. */
  private static String pieces(Row row) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    row.division()
        .pieces()
        .forEach(piece -> counts.merge(LengthFormat.of(piece, row.units()), 1, Integer::sum));
    return CutSheets.counted(counts);
  }
}
