package org.pourbook.book.out;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.pourbook.buy.JobTotals;
import org.pourbook.buy.Line;
import org.pourbook.buy.Order;
import org.pourbook.measure.Money;

/** The Summary's money, from Materials and Order totals. */
final class SummaryMoney {

  /** More orders than this make no short formula. */
  private static final int MOST_ORDERS = 20;

  private final MaterialsSheet materials;
  private final OrderTotalsSheet orders;

  SummaryMoney(MaterialsSheet materials, OrderTotalsSheet orders) {
    this.materials = materials;
    this.orders = orders;
  }

  Cell materials(At<SummarySheet.Row> at) {
    return kind(at, false, at.record().totals().materials());
  }

  Cell services(At<SummarySheet.Row> at) {
    return kind(at, true, at.record().totals().services());
  }

  private Cell kind(At<SummarySheet.Row> at, boolean service, Money figure) {
    Optional<Span> rows = materials.rowsOfJob(at.record().code());
    if (rows.isEmpty()) {
      return Cell.of(figure);
    }
    String formula =
        "SUMIF("
            + materials.cells(rows.get(), MaterialsSheet.KIND)
            + ",\""
            + MaterialsSheet.kind(service)
            + "\","
            + materials.cells(rows.get(), MaterialsSheet.AMOUNT)
            + ")";
    Money sum = Money.ZERO;
    for (int row = rows.get().first(); row <= rows.get().last(); row++) {
      Line line = materials.lineAt(row);
      sum = line.service() == service ? sum.plus(MaterialsSheet.amount(line)) : sum;
    }
    return Cell.live(formula, sum.amount().doubleValue(), figure.amount().doubleValue());
  }

  Cell fees(At<SummarySheet.Row> at) {
    return share(at, OrderTotalsSheet.FEES, Order::fees, JobTotals::deliveryAndFees);
  }

  Cell tax(At<SummarySheet.Row> at) {
    return share(at, OrderTotalsSheet.TAX, Order::tax, JobTotals::tax);
  }

  /** A job that shares no order pays its orders' fees and taxes; else its share is a value. */
  private Cell share(
      At<SummarySheet.Row> at,
      String heading,
      Function<Order, Money> of,
      Function<JobTotals, Money> figureOf) {
    Money figure = figureOf.apply(at.record().totals());
    List<Integer> rows = orders.rowsOf(at.record().code());
    boolean alone = rows.stream().allMatch(row -> orders.orderAt(row).jobs().size() == 1);
    if (rows.isEmpty() || rows.size() > MOST_ORDERS || !alone) {
      return Cell.of(figure);
    }
    Money sum = Money.sum(rows.stream().map(row -> of.apply(orders.orderAt(row))).toList());
    String formula =
        rows.stream().map(row -> orders.cell(row, heading)).collect(Collectors.joining("+"));
    return Cell.live(formula, sum.amount().doubleValue(), figure.amount().doubleValue());
  }

  Cell total(At<SummarySheet.Row> at) {
    return Cell.formula(
        at.cell(SummarySheet.MATERIALS)
            + "+"
            + at.cell(SummarySheet.SERVICES)
            + "+"
            + at.cell(SummarySheet.FEES)
            + "+"
            + at.cell(SummarySheet.TAX),
        at.record().totals().total().amount().doubleValue());
  }

  /** Empty prices among the job's materials: a price that the office fills in counts. */
  Cell unpriced(At<SummarySheet.Row> at) {
    int figure = at.record().totals().unpriced();
    return materials
        .rowsOfJob(at.record().code())
        .map(
            rows ->
                Cell.live(
                    "COUNTBLANK(" + materials.cells(rows, MaterialsSheet.PRICE) + ")",
                    countUnpriced(rows),
                    figure))
        .orElse(Cell.of(figure));
  }

  private double countUnpriced(Span rows) {
    double count = 0;
    for (int row = rows.first(); row <= rows.last(); row++) {
      count += materials.lineAt(row).price().isEmpty() ? 1 : 0;
    }
    return count;
  }

  Cell standing(At<SummarySheet.Row> at) {
    return Cell.formula(
        "IF(" + at.cell(SummarySheet.UNPRICED) + ">0,\"incomplete\",\"complete\")",
        at.record().totals().unpriced() > 0 ? "incomplete" : "complete");
  }
}
