package org.pourbook.book.out;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.pourbook.buy.Order;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;

/** One printed order: to whom, where to, the lines, what it comes to, who signs. */
final class OrderPage {

  private static final int LEFT = 0;
  private static final int RIGHT = 5;
  private static final int LABELS = 7;
  private static final int LAST = 8;

  /** The day in words, the same on every machine. */
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE MMM d, uuuu", Locale.US);

  private final Pen pen;
  private final OrdersSheet orders;
  private final OrderTotalsSheet totals;
  private final Order order;
  private final int totalsRow;

  OrderPage(Pen pen, OrdersSheet orders, OrderTotalsSheet totals, Order order, int totalsRow) {
    this.pen = pen;
    this.orders = orders;
    this.totals = totals;
    this.order = order;
    this.totalsRow = totalsRow;
  }

  void write() {
    pen.next(24).write(LEFT, Look.TITLE, Cell.of("Order " + order.number()));
    address();
    headings();
    orders.rowsOf(order.number()).ifPresent(this::lines);
    sums();
    notes();
    signatures();
  }

  private void address() {
    pen.next();
    label("To", "Deliver to");
    Optional<Supplier> to = order.supplier();
    String site = order.site().isEmpty() ? order.deliverTo() : order.site();
    words(to.map(Supplier::name).orElse("no price: ask for a quotation"), site);
    words(to.map(Supplier::contact).orElse(""), "Jobs: " + String.join(", ", order.jobs()));
    words(to.map(Supplier::phone).orElse(""), "");
    words(to.map(Supplier::email).orElse(""), "");
    pen.write(RIGHT, Look.STRONG, Cell.of(order.neededBy().map(OrderPage::needed).orElse("")));
    pen.next();
  }

  private static String needed(LocalDate day) {
    return "Needed by " + DAY.format(day);
  }

  private void label(String left, String right) {
    pen.next().write(LEFT, Look.LABEL, Cell.of(left)).write(RIGHT, Look.LABEL, Cell.of(right));
  }

  private void words(String left, String right) {
    pen.next().write(LEFT, Look.PLAIN, Cell.of(left));
    if (!right.isEmpty()) {
      pen.write(RIGHT, Look.PLAIN, Cell.of(right));
    }
  }

  private void headings() {
    String[] headings = {"Line", "Item", "Material", "Size", "Description"};
    pen.next(TextLines.height(1));
    for (int i = 0; i < headings.length; i++) {
      pen.write(i, Look.HEADING, Cell.of(headings[i]));
    }
    pen.write(5, Look.HEADING_NUMBER, Cell.of("Packs"));
    pen.write(6, Look.HEADING, Cell.of("Unit"));
    pen.write(7, Look.HEADING_NUMBER, Cell.of("Unit price"));
    pen.write(LAST, Look.HEADING_NUMBER, Cell.of("Amount"));
  }

  private void lines(Span rows) {
    for (int i = 0; i < rows.size(); i++) {
      line(order.lines().get(i), rows.first() + i);
    }
  }

  private void line(Order.OrderLine line, int row) {
    pen.next(TextLines.height(lines(line)));
    pen.write(0, Look.COUNT, Cell.of(line.line()));
    pen.write(1, Look.TEXT, Cell.of(line.item()));
    pen.write(2, Look.TEXT, Cell.of(line.key().material()));
    pen.write(3, Look.TEXT, Cell.of(line.key().size()));
    pen.write(4, Look.TEXT, Cell.of(line.description()));
    pen.write(
        5,
        Look.NUMBER,
        Cell.formula(orders.cell(row, OrdersSheet.PACKS), line.packs().doubleValue()));
    pen.write(6, Look.TEXT, Cell.of(line.orderUnit()));
    String price = orders.cell(row, OrdersSheet.PRICE);
    pen.write(7, Look.PRICE, ifPriced(price, "", price, line.unitPrice().map(Number::doubleValue)));
    pen.write(
        LAST,
        Look.MONEY,
        ifPriced(
            price,
            MaterialsSheet.NO_PRICE,
            orders.cell(row, OrdersSheet.AMOUNT),
            line.amount().map(money -> money.amount().doubleValue())));
  }

  private static int lines(Order.OrderLine line) {
    int item = TextLines.of(line.item(), OrderPages.WIDTHS.get(1));
    int material = TextLines.of(line.key().material(), OrderPages.WIDTHS.get(2));
    int size = TextLines.of(line.key().size(), OrderPages.WIDTHS.get(3));
    int description = TextLines.of(line.description(), OrderPages.WIDTHS.get(4));
    return Math.max(Math.max(item, material), Math.max(size, description));
  }

  private static Cell ifPriced(String price, String words, String cell, Optional<Double> figure) {
    String formula = "IF(" + price + "=\"\",\"" + words + "\"," + cell + ")";
    return figure
        .map(number -> Cell.formula(formula, number))
        .orElseGet(() -> Cell.formula(formula, words));
  }

  private void sums() {
    sum("Subtotal", OrderTotalsSheet.GOODS, order.goods());
    sum("Fees", OrderTotalsSheet.FEES, order.fees());
    sum("Tax", OrderTotalsSheet.TAX, order.tax());
    sum(order.complete() ? "Total" : "Total, incomplete", OrderTotalsSheet.TOTAL, order.total());
  }

  private void sum(String label, String heading, Money figure) {
    pen.next();
    pen.write(LABELS - 1, Look.TOTAL_TEXT, Cell.of(label));
    pen.write(
        LAST,
        Look.TOTAL_NUMBER,
        Cell.formula(totals.cell(totalsRow, heading), figure.amount().doubleValue()));
  }

  private void notes() {
    pen.next();
    for (String note : order.notes()) {
      pen.next().write(LEFT, Look.PLAIN, Cell.of(note));
    }
  }

  private void signatures() {
    sign("Ordered by", "Date");
    sign("Received by", "Date, ticket number");
    sign("Missing or damaged", "");
    pen.next();
  }

  private void sign(String left, String right) {
    pen.next(26).blank(LEFT, RIGHT - 2, Look.BLANK_LINE);
    if (!right.isEmpty()) {
      pen.blank(RIGHT, LAST, Look.BLANK_LINE);
    } else {
      pen.blank(RIGHT - 1, LAST, Look.BLANK_LINE);
    }
    pen.next().write(LEFT, Look.LABEL, Cell.of(left)).write(RIGHT, Look.LABEL, Cell.of(right));
  }
}
