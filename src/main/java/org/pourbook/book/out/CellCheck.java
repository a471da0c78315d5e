package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.book.CellKind;
import org.pourbook.book.ColumnUnit;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputColumn.Least;
import org.pourbook.book.InputSheet;

/**
 * What an input cell is checked by.
 *
 * @param list whether {@code formula} gives cells to choose from, else whether a value is right
 * @param warns whether another value is warned of
 * @param expected what would be right
 */
record CellCheck(String formula, boolean list, boolean warns, String expected) {

  /** Beyond these a number is most likely in another unit: feet and metres, inches and mm. */
  private static final String MOST_FEET = "1000";

  private static final String MOST_METRES = "300";
  private static final String MOST_INCHES = "100";
  private static final String MOST_MILLIMETRES = "2500";

  /** Days are counted from 1900; before 2000 and after 2100 a day is a slip of the pen. */
  private static final String DAYS = "36526,73415";

  /** Returns the check of a column; of one that is a choice of fixed words, that of its length. */
  static CellCheck of(InputSheet sheet, InputColumn column, InputCells cells) {
    return offered(sheet, column, cells)
        .or(() -> unique(sheet, column))
        .orElseGet(() -> figure(sheet, column, cells));
  }

  private static Optional<CellCheck> offered(
      InputSheet sheet, InputColumn column, InputCells cells) {
    String heading = column.heading();
    if (heading.equals("Job") && sheet != InputSheet.JOBS && cells.has(InputSheet.JOBS)) {
      return Optional.of(
          list(InputCells.filled(InputSheet.JOBS, "Job"), true, "a code that Jobs holds"));
    }
    boolean names = heading.equals("Section") && sheet != InputSheet.SECTIONS;
    if ((names || heading.equals("Part of")) && cells.has(InputSheet.SECTIONS)) {
      String job = InputCells.inRow(sheet, "Job");
      return Optional.of(
          list(
              InputCells.of(InputSheet.SECTIONS, "Section", "Job", job),
              true,
              "a section of this job"));
    }
    if (heading.equals("Supplier")
        && sheet == InputSheet.PRICES
        && cells.has(InputSheet.SUPPLIERS)) {
      return Optional.of(
          list(
              InputCells.filled(InputSheet.SUPPLIERS, "Supplier"),
              true,
              "a name that Suppliers holds"));
    }
    return cells.has(InputSheet.PRICES) ? priced(sheet, heading) : Optional.empty();
  }

  /** What the price book offers; it may be another file, so nothing else is warned of. */
  private static Optional<CellCheck> priced(InputSheet sheet, String heading) {
    if (sheet == InputSheet.EXTRAS && heading.equals("What")) {
      return Optional.of(list(InputCells.filled(InputSheet.PRICES, "Material"), false, ""));
    }
    if (sheet == InputSheet.EXTRAS && heading.equals("Size")) {
      return Optional.of(sizes(InputCells.inRow(sheet, "What")));
    }
    return switch (heading) {
      case "Mix" -> Optional.of(sizes("\"concrete\""));
      case "Mesh" -> Optional.of(sizes("\"mesh\""));
      case "Bolt" -> Optional.of(sizes("\"anchor bolt\""));
      default -> Optional.empty();
    };
  }

  private static CellCheck sizes(String material) {
    return list(InputCells.of(InputSheet.PRICES, "Size", "Material", material), false, "");
  }

  private static CellCheck list(String formula, boolean warns, String expected) {
    return new CellCheck(formula, true, warns, expected);
  }

  /** Codes that stand once. */
  private static Optional<CellCheck> unique(InputSheet sheet, InputColumn column) {
    String heading = column.heading();
    if (sheet == InputSheet.SECTIONS && heading.equals("Section")) {
      return Optional.of(
          right(
              "COUNTIFS("
                  + InputCells.all(sheet, "Job")
                  + ","
                  + InputCells.inRow(sheet, "Job")
                  + ","
                  + InputCells.all(sheet, heading)
                  + ","
                  + InputCells.inRow(sheet, heading)
                  + ")=1",
              "a code that no other section of this job has"));
    }
    boolean once =
        (sheet == InputSheet.JOBS && heading.equals("Job"))
            || (sheet == InputSheet.SUPPLIERS && heading.equals("Supplier"));
    return once
        ? Optional.of(
            right(
                "COUNTIF("
                    + InputCells.all(sheet, heading)
                    + ","
                    + InputCells.inRow(sheet, heading)
                    + ")=1",
                "one row for each " + heading))
        : Optional.empty();
  }

  private static CellCheck figure(InputSheet sheet, InputColumn column, InputCells cells) {
    String cell = InputCells.inRow(sheet, column.heading());
    boolean zero = column.least() != Least.ABOVE_ZERO;
    return switch (column.kind()) {
      case COUNT ->
          right(
              "AND(ISNUMBER("
                  + cell
                  + "),"
                  + cell
                  + ">="
                  + (zero ? "0," : "1,")
                  + cell
                  + "=INT("
                  + cell
                  + "))",
              "a whole number" + (zero ? "" : " above zero"));
      case PERCENT -> right(between(cell, "0", "100"), "a number from 0 to 100");
      case MONEY -> right(ifNumber(cell, cell + ">=0"), "a number, not below zero");
      case DATE -> right(between(cell, DAYS.split(",")[0], DAYS.split(",")[1]), "a date");
      case TIME -> right(ifNumber(cell, cell + "<1"), "a time of day");
      case NUMBER, LENGTH, LENGTH_OR_WORD -> number(sheet, column, cells, cell);
      default -> right("LEN(" + cell + ")<1000", "a shorter text");
    };
  }

  private static CellCheck number(
      InputSheet sheet, InputColumn column, InputCells cells, String cell) {
    List<String> all = new ArrayList<>();
    if (column.least() != Least.ANY) {
      all.add(cell + (column.least() == Least.ZERO ? ">=0" : ">0"));
    }
    Optional<String> most =
        column.unit() == ColumnUnit.FEET
            ? cells.most(sheet, MOST_FEET, MOST_METRES)
            : column.unit() == ColumnUnit.INCHES
                ? cells.most(sheet, MOST_INCHES, MOST_MILLIMETRES)
                : Optional.empty();
    most.ifPresent(limit -> all.add("ABS(" + cell + ")<=" + limit));
    if (all.isEmpty()) {
      return right("LEN(" + cell + ")<1000", "a number");
    }
    String sign =
        switch (column.least()) {
          case ANY -> "";
          case ZERO -> ", not below zero";
          case ABOVE_ZERO -> " above zero";
        };
    boolean length = column.kind() != CellKind.NUMBER;
    return right(
        ifNumber(cell, "AND(" + String.join(",", all) + ")"),
        (length ? "a length" : "a number") + sign + (most.isPresent() ? ", in its unit" : ""));
  }

  /** A date or a percentage may be text too, which the tool reads. */
  private static String between(String cell, String least, String most) {
    return ifNumber(cell, "AND(" + cell + ">=" + least + "," + cell + "<=" + most + ")");
  }

  private static String ifNumber(String cell, String then) {
    return "IF(ISNUMBER(" + cell + ")," + then + ",TRUE)";
  }

  private static CellCheck right(String formula, String expected) {
    return new CellCheck(formula, false, true, expected);
  }
}
