package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.book.out.Check.Figure;
import org.pourbook.buy.JobTotals;
import org.pourbook.buy.Line;
import org.pourbook.buy.Order;
import org.pourbook.measure.Money;

/** Checks of money: whichever sheet it is added up from, it is the same. */
final class MoneyChecks {

  private final SheetSpec<SummarySheet.Row> summary;
  private final MaterialsSheet materials;
  private final SheetSpec<OrdersSheet.Row> orders;
  private final SheetSpec<Order> totals;
  private final List<Check> checks = new ArrayList<>();

  MoneyChecks(ChecksSheet.Sheets sheets) {
    this.summary = sheets.summary();
    this.materials = sheets.materials();
    this.orders = sheets.orders();
    this.totals = sheets.totals();
  }

  private void add(String what, Figure found, Figure against, String whatThen) {
    checks.add(new Check("", what, found, against, whatThen));
  }

  /** Returns the checks of all jobs together. */
  List<Check> ofAll() {
    List<Line> lines = materials.spec().rows();
    Figure bought = total(materials.spec(), MaterialsSheet.AMOUNT, lines, MaterialsSheet::amount);
    List<Order> all = totals.rows();
    Figure goods = total(totals, OrderTotalsSheet.GOODS, all, Order::goods);
    Figure fees = total(totals, OrderTotalsSheet.FEES, all, Order::fees);
    Figure tax = total(totals, OrderTotalsSheet.TAX, all, Order::tax);
    add("Materials, Amount = Order totals, Goods", bought, goods, Check.TYPED_OVER);
    Figure ordered =
        total(
            orders,
            OrdersSheet.AMOUNT,
            orders.rows(),
            row -> row.line().amount().orElse(Money.ZERO));
    add(
        "Orders, Amount = Order totals, Goods and Fees",
        ordered,
        goods.plus(fees),
        Check.TYPED_OVER);
    Figure things = ofJobs(SummarySheet.MATERIALS, JobTotals::materials);
    Figure services = ofJobs(SummarySheet.SERVICES, JobTotals::services);
    add(
        "Summary, Materials and Services = Materials",
        things.plus(services),
        bought,
        Check.TYPED_OVER);
    Figure delivery = ofJobs(SummarySheet.FEES, JobTotals::deliveryAndFees);
    add("Summary, Delivery and fees = Order totals, Fees", delivery, fees, shared("fees"));
    add(
        "Summary, Tax = Order totals, Tax",
        ofJobs(SummarySheet.TAX, JobTotals::tax),
        tax,
        shared("tax"));
    add(
        "Summary, Total = Order totals, Total",
        ofJobs(SummarySheet.TOTAL, JobTotals::total),
        total(totals, OrderTotalsSheet.TOTAL, all, Order::total),
        Check.TYPED_OVER);
    return checks;
  }

  private static String shared(String what) {
    return "What shared orders have of " + what + " is shared out by the tool: run it again";
  }

  private static <R> Figure total(
      SheetSpec<?> spec, String heading, List<R> rows, Function<R, Money> of) {
    double sum = Money.sum(rows.stream().map(of).toList()).amount().doubleValue();
    return new Figure(rows.isEmpty() ? "" : spec.total(heading), sum);
  }

  private Figure ofJobs(String heading, Function<JobTotals, Money> of) {
    return total(summary, heading, summary.rows(), row -> of.apply(row.totals()));
  }

  /**
   * Returns the checks of one job.
   *
   * @param at its row on Summary
   */
  List<Check> of(SummarySheet.Row row, int at) {
    Optional<Span> lines = materials.rowsOfJob(row.code());
    if (lines.isEmpty()) {
      return List.of();
    }
    double sum = row.totals().materials().plus(row.totals().services()).amount().doubleValue();
    return List.of(
        new Check(
            row.code(),
            "Summary, Materials and Services = the job's Materials",
            new Figure(
                summary.cell(at, SummarySheet.MATERIALS)
                    + "+"
                    + summary.cell(at, SummarySheet.SERVICES),
                sum),
            new Figure(
                "SUM(" + materials.cells(lines.get(), MaterialsSheet.AMOUNT) + ")",
                amount(lines.get())),
            Check.TYPED_OVER));
  }

  private double amount(Span rows) {
    Money sum = Money.ZERO;
    for (int row = rows.first(); row <= rows.last(); row++) {
      sum = sum.plus(MaterialsSheet.amount(materials.lineAt(row)));
    }
    return sum.amount().doubleValue();
  }
}
