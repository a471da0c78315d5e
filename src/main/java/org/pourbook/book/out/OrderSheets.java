package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.pourbook.book.out.RecordSheets.Fact;
import org.pourbook.buy.Load;
import org.pourbook.desk.Estimate;
import org.pourbook.plan.JobDrawing;

/** The sheets of an order workbook, in the order of the user's day. */
final class OrderSheets {

  private OrderSheets() {}

  static List<Sheet> of(Estimate estimate) {
    return of(estimate, new RulesSheet(RuleClasses.all(), Documents.read()));
  }

  static List<Sheet> of(Estimate estimate, RulesSheet rules) {
    return of(estimate, rules, SheetSpec.MOST_RECORDS);
  }

  /**
   * Returns the sheets, longer tables on several.
   *
   * @param most records of a sheet
   */
  static List<Sheet> of(Estimate estimate, RulesSheet rules, int most) {
    BatchUnits units = BatchUnits.of(estimate.batch().jobs());
    GivenSheets given = new GivenSheets(estimate, most);
    SheetSpec<Fact> basis = RecordSheets.basis(estimate, rules::link).together(Fact::job, most);
    TakeoffSheet takeoff = new TakeoffSheet(estimate, rules, new BasisLinks(basis), given, most);
    MaterialsSheet materials = new MaterialsSheet(estimate, units, takeoff, most);
    OrdersSheet orders = new OrdersSheet(estimate, materials, most);
    OrderTotalsSheet totals = new OrderTotalsSheet(estimate, orders);
    List<Sheet> sheets = new ArrayList<>();
    SheetSpec<SummarySheet.Row> summary =
        SummarySheet.spec(estimate, units, takeoff, materials, totals).inSheetsOf(most);
    SheetSpec<Load> loads = PourSheets.loads(estimate, units).together(Load::job, most);
    SheetSpec<CutSheets.Row> cuts =
        CutSheets.cutList(estimate.bought().cutSheets(), units).inSheetsOf(most);
    SheetSpec<Check> checks =
        ChecksSheet.spec(
            estimate,
            new ChecksSheet.Sheets(
                units,
                summary,
                takeoff.spec(),
                materials,
                orders.spec(),
                totals.spec(),
                loads,
                cuts,
                given));
    sheets.add(summary.withLight(ChecksSheet.light(checks)));
    sheets.add(RecordSheets.problems(estimate));
    sheets.add(PourSheets.cautions(estimate));
    sheets.add(checks);
    sheets.add(materials.spec());
    sheets.add(orders.spec());
    sheets.add(totals.spec());
    sheets.add(new OrderPages(orders, totals));
    sheets.add(PourSheets.readyList(estimate));
    sheets.add(loads);
    sheets.add(PourSheets.pourPlan(estimate, units));
    if (OrderWorkbook.holdsPlans(estimate)) {
      sheets.add(new CuttingSheet(estimate.bought().cutSheets()));
      sheets.add(new BoltLayoutSheet(estimate));
    }
    sheets.add(cuts);
    sheets.add(RunsSheet.spec(estimate.bought().cutSheets(), units));
    sheets.add(CutSheets.offcuts(estimate.bought().offcuts(), units));
    sheets.add(SteelSheets.barList(estimate, units));
    sheets.add(SteelSheets.bolts(estimate, units));
    sheets.add(SteelSheets.joints(estimate, units));
    if (OrderWorkbook.holdsPlans(estimate)) {
      sheets.add(new PlansSheet(estimate.takeOffs().stream().map(JobDrawing::of).toList()));
    }
    sheets.add(takeoff.spec());
    sheets.add(CutSheets.cutProof(estimate.bought().cutSheets()));
    sheets.add(rules.spec());
    sheets.add(basis);
    sheets.addAll(given.sheets());
    Set<String> names = sheets.stream().map(Sheet::name).collect(Collectors.toSet());
    sheets.add(0, Welcome.order(names, estimate.takeOffs().size()));
    sheets.replaceAll(sheet -> sheet instanceof SheetSpec<?> spec ? spec.inSheetsOf(most) : sheet);
    return sheets;
  }
}
