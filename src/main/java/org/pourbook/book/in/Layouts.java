package org.pourbook.book.in;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import org.pourbook.book.InputSheet;
import org.pourbook.book.Layout;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/** Tells workbooks of other versions apart by the layout that they bear. */
final class Layouts {

  private Layouts() {}

  static boolean isReadFirst(String name) {
    return HeadedRows.isNamed(name, InputSheet.READ_FIRST);
  }

  /** Returns the note on what Read first of a workbook tells; none where it has none of ours. */
  static Optional<Problem> note(RawBook book) {
    return book.sheets().stream()
        .filter(sheet -> isReadFirst(sheet.name()))
        .filter(Layouts::isOurs)
        .findFirst()
        .flatMap(Layouts::note);
  }

  /** Ours links to the other sheets under this heading. */
  private static boolean isOurs(RawSheet sheet) {
    return sheet.rows().stream()
        .anyMatch(row -> CellWords.of(row.cell(0)).equals(InputSheet.IN_THIS_ORDER));
  }

  /**
   * Returns the note on what a sheet of a workbook tells.
   *
   * @param sheet one with the layout's number beside its label
   */
  static Optional<Problem> note(RawSheet sheet) {
    OptionalInt number = OptionalInt.empty();
    Place place = Place.ofSheet(sheet.place());
    for (RawRow row : sheet.rows()) {
      for (int i = 0; i < 2; i++) {
        if (CellWords.of(row.cell(i)).equals(Layout.LABEL) && number.isEmpty()) {
          Optional<BigDecimal> found = TicketCells.number(row.cell(i + 1));
          number = found.map(n -> OptionalInt.of(n.intValue())).orElse(OptionalInt.empty());
          place = new Place(sheet.place(), row.index(), i + 1);
        }
      }
    }
    Place there = place;
    return Layout.difference(number)
        .map(
            difference ->
                new Problem(
                    there,
                    "",
                    "a workbook of " + difference.of(),
                    difference.expected(),
                    Effect.NOTE));
  }
}
