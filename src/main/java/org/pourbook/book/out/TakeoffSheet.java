package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pourbook.buy.Line;
import org.pourbook.desk.Estimate;
import org.pourbook.job.Job;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.TakeOff;

/**
 * The quantities by job, material and size, so that what a material needs is one range of rows;
 * what only informs comes first.
 */
final class TakeoffSheet {

  static final String NAME = "Takeoff";
  static final String AMOUNT = "Amount";
  private static final String PUMP_LOSS_RULE = "CON-7";

  private final SheetSpec<Row> spec;
  private final Spans<Need> needs;

  record Row(Job job, Quantity quantity) {
    Need need() {
      return new Need(job.code(), quantity.material().orElse(new MaterialKey("", "")));
    }
  }

  TakeoffSheet(Estimate estimate, RulesSheet rules, int most) {
    Map<String, List<Line>> lines =
        estimate.bought().lines().stream().collect(Collectors.groupingBy(Line::job));
    List<Row> rows = new ArrayList<>();
    for (TakeOff takeOff : estimate.takeOffs()) {
      List<Line> ofJob = lines.getOrDefault(takeOff.job().code(), List.of());
      rows.addAll(sorted(takeOff, MaterialOrder.of(ofJob)));
    }
    this.needs = Spans.of(rows, Row::need);
    this.spec =
        SheetSpec.landscape(
                NAME,
                "Every quantity, how it was worked out and by which rule; each material's rows add up"
                    + " to its Net on Materials.",
                columns(rules),
                rows)
            .together(row -> row.job().code(), most);
  }

  private static List<Row> sorted(TakeOff takeOff, Comparator<MaterialKey> order) {
    Comparator<Row> byMaterial =
        Comparator.comparing(
            row -> row.quantity().material().orElse(new MaterialKey("", "")), order);
    return takeOff.quantities().stream()
        .map(quantity -> new Row(takeOff.job(), quantity))
        .sorted(byMaterial)
        .toList();
  }

  private static List<Column<Row>> columns(RulesSheet rules) {
    return List.of(
        Column.text("Job", 12, row -> row.job().code()),
        Column.text("Section", 12, row -> row.quantity().section()),
        Column.text("Quantity", 24, row -> row.quantity().what()),
        Column.text("Material", 16, row -> material(row, false)),
        Column.text("Size", 12, row -> material(row, true)),
        Column.count("Pour", 5, row -> row.quantity().pour()),
        Column.number(AMOUNT, Look.NUMBER, 10, row -> row.quantity().amount()),
        Column.text("Unit", 6, row -> row.quantity().unitText()),
        Column.text("Working", 58, row -> row.quantity().working()),
        Column.cell("Rule", Look.LINK, 9, row -> rules.link(row.quantity().rule())));
  }

  private static String material(Row row, boolean size) {
    return row.quantity().material().map(key -> size ? key.size() : key.material()).orElse("");
  }

  SheetSpec<Row> spec() {
    return spec;
  }

  /** Returns the rows of a need. */
  Optional<Span> rowsOf(Need need) {
    return needs.of(need);
  }

  /** Returns where those rows stand, for links. */
  String place(Span rows) {
    return spec.place(rows, spec.columns().size());
  }

  /** Returns the amounts of those rows, for formulas. */
  String amounts(Span rows) {
    return spec.cells(rows, AMOUNT);
  }

  /** Returns the formula of concrete that is placed: without rows of pump loss (CON-7). */
  String withoutPumpLoss(Span rows) {
    StringBuilder formula = new StringBuilder("SUM(" + amounts(rows) + ")");
    for (int row = rows.first(); row <= rows.last(); row++) {
      if (quantityAt(row).rule().equals(PUMP_LOSS_RULE)) {
        formula.append('-').append(spec.cell(row, AMOUNT));
      }
    }
    return formula.toString();
  }

  private Quantity quantityAt(int row) {
    return spec.rows().get(row - SheetSpec.FIRST_ROW).quantity();
  }

  /** Returns what those amounts add up to, in the order in which a program adds them. */
  double sum(Span rows) {
    double sum = 0;
    for (int row = rows.first(); row <= rows.last(); row++) {
      sum += quantityAt(row).amount();
    }
    return sum;
  }
}
