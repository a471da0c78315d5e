package org.pourbook.book.out;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;
import org.pourbook.problem.Place;

/**
 * Where the cells of the input sheets of one template stand, for the formulas of its checks.
 *
 * @param present the sheets that the workbook holds; formulas name no other
 */
record InputCells(Set<InputSheet> present) {

  /** The last row with lists and messages, as the spreadsheet counts. */
  static final int LAST_ROW = 2_000;

  InputCells {
    present = Set.copyOf(present);
  }

  /** Returns the columns of a sheet as templates show them: what is about one thing together. */
  static List<InputColumn> columns(InputSheet sheet) {
    return sheet.columns().stream().sorted(Comparator.comparing(InputColumn::group)).toList();
  }

  boolean has(InputSheet sheet) {
    return present.contains(sheet);
  }

  /** Returns whether a sheet has a column of that heading. */
  static boolean has(InputSheet sheet, String heading) {
    return sheet.column(heading).isPresent();
  }

  /** Returns the cell of a column in the row of a check, as its first row names it: {@code $A6}. */
  static String inRow(InputSheet sheet, String heading) {
    return "$" + letter(sheet, heading) + TemplateSheet.FIRST_ROW;
  }

  /** Returns all cells to be filled in of a column: {@code Jobs!$A$6:$A$2000}. */
  static String all(InputSheet sheet, String heading) {
    return new Span(TemplateSheet.FIRST_ROW, LAST_ROW).in(sheet.label(), letter(sheet, heading));
  }

  /** Returns the cells of a column that are filled, when no row is left out. */
  static String filled(InputSheet sheet, String heading) {
    String all = all(sheet, heading);
    return "INDEX(" + all + ",1):INDEX(" + all + ",MAX(1,COUNTA(" + all + ")))";
  }

  /**
   * Returns the cells of a column in the rows where another column holds a value; these rows are
   * taken to stand together.
   */
  static String of(InputSheet sheet, String heading, String keyHeading, String value) {
    String cells = all(sheet, heading);
    String keys = all(sheet, keyHeading);
    String first = "MATCH(" + value + "," + keys + ",0)";
    return "INDEX("
        + cells
        + ","
        + first
        + "):INDEX("
        + cells
        + ","
        + first
        + "+COUNTIF("
        + keys
        + ","
        + value
        + ")-1)";
  }

  /** Returns the largest figure that makes sense in a row, by the units of the row's job. */
  Optional<String> most(InputSheet sheet, String us, String metric) {
    if (!has(InputSheet.JOBS) || !has(sheet, "Job")) {
      return Optional.empty();
    }
    return Optional.of(
        "IF(COUNTIFS("
            + all(InputSheet.JOBS, "Job")
            + ","
            + inRow(sheet, "Job")
            + ","
            + all(InputSheet.JOBS, "Units")
            + ",\"m\")>0,"
            + metric
            + ","
            + us
            + ")");
  }

  private static String letter(InputSheet sheet, String heading) {
    List<InputColumn> columns = columns(sheet);
    int index =
        IntStream.range(0, columns.size())
            .filter(i -> columns.get(i).heading().equals(heading))
            .findFirst()
            .orElseThrow();
    return Place.columnName(index);
  }
}
