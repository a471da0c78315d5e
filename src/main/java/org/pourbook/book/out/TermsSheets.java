package org.pourbook.book.out;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.pourbook.buy.Order;
import org.pourbook.buy.QuoteLine;
import org.pourbook.desk.Quote;
import org.pourbook.measure.Money;

/** What a quotation comes to: its deliveries with their fees and tax, and its terms. */
final class TermsSheets {

  static final String DELIVERIES = "Deliveries";
  static final String TERMS = "Terms";
  static final String GOODS = "Goods";
  static final String FEE = "Delivery fee";
  static final String FREE_FROM = "Free from";
  static final String MINIMUM = "Minimum order";
  static final String DELIVERY = "Delivery";
  static final String TAX_PERCENT = "Tax %";
  static final String TAX = "Tax";
  static final String TOTAL = "Total";
  private static final String FEE_DUE = "Fee due";
  private static final String TRUCK_FEES = "Truck fees";
  private static final String UNDER_MINIMUM = "Under minimum";
  private static final String TAXABLE = "Taxable goods";

  private final Quote quote;
  private final QuotationSheet lines;
  private final SheetSpec<Order> deliveries;
  private final SheetSpec<Quote> terms;

  TermsSheets(Quote quote, QuotationSheet lines) {
    this.quote = quote;
    this.lines = lines;
    this.terms =
        SheetSpec.landscape(
            TERMS,
            "What the quotation comes to, and until when it holds.",
            terms(),
            List.of(quote));
    this.deliveries =
        SheetSpec.landscape(
            DELIVERIES,
            "What comes to one place on one day; a delivery fee is due for each.",
            deliveries(),
            quote.quoted().deliveries());
  }

  private List<Column<Order>> deliveries() {
    List<Column<Order>> columns = new ArrayList<>();
    columns.add(Column.count("Delivery no.", 8, this::number));
    columns.add(Column.text("Deliver to", 12, Order::deliverTo));
    columns.add(Column.cell("Needed by", Look.DATE, 13, order -> Cell.ofDay(order.neededBy())));
    columns.add(Column.text("Jobs", 22, order -> String.join(", ", order.jobs())));
    columns.add(
        Column.<Order>of(
                GOODS, Look.MONEY, 11, at -> sum(at, QuotationSheet.AMOUNT, at.record().goods()))
            .inTotal());
    columns.add(Column.<Order>of(FEE_DUE, Look.MONEY, 9, this::fee).inTotal());
    columns.add(
        Column.<Order>of(
                TRUCK_FEES,
                Look.MONEY,
                9,
                at -> sum(at, QuotationSheet.TRUCK_FEES, truckFees(at.record())))
            .inTotal());
    columns.add(Column.<Order>of(UNDER_MINIMUM, Look.MONEY, 10, this::underMinimum).inTotal());
    columns.add(Column.<Order>of(TAXABLE, Look.MONEY, 11, this::taxable).inTotal());
    columns.add(
        Column.cell(TAX_PERCENT, Look.EDIT_PERCENT, 7, order -> Cell.ofPrice(order.taxPercent())));
    columns.add(Column.<Order>of(TAX, Look.MONEY, 10, TermsSheets::tax).inTotal());
    columns.add(Column.<Order>of(TOTAL, Look.MONEY, 12, TermsSheets::total).inTotal());
    return columns;
  }

  private double number(Order order) {
    return quote.quoted().deliveries().indexOf(order) + 1;
  }

  private Cell sum(At<Order> at, String heading, Money figure) {
    return Cell.formula(
        "SUMIF("
            + lines.column(QuotationSheet.DELIVERY)
            + ","
            + at.cell("Delivery no.")
            + ","
            + lines.column(heading)
            + ")",
        figure.amount().doubleValue());
  }

  /** Returns the delivery fee, which nothing under the free limit escapes but services alone. */
  private Cell fee(At<Order> at) {
    Money fee = feeOf(at.record(), "delivery");
    int number = (int) number(at.record());
    boolean brought =
        quote.quoted().lines().stream()
            .anyMatch(line -> line.delivery() == number && line.brought());
    if (!brought) {
      return Cell.of(fee);
    }
    String free = term(FREE_FROM);
    return Cell.formula(
        "IF(AND(" + free + "<>\"\"," + at.cell(GOODS) + ">=" + free + "),0," + term(FEE) + ")",
        fee.amount().doubleValue());
  }

  private Cell underMinimum(At<Order> at) {
    return Cell.formula(
        "MAX(0," + term(MINIMUM) + "-" + at.cell(GOODS) + ")",
        feeOf(at.record(), "minimum order").amount().doubleValue());
  }

  private Cell taxable(At<Order> at) {
    String formula =
        "SUMIFS("
            + lines.column(QuotationSheet.AMOUNT)
            + ","
            + lines.column(QuotationSheet.DELIVERY)
            + ","
            + at.cell("Delivery no.")
            + ","
            + lines.column(QuotationSheet.TAXABLE)
            + ",\"yes\")";
    return Cell.formula(formula, taxable(at.record()).amount().doubleValue());
  }

  private static Cell tax(At<Order> at) {
    Order order = at.record();
    double byFormula =
        order
            .taxPercent()
            .map(percent -> taxable(order).percent(percent).amount().doubleValue())
            .orElse(Double.NaN);
    return Cell.live(
        "ROUND(" + at.cell(TAXABLE) + "*" + at.cell(TAX_PERCENT) + "/100,2)",
        byFormula,
        order.tax().amount().doubleValue());
  }

  private static Cell total(At<Order> at) {
    return Cell.formula(
        at.cell(GOODS)
            + "+"
            + at.cell(FEE_DUE)
            + "+"
            + at.cell(TRUCK_FEES)
            + "+"
            + at.cell(UNDER_MINIMUM)
            + "+"
            + at.cell(TAX),
        at.record().total().amount().doubleValue());
  }

  private static Money taxable(Order order) {
    return sum(order, Order.OrderLine::taxable);
  }

  private static Money truckFees(Order order) {
    return feeOf(order, "short load").plus(feeOf(order, "fee per load"));
  }

  private static Money feeOf(Order order, String name) {
    return sum(order, line -> line.fee() && line.key().material().equals(name));
  }

  private static Money sum(Order order, Predicate<Order.OrderLine> which) {
    return Money.sum(
        order.lines().stream()
            .filter(which)
            .map(line -> line.amount().orElse(Money.ZERO))
            .toList());
  }

  private List<Column<Quote>> terms() {
    List<Column<Quote>> columns = new ArrayList<>();
    columns.add(Column.text("Supplier", 22, known -> known.supplier().name()));
    columns.add(Column.cell("Date", Look.DATE, 13, known -> new Cell.Day(known.date())));
    columns.add(
        Column.cell("Valid until", Look.DATE, 13, known -> new Cell.Day(known.validUntil())));
    columns.add(Column.of(GOODS, Look.MONEY, 11, at -> total(Order::goods, List.of(GOODS))));
    columns.add(money(FEE, known -> known.supplier().deliveryFee()));
    columns.add(money(FREE_FROM, known -> known.supplier().freeFrom()));
    columns.add(money(MINIMUM, known -> known.supplier().minimumOrder()));
    columns.add(
        Column.count("Number of deliveries", 10, known -> known.quoted().deliveries().size()));
    columns.add(
        Column.of(
            DELIVERY,
            Look.MONEY,
            11,
            at -> total(Order::fees, List.of(FEE_DUE, TRUCK_FEES, UNDER_MINIMUM))));
    columns.add(Column.cell(TAX_PERCENT, Look.PERCENT, 7, known -> Cell.ofPrice(rate(known))));
    columns.add(Column.of(TAX, Look.MONEY, 10, at -> total(Order::tax, List.of(TAX))));
    columns.add(Column.of(TOTAL, Look.MONEY, 12, this::inAll));
    columns.add(Column.text("Currency", 8, known -> known.batch().prices().currency()));
    columns.add(Column.count("Lines asked", 7, known -> known.quoted().asked().size()));
    columns.add(Column.count("Lines not offered", 8, TermsSheets::missing));
    columns.add(Column.onScreen(Column.text("Request", 36, Quote::request)));
    return columns;
  }

  private static Column<Quote> money(String heading, Function<Quote, Optional<Money>> figure) {
    return Column.cell(
        heading, Look.MONEY, 10, known -> figure.apply(known).map(Cell::of).orElse(Cell.BLANK));
  }

  /** Returns the sum of columns of the deliveries. */
  private Cell total(Function<Order, Money> figure, List<String> headings) {
    double sum = sum(figure).amount().doubleValue();
    List<Order> all = quote.quoted().deliveries();
    if (all.isEmpty()) {
      return Cell.of(sum);
    }
    Span rows = new Span(SheetSpec.FIRST_ROW, SheetSpec.HEADING_ROW + all.size());
    List<String> cells =
        headings.stream().map(heading -> rows.in(DELIVERIES, letterOfDeliveries(heading))).toList();
    return Cell.formula("SUM(" + String.join(",", cells) + ")", sum);
  }

  private String letterOfDeliveries(String heading) {
    return deliveries.letter(heading);
  }

  Money sum(Function<Order, Money> figure) {
    return Money.sum(quote.quoted().deliveries().stream().map(figure).toList());
  }

  private Cell inAll(At<Quote> at) {
    return Cell.formula(
        at.cell(GOODS) + "+" + at.cell(DELIVERY) + "+" + at.cell(TAX),
        sum(Order::total).amount().doubleValue());
  }

  /** Returns the one rate of tax of all that is offered; empty where rates differ. */
  static Optional<BigDecimal> rate(Quote quote) {
    List<BigDecimal> rates =
        offered(quote).map(line -> line.taxPercent().stripTrailingZeros()).distinct().toList();
    return rates.isEmpty()
        ? Optional.of(quote.supplier().taxPercent())
        : rates.size() == 1 ? Optional.of(rates.get(0)) : Optional.empty();
  }

  private static Stream<QuoteLine> offered(Quote quote) {
    return quote.quoted().lines().stream().filter(line -> line.price().isPresent());
  }

  /** Returns how many lines asked for are not offered. */
  static long missing(Quote quote) {
    return quote.quoted().missing();
  }

  /** Returns a cell of the terms, for formulas. */
  String term(String heading) {
    return Span.cell(TERMS, terms.letter(heading), SheetSpec.FIRST_ROW);
  }

  SheetSpec<Order> deliveriesSpec() {
    return deliveries;
  }

  SheetSpec<Quote> termsSpec() {
    return terms;
  }
}
