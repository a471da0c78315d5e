package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pourbook.buy.Bought;
import org.pourbook.buy.JobTotals;
import org.pourbook.desk.Estimate;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.TakeOff;

/** One row a job: what is ordered and what it costs. */
final class SummarySheet {

  static final String NAME = "Summary";
  static final String CONCRETE_ORDER = "Concrete order";
  static final String MATERIALS = "Materials";
  static final String SERVICES = "Services";
  static final String FEES = "Delivery and fees";
  static final String TAX = "Tax";
  static final String TOTAL = "Total";
  static final String UNPRICED = "No price (lines)";

  private SummarySheet() {}

  record Row(TakeOff takeOff, JobTotals totals, long cautions) {
    Job job() {
      return takeOff.job();
    }

    String code() {
      return takeOff.job().code();
    }

    UnitSystem units() {
      return takeOff.job().units();
    }
  }

  static SheetSpec<Row> spec(
      Estimate estimate,
      BatchUnits units,
      TakeoffSheet takeoff,
      MaterialsSheet materials,
      OrderTotalsSheet orders) {
    SummaryAmounts amounts = new SummaryAmounts(takeoff, materials);
    SummaryMoney money = new SummaryMoney(materials, orders);
    List<Column<Row>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, Row::code));
    columns.addAll(units.column(Row::units));
    columns.add(Column.text("Description", 26, row -> row.job().description()));
    columns.add(Column.cell("Pour date", Look.DATE, 13, SummarySheet::pourDate));
    columns.addAll(ordered(units, amounts));
    columns.addAll(paid(money));
    columns.addAll(toMind(money));
    SheetSpec<Row> spec = SheetSpec.landscape(NAME, says(estimate), columns, rows(estimate));
    return spec.rows().isEmpty()
        ? spec
        : spec.with(
            new CostChart(spec, List.of(MATERIALS, SERVICES, FEES, TAX), currency(estimate)));
  }

  private static List<Column<Row>> ordered(BatchUnits units, SummaryAmounts amounts) {
    return List.of(
        summed(units, Column.of(units.volumeHeading("Concrete net"), Look.NUMBER, 9, amounts::net)),
        summed(
            units,
            Column.of(units.volumeHeading(CONCRETE_ORDER), Look.NUMBER, 9, amounts::concreteOrder)),
        summed(units, Column.of(units.weightHeading("Bars"), Look.NUMBER, 10, amounts::bars)),
        summed(
            units,
            Column.of(
                units.lengthHeading("Form boards"),
                Look.NUMBER,
                9,
                at -> amounts.ordered(at, Material.FORM_BOARD))),
        Column.of("Stakes", Look.COUNT, 7, amounts::stakes).inTotal(),
        Column.<Row>of(
                "Anchor bolts", Look.COUNT, 7, at -> amounts.ordered(at, Material.ANCHOR_BOLT))
            .inTotal());
  }

  /** Amounts in two systems of units have no sum. */
  private static Column<Row> summed(BatchUnits units, Column<Row> column) {
    return units.isMixed() ? column : column.inTotal();
  }

  private static List<Column<Row>> paid(SummaryMoney money) {
    return List.of(
        Column.of(MATERIALS, Look.MONEY, 11, money::materials).inTotal(),
        Column.of(SERVICES, Look.MONEY, 10, money::services).inTotal(),
        Column.of(FEES, Look.MONEY, 10, money::fees).inTotal(),
        Column.of(TAX, Look.MONEY, 10, money::tax).inTotal(),
        Column.of(TOTAL, Look.MONEY, 12, money::total).inTotal());
  }

  private static List<Column<Row>> toMind(SummaryMoney money) {
    return List.of(
        Column.of("Standing", Look.WORDS, 10, money::standing),
        Column.<Row>count("Open changes", 8, row -> row.job().openChanges().size()).inTotal(),
        Column.<Row>count("Cautions", 8, Row::cautions).inTotal(),
        Column.of(UNPRICED, Look.COUNT, 7, money::unpriced).inTotal());
  }

  private static Cell pourDate(Row row) {
    return Cell.ofDay(row.job().firstDate());
  }

  private static List<Row> rows(Estimate estimate) {
    Map<String, JobTotals> totals = new HashMap<>();
    estimate.bought().totals().forEach(one -> totals.put(one.job(), one));
    Map<String, Long> bought =
        estimate.bought().cautions().stream()
            .collect(Collectors.groupingBy(Bought.BuyCaution::job, Collectors.counting()));
    List<Row> rows = new ArrayList<>();
    for (TakeOff takeOff : estimate.takeOffs()) {
      String job = takeOff.job().code();
      long cautions = takeOff.cautions().size() + bought.getOrDefault(job, 0L);
      rows.add(new Row(takeOff, totals.getOrDefault(job, nothing(job)), cautions));
    }
    return rows;
  }

  private static JobTotals nothing(String job) {
    return new JobTotals(job, Money.ZERO, Money.ZERO, Money.ZERO, Money.ZERO, Money.ZERO, 0);
  }

  private static String currency(Estimate estimate) {
    return estimate.batch().prices().currency();
  }

  private static String says(Estimate estimate) {
    long leftOut =
        estimate.problems().stream()
            .filter(problem -> problem.refused() && !problem.job().isEmpty())
            .map(problem -> problem.job())
            .distinct()
            .count();
    String jobs = "What each job takes and costs, in " + currency(estimate) + ".";
    return leftOut == 0
        ? jobs
        : jobs + " Not in these totals: " + leftOut + " left out, see Problems.";
  }
}
