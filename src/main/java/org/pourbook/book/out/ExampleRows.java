package org.pourbook.book.out;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.book.InputSheet;

/**
 * The invented example of the templates: a job EXAMPLE, sound as it stands, whose rows may all be
 * deleted, and the few prices that it takes. Each row gives cells by heading.
 */
final class ExampleRows {

  private static final String JOB = "EXAMPLE";
  private static final LocalDate POUR_DAY = LocalDate.of(2027, 5, 11);

  private final boolean metric;

  ExampleRows(boolean metric) {
    this.metric = metric;
  }

  List<Map<String, Cell>> of(InputSheet sheet) {
    return switch (sheet) {
      case JOBS -> jobs();
      case POURS -> pours();
      case SECTIONS -> sections();
      case OUTLINES -> outlines();
      case PLATES -> plates();
      case JOINTS -> joints();
      case CHANGES -> changes();
      case EXTRAS -> extras();
      case DEPTH_CHECKS -> depthChecks();
      case PRICES -> ExamplePrices.prices(metric);
      case SUPPLIERS -> ExamplePrices.suppliers(metric);
      case PRACTICE -> List.of();
    };
  }

  /** Returns a row: headings and values in turn; a text, a number, a day or a time. */
  static Map<String, Cell> row(Object... headingsAndValues) {
    Map<String, Cell> row = new LinkedHashMap<>();
    for (int i = 0; i < headingsAndValues.length; i += 2) {
      row.put((String) headingsAndValues[i], cell(headingsAndValues[i + 1]));
    }
    return row;
  }

  private static Cell cell(Object value) {
    if (value instanceof Number number) {
      return Cell.of(number.doubleValue());
    } else if (value instanceof LocalDate day) {
      return new Cell.Day(day);
    } else if (value instanceof LocalTime time) {
      return new Cell.Clock(time);
    }
    return Cell.of((String) value);
  }

  /** Returns the value for the units of the template. */
  private Object or(Object us, Object inMetres) {
    return metric ? inMetres : us;
  }

  private List<Map<String, Cell>> jobs() {
    return List.of(
        row(
            "Job",
            JOB,
            "Description",
            "Example: workshop floor and a paved corner. Delete every row of this job.",
            "Customer",
            "A. Customer",
            "Site",
            "1 Example Lane",
            "Pour date",
            POUR_DAY,
            "Units",
            or("ft-in", "m"),
            "Mix",
            or("3000 psi", "25 MPa"),
            "Placing",
            "chute"));
  }

  private List<Map<String, Cell>> pours() {
    return List.of(
        row("Job", JOB, "Pour", 1, "Date", POUR_DAY, "Start", LocalTime.of(7, 0), "Crew", 4),
        row("Job", JOB, "Pour", 2, "Date", POUR_DAY.plusDays(2), "Start", LocalTime.of(8, 0)));
  }

  private List<Map<String, Cell>> sections() {
    return List.of(
        row(
            "Job",
            JOB,
            "Section",
            "FLOOR",
            "Kind",
            "slab",
            "Where",
            "inside",
            "Length",
            or("36'-0\"", 11),
            "Width",
            or("24'-0\"", 7.5),
            "Thickness",
            or(4, 100),
            "Edge depth",
            or(16, 400),
            "Edge width",
            or(12, 300),
            "Edge bars",
            or("2 #4", "2 12 mm"),
            "Bars",
            or("#4 @ 16 EW", "10 mm @ 400 EW"),
            "Finish",
            "trowel",
            "Notes",
            "one row is enough: a blank cell takes its default"),
        row(
            "Job",
            JOB,
            "Section",
            "CORNER",
            "Kind",
            "slab",
            "Where",
            "outside",
            "Pour",
            2,
            "Thickness",
            or(4, 100),
            "Notes",
            "its shape stands on sheet Outlines"));
  }

  /** An L; a table holds no gap, so the corner points follow one another. */
  private List<Map<String, Cell>> outlines() {
    double[][] us = {{0, 0}, {12, 0}, {12, 6}, {6, 6}, {6, 10}, {0, 10}};
    double[][] inMetres = {{0, 0}, {3.6, 0}, {3.6, 1.8}, {1.8, 1.8}, {1.8, 3}, {0, 3}};
    List<Map<String, Cell>> rows = new ArrayList<>();
    for (double[] point : metric ? inMetres : us) {
      rows.add(
          row(
              "Job",
              JOB,
              "Section",
              "CORNER",
              "Ring",
              1,
              "Point",
              rows.size() + 1,
              "X",
              point[0] + (metric ? 20 : 60),
              "Y",
              point[1]));
    }
    return rows;
  }

  private List<Map<String, Cell>> plates() {
    return List.of(
        row(
            "Job",
            JOB,
            "Plate",
            "P1",
            "Section",
            "FLOOR",
            "Length",
            or("36'-0\"", 11),
            "Count",
            2,
            "Bolt",
            or("1/2 x 10", "M12 x 250"),
            "Spacing",
            or("4'-0\"", 1.2)));
  }

  private List<Map<String, Cell>> joints() {
    return List.of(
        row(
            "Job",
            JOB,
            "Joint",
            "J1",
            "Section",
            "FLOOR",
            "Side",
            "W2",
            "Kind",
            "isolation",
            "Length",
            or("24'-0\"", 7.5),
            "Filler depth",
            or(4, 100)));
  }

  private List<Map<String, Cell>> changes() {
    return List.of(
        row(
            "Job",
            JOB,
            "Change",
            "1",
            "Date",
            POUR_DAY.minusDays(30),
            "Asked by",
            "A. Customer",
            "What",
            "floor two feet longer",
            "Section",
            "FLOOR",
            "State",
            "taken up"));
  }

  private List<Map<String, Cell>> extras() {
    return List.of(
        row(
            "Job",
            JOB,
            "What",
            "floor drain",
            "Size",
            or("4 in", "100 mm"),
            "Quantity",
            1,
            "Unit",
            "each",
            "Section",
            "FLOOR",
            "Kind",
            "set in"));
  }

  /** Five make a surface. */
  private List<Map<String, Cell>> depthChecks() {
    double[][] us = {{6, 6, 4}, {18, 6, 4.125}, {30, 6, 4}, {12, 18, 4.25}, {24, 18, 4}};
    double[][] inMetres = {
      {2, 2, 100}, {5.5, 2, 103}, {9, 2, 100}, {3.5, 5.5, 106}, {7.5, 5.5, 101}
    };
    List<Map<String, Cell>> rows = new ArrayList<>();
    for (double[] check : metric ? inMetres : us) {
      rows.add(
          row("Job", JOB, "Section", "FLOOR", "X", check[0], "Y", check[1], "Depth", check[2]));
    }
    return rows;
  }
}
