package org.pourbook.book.out;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.pourbook.buy.Order;
import org.pourbook.desk.Estimate;
import org.pourbook.measure.Money;

/** One row an order: goods, fees, tax and total. */
final class OrderTotalsSheet {

  static final String NAME = "Order totals";
  static final String GOODS = "Goods";
  static final String FEES = "Fees";
  static final String TAXABLE = "Taxable";
  static final String TAX_PERCENT = "Tax rate %";
  static final String TAX = "Tax";
  static final String TOTAL = "Total";

  private final SheetSpec<Order> spec;
  private final OrdersSheet orders;
  private final Map<String, List<Integer>> rows = new HashMap<>();

  OrderTotalsSheet(Estimate estimate, OrdersSheet orders) {
    this.orders = orders;
    this.spec =
        SheetSpec.landscape(
                NAME,
                "What each order comes to, and by when it must be placed.",
                columns(),
                estimate.bought().orders())
            .withPlaces();
    for (int i = 0; i < spec.rows().size(); i++) {
      int row = SheetSpec.FIRST_ROW + i;
      spec.rows()
          .get(i)
          .jobs()
          .forEach(job -> rows.computeIfAbsent(job, k -> new ArrayList<>()).add(row));
    }
  }

  private List<Column<Order>> columns() {
    List<Column<Order>> columns = new ArrayList<>();
    columns.add(Column.text("Order", 10, Order::number));
    columns.add(Column.text("Supplier", 22, OrdersSheet::supplier));
    columns.add(Column.text("Deliver to", 12, Order::deliverTo));
    columns.add(Column.text("Jobs", 20, order -> String.join(", ", order.jobs())));
    columns.add(Column.cell("Order by", Look.DATE, 13, order -> Cell.ofDay(orderBy(order))));
    columns.add(Column.cell("Needed by", Look.DATE, 13, order -> Cell.ofDay(order.neededBy())));
    columns.add(sum(GOODS, OrdersSheet.KIND, OrdersSheet.GOODS, Order::goods));
    columns.add(sum(FEES, OrdersSheet.KIND, OrdersSheet.FEE, Order::fees));
    columns.add(sum(TAXABLE, OrdersSheet.TAXABLE, "yes", OrderTotalsSheet::taxable));
    columns.add(
        Column.cell(TAX_PERCENT, Look.EDIT_PERCENT, 7, order -> Cell.ofPrice(order.taxPercent())));
    columns.add(Column.of(TAX, Look.MONEY, 11, this::tax).inTotal());
    columns.add(Column.of(TOTAL, Look.MONEY, 12, OrderTotalsSheet::total).inTotal());
    columns.add(Column.text("Standing", 11, order -> order.complete() ? "complete" : "incomplete"));
    return columns;
  }

  /** Returns the earliest day on which a line must be ordered. */
  private static Optional<LocalDate> orderBy(Order order) {
    return order.lines().stream()
        .map(Order.OrderLine::orderBy)
        .flatMap(Optional::stream)
        .min(Comparator.naturalOrder());
  }

  private static Money taxable(Order order) {
    return sum(order, Order.OrderLine::taxable);
  }

  private static Money sum(Order order, Predicate<Order.OrderLine> which) {
    return Money.sum(
        order.lines().stream()
            .filter(which)
            .map(line -> line.amount().orElse(Money.ZERO))
            .toList());
  }

  private Column<Order> sum(String heading, String by, String word, Function<Order, Money> figure) {
    return Column.<Order>of(heading, Look.MONEY, 12, at -> sum(at, by, word, figure)).inTotal();
  }

  private Cell sum(At<Order> at, String by, String word, Function<Order, Money> figure) {
    Order order = at.record();
    Optional<Span> rows = orders.rowsOf(order.number());
    if (rows.isEmpty()) {
      return Cell.of(figure.apply(order));
    }
    String formula =
        "SUMIF("
            + orders.cells(rows.get(), by)
            + ",\""
            + word
            + "\","
            + orders.cells(rows.get(), OrdersSheet.AMOUNT)
            + ")";
    Money byFormula =
        by.equals(OrdersSheet.TAXABLE)
            ? taxable(order)
            : sum(order, line -> line.fee() == word.equals(OrdersSheet.FEE));
    return Cell.live(
        formula, byFormula.amount().doubleValue(), figure.apply(order).amount().doubleValue());
  }

  private Cell tax(At<Order> at) {
    Order order = at.record();
    double figure = order.tax().amount().doubleValue();
    double byFormula =
        order
            .taxPercent()
            .map(percent -> taxable(order).percent(percent).amount().doubleValue())
            .orElse(Double.NaN);
    return Cell.live(
        "ROUND(" + at.cell(TAXABLE) + "*" + at.cell(TAX_PERCENT) + "/100,2)", byFormula, figure);
  }

  private static Cell total(At<Order> at) {
    Order order = at.record();
    return Cell.live(
        at.cell(GOODS) + "+" + at.cell(FEES) + "+" + at.cell(TAX),
        order.goods().plus(order.fees()).plus(order.tax()).amount().doubleValue(),
        order.total().amount().doubleValue());
  }

  SheetSpec<Order> spec() {
    return spec;
  }

  String cell(int row, String heading) {
    return spec.cell(row, heading);
  }

  /** Returns the rows of the orders that hold a job. */
  List<Integer> rowsOf(String job) {
    return rows.getOrDefault(job, List.of());
  }

  Order orderAt(int row) {
    return spec.rows().get(row - SheetSpec.FIRST_ROW);
  }
}
