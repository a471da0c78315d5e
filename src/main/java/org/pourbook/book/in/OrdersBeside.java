package org.pourbook.book.in;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.measure.NumberText;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;

/** Compares the sheet Orders with Materials, since an office may have changed the one alone. */
final class OrdersBeside {

  static final String SHEET = "Orders";
  static final Set<String> HEADINGS = Set.of("Order", "Material", "Packs");
  private static final int FIGURES = 12; // what a spreadsheet program keeps is 15

  private OrdersBeside() {}

  private record Line(HeadedRows.Row row, BigDecimal packs, Optional<BigDecimal> price) {}

  /** Returns a note for each line of Orders that has other packs or prices than Materials. */
  static List<Problem> notes(HeadedRows orders, HeadedRows materials) {
    Map<String, Line> wanted = lines(materials);
    List<Problem> notes = new ArrayList<>();
    lines(orders)
        .forEach(
            (key, line) -> {
              Line want = wanted.get(key);
              if (want != null) {
                note(line, "Packs", Optional.of(line.packs()), Optional.of(want.packs()), notes);
                note(line, "Unit price", line.price(), want.price(), notes);
              }
            });
    return notes;
  }

  private static void note(
      Line line,
      String heading,
      Optional<BigDecimal> found,
      Optional<BigDecimal> wanted,
      List<Problem> notes) {
    if (!text(found).equals(text(wanted))) {
      notes.add(
          new Problem(
              line.row().place(heading),
              line.row().text("Jobs"),
              heading + " " + text(found),
              text(wanted) + ", as on Materials, which is used",
              Problem.Effect.NOTE));
    }
  }

  private static String text(Optional<BigDecimal> number) {
    return number
        .map(value -> NumberText.text(value.round(new MathContext(FIGURES))))
        .orElse("blank");
  }

  /** Returns the lines of one order with equal goods added up. */
  private static Map<String, Line> lines(HeadedRows rows) {
    Map<String, Line> lines = new LinkedHashMap<>();
    for (HeadedRows.Row row : rows.rows()) {
      Optional<BigDecimal> packs = TicketCells.number(row.cell("Packs"));
      if (packs.isPresent() && !row.text("Order").isEmpty()) {
        String key =
            String.join(
                "\n",
                row.text("Order"),
                row.text("Item"),
                MaterialKey.normal(row.text("Material")),
                MaterialKey.normal(row.text("Size")));
        Line line = new Line(row, packs.get(), TicketCells.number(row.cell("Unit price")));
        lines.merge(key, line, (a, b) -> new Line(a.row(), a.packs().add(b.packs()), a.price()));
      }
    }
    return lines;
  }
}
