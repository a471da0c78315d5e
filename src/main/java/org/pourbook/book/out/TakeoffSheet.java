package org.pourbook.book.out;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
  static final String OWN_WASTE = "Own waste";
  private static final String PUMP_LOSS_RULE = "CON-7";

  private final SheetSpec<Row> spec;
  private final Spans<Need> needs;
  private final Spans<String> jobs;

  /**
   * A quantity of a job.
   *
   * @param allowancePercent of its material on Materials, where the rows may have others (CON-6)
   */
  record Row(Job job, Quantity quantity, OptionalDouble allowancePercent) {
    Need need() {
      return new Need(job.code(), quantity.material().orElse(new MaterialKey("", "")));
    }
  }

  TakeoffSheet(Estimate estimate, RulesSheet rules, BasisLinks basis, GivenSheets given, int most) {
    Map<String, List<Line>> lines =
        estimate.bought().lines().stream().collect(Collectors.groupingBy(Line::job));
    List<OfJob> sorted =
        estimate.takeOffs().stream()
            .map(takeOff -> sorted(takeOff, lines.getOrDefault(takeOff.job().code(), List.of())))
            .toList();
    List<Row> rows = MadeRows.of(sorted, OfJob::quantities, OfJob::row);
    this.jobs = Spans.of(rows, row -> row.job().code());
    this.needs = Spans.of(rows, Row::need);
    this.spec =
        SheetSpec.landscape(
                NAME,
                "Every quantity, how it was worked out and by which rule; each material's rows add up"
                    + " to its Net on Materials.",
                columns(rules, basis, new TakeoffFormulas(this, given)),
                rows)
            .together(row -> row.job().code(), most)
            .withPlaces();
  }

  /**
   * The quantities of a job, in the order of their materials on Materials.
   *
   * @param allowances there, of materials of which rows have others
   */
  private record OfJob(
      Job job, List<Quantity> quantities, Map<MaterialKey, OptionalDouble> allowances) {

    Row row(Quantity quantity) {
      return new Row(job, quantity, allowance(quantity));
    }

    private OptionalDouble allowance(Quantity quantity) {
      return quantity.allowancePercent().isEmpty()
          ? OptionalDouble.empty()
          : quantity
              .material()
              .map(key -> allowances.getOrDefault(key.normal(), OptionalDouble.empty()))
              .orElse(OptionalDouble.empty());
    }
  }

  private static OfJob sorted(TakeOff takeOff, List<Line> lines) {
    Set<MaterialKey> differing =
        takeOff.quantities().stream()
            .filter(quantity -> quantity.allowancePercent().isPresent())
            .flatMap(quantity -> quantity.material().stream())
            .map(MaterialKey::normal)
            .collect(Collectors.toSet());
    Map<MaterialKey, OptionalDouble> allowances = new HashMap<>();
    for (Line line : lines) {
      if (line.allowancePercent().isPresent() && differing.contains(line.key().normal())) {
        allowances.putIfAbsent(line.key().normal(), line.allowancePercent());
      }
    }
    Comparator<Quantity> byMaterial =
        Comparator.comparing(
            quantity -> quantity.material().orElse(new MaterialKey("", "")),
            MaterialOrder.of(lines));
    return new OfJob(
        takeOff.job(), takeOff.quantities().stream().sorted(byMaterial).toList(), allowances);
  }

  private static List<Column<Row>> columns(
      RulesSheet rules, BasisLinks basis, TakeoffFormulas formulas) {
    return List.of(
        Column.text("Job", 12, row -> row.job().code()),
        Column.text("Section", 12, row -> row.quantity().section()),
        Column.text("Quantity", 24, row -> row.quantity().what()),
        Column.text("Material", 16, row -> material(row, false)),
        Column.text("Size", 12, row -> material(row, true)),
        Column.count("Pour", 5, row -> row.quantity().pour()),
        Column.of(AMOUNT, Look.NUMBER, 10, formulas::amount),
        Column.text("Unit", 6, row -> row.quantity().unitText()),
        Column.text("Working", 58, row -> row.quantity().working()),
        Column.cell("Rule", Look.LINK, 9, row -> rules.link(row.quantity().rule())),
        Column.onScreen(Column.of("Live", Look.TEXT, 5, formulas::live)),
        Column.onScreen(Column.of(OWN_WASTE, Look.NUMBER, 8, formulas::ownWaste)),
        Column.onScreen(Column.cell("Given", Look.LINK, 18, formulas::given)),
        Column.onScreen(
            Column.cell(
                "Settings",
                Look.LINK,
                14,
                row -> basis.link(row.job().code(), row.quantity().rule()))));
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

  /** Returns what the rows' own waste adds to the material's allowance, where they have any. */
  Optional<String> ownWaste(Span rows) {
    return row(rows.first()).allowancePercent().isPresent()
        ? Optional.of("SUM(" + spec.cells(rows, OWN_WASTE) + ")")
        : Optional.empty();
  }

  /** Returns the only row of a job's quantity of that name. */
  Optional<Integer> rowOf(Job job, String section, String what) {
    Optional<Span> all = jobs.of(job.code());
    int found = 0;
    for (int row = all.map(Span::first).orElse(1); row <= all.map(Span::last).orElse(0); row++) {
      Quantity quantity = quantityAt(row);
      if (quantity.what().equals(what) && quantity.section().equals(section)) {
        if (found > 0) {
          return Optional.empty();
        }
        found = row;
      }
    }
    return found == 0 ? Optional.empty() : Optional.of(found);
  }

  /** Returns the amount in a row, for formulas of the same sheet. */
  String amount(int row) {
    return "$" + spec.letter(AMOUNT) + "$" + spec.rowInSheet(row);
  }

  private Row row(int row) {
    return spec.rows().get(row - SheetSpec.FIRST_ROW);
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

  Quantity quantityAt(int row) {
    return row(row).quantity();
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
