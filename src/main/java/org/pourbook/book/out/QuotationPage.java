package org.pourbook.book.out;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.buy.Order;
import org.pourbook.buy.Price;
import org.pourbook.buy.QuoteLine;
import org.pourbook.buy.Supplier;
import org.pourbook.desk.Quote;
import org.pourbook.measure.Money;

/** The quotation on paper: what is offered and what is not, what it comes to, who signs. */
final class QuotationPage implements Sheet {

  static final String NAME = "Quotation page";

  /** Beyond these a quotation is sent as its Quotation sheet. */
  private static final int MOST_LINES = 2_000;

  private static final List<Integer> WIDTHS = List.of(6, 12, 16, 13, 30, 10, 9, 11, 12);
  private static final int RIGHT = 5;
  private static final int LAST = 8;

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE MMM d, uuuu", Locale.US);

  private final Quote quote;
  private final QuotationSheet lines;
  private final TermsSheets terms;

  QuotationPage(Quote quote, QuotationSheet lines, TermsSheets terms) {
    this.quote = quote;
    this.lines = lines;
    this.terms = terms;
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
    for (int i = 0; i < WIDTHS.size(); i++) {
      sheet.setColumnWidth(i, WIDTHS.get(i) * SheetWriter.WIDTH_UNIT);
    }
    Pen pen = new Pen(rows);
    pen.next(24).write(0, Look.TITLE, Cell.of("Quotation"));
    address(pen);
    offered(pen);
    sums(pen);
    notOffered(pen);
    conditions(pen);
    signatures(pen);
    sheet.setDisplayGridlines(false);
    paper.set(sheet, false);
    paper.setArea(sheet, pen.row(), LAST, -1);
  }

  private void address(Pen pen) {
    Supplier from = quote.supplier();
    pen.next();
    pen.next().write(0, Look.LABEL, Cell.of("From")).write(RIGHT, Look.LABEL, Cell.of("Date"));
    words(pen, from.name(), day(quote.date()));
    words(pen, from.contact(), "");
    pen.write(RIGHT, Look.LABEL, Cell.of("Valid until"));
    words(pen, from.phone(), day(quote.validUntil()));
    words(pen, from.email(), "");
    pen.write(RIGHT, Look.LABEL, Cell.of("Request"));
    String jobs = String.join(", ", jobs());
    words(pen, "For " + jobs, quote.request().substring(0, 16));
    pen.next();
  }

  private List<String> jobs() {
    return quote.batch().jobs().stream().map(job -> job.code()).limit(12).toList();
  }

  private static String day(LocalDate day) {
    return DAY.format(day);
  }

  private static void words(Pen pen, String left, String right) {
    pen.next().write(0, Look.PLAIN, Cell.of(left));
    if (!right.isEmpty()) {
      pen.write(RIGHT, Look.STRONG, Cell.of(right));
    }
  }

  private void offered(Pen pen) {
    String[] headings = {"Line", "Job", "Material", "Size", "Offered"};
    pen.next(TextLines.height(1));
    for (int i = 0; i < headings.length; i++) {
      pen.write(i, Look.HEADING, Cell.of(headings[i]));
    }
    pen.write(5, Look.HEADING_NUMBER, Cell.of("Packs"));
    pen.write(6, Look.HEADING, Cell.of("Unit"));
    pen.write(7, Look.HEADING_NUMBER, Cell.of("Unit price"));
    pen.write(LAST, Look.HEADING_NUMBER, Cell.of("Amount"));
    List<QuoteLine> all = quote.quoted().lines();
    int line = 0;
    for (int i = 0; i < all.size() && line < MOST_LINES; i++) {
      Optional<Price> price = all.get(i).price();
      if (price.isPresent()) {
        line++;
        line(pen, line, all.get(i), price.get(), SheetSpec.FIRST_ROW + i);
      }
    }
    if (all.size() > MOST_LINES) {
      pen.next().write(0, Look.SAYS, Cell.of("All lines stand on sheet Quotation."));
    }
  }

  private void line(Pen pen, int number, QuoteLine line, Price price, int row) {
    String offered = offered(line, price);
    pen.next(TextLines.height(height(line, offered)));
    pen.write(0, Look.COUNT, Cell.of(number));
    pen.write(1, Look.TEXT, Cell.of(line.job()));
    pen.write(2, Look.TEXT, Cell.of(line.key().material()));
    pen.write(3, Look.TEXT, Cell.of(line.key().size()));
    pen.write(4, Look.TEXT, Cell.of(offered));
    live(pen, 5, Look.NUMBER, row, QuotationSheet.PACKS, line.packs().doubleValue());
    pen.write(6, Look.TEXT, Cell.of(price.orderUnit()));
    live(pen, 7, Look.PRICE, row, QuotationSheet.PRICE, price.price().doubleValue());
    live(pen, LAST, Look.MONEY, row, QuotationSheet.AMOUNT, line.amount().amount().doubleValue());
  }

  private void live(Pen pen, int column, Look look, int row, String heading, double figure) {
    pen.write(column, look, Cell.formula(lines.cell(row, heading), figure));
  }

  private static String offered(QuoteLine line, Price price) {
    String item = (price.item() + " " + price.description()).strip();
    return line.standing() == QuoteLine.Standing.INSTEAD
        ? (price.item() + " " + line.says()).strip()
        : item;
  }

  private static int height(QuoteLine line, String offered) {
    int names =
        Math.max(
            TextLines.of(line.key().material(), WIDTHS.get(2)),
            TextLines.of(line.key().size(), WIDTHS.get(3)));
    return Math.max(
        Math.max(names, TextLines.of(line.job(), WIDTHS.get(1))),
        TextLines.of(offered, WIDTHS.get(4)));
  }

  private void sums(Pen pen) {
    sum(pen, "Goods", TermsSheets.GOODS, terms.sum(Order::goods));
    int count = quote.quoted().deliveries().size();
    sum(
        pen,
        "Delivery and fees, " + count + (count == 1 ? " delivery" : " deliveries"),
        TermsSheets.DELIVERY,
        terms.sum(Order::fees));
    sum(pen, "Tax", TermsSheets.TAX, terms.sum(Order::tax));
    sum(
        pen,
        "Total " + quote.batch().prices().currency(),
        TermsSheets.TOTAL,
        terms.sum(Order::total));
    pen.next();
  }

  private void sum(Pen pen, String label, String heading, Money figure) {
    pen.next();
    pen.write(RIGHT, Look.TOTAL_TEXT, Cell.of(label));
    pen.write(
        LAST, Look.TOTAL_NUMBER, Cell.formula(terms.term(heading), figure.amount().doubleValue()));
  }

  private void notOffered(Pen pen) {
    List<QuoteLine> none =
        quote.quoted().lines().stream().filter(QuoteLine::isMissing).limit(MOST_LINES).toList();
    if (none.isEmpty()) {
      pen.next().write(0, Look.PLAIN, Cell.of("Every line asked for is offered."));
      return;
    }
    pen.next(TextLines.height(1));
    String[] headings = {"", "Job", "Material", "Size", "Not offered"};
    for (int i = 0; i <= LAST; i++) {
      pen.write(i, Look.HEADING, i < headings.length ? Cell.of(headings[i]) : Cell.BLANK);
    }
    for (QuoteLine line : none) {
      String why = line.standing().label() + (line.says().isEmpty() ? "" : ": " + line.says());
      pen.next(TextLines.height(height(line, why)));
      pen.blank(0, LAST, Look.TEXT);
      pen.write(1, Look.TEXT, Cell.of(line.job()));
      pen.write(2, Look.TEXT, Cell.of(line.key().material()));
      pen.write(3, Look.TEXT, Cell.of(line.key().size()));
      pen.write(4, Look.TEXT, Cell.of(why));
    }
  }

  private void conditions(Pen pen) {
    pen.next();
    List<String> says = new ArrayList<>();
    Supplier from = quote.supplier();
    says.add("Prices hold until " + day(quote.validUntil()) + ".");
    from.deliveryFee()
        .ifPresent(
            fee ->
                says.add(
                    "Delivery "
                        + fee
                        + " each time"
                        + from.freeFrom().map(limit -> ", free from " + limit).orElse("")
                        + "."));
    from.minimumOrder().ifPresent(least -> says.add("Minimum order " + least + "."));
    for (int i = 0; i < Math.min(MOST_LINES, quote.quoted().deliveries().size()); i++) {
      Order order = quote.quoted().deliveries().get(i);
      says.add(
          "Delivery "
              + (i + 1)
              + ": "
              + (order.site().isEmpty() ? order.deliverTo() : order.site())
              + order.neededBy().map(day -> ", needed by " + day(day)).orElse("")
              + ", for "
              + String.join(", ", order.jobs())
              + ".");
      order.notes().forEach(note -> says.add("    " + note));
    }
    says.forEach(line -> pen.next().write(0, Look.PLAIN, Cell.of(line)));
  }

  private static void signatures(Pen pen) {
    sign(pen, "For the supplier", "Date");
    sign(pen, "Accepted by the builder", "Date");
  }

  private static void sign(Pen pen, String left, String right) {
    pen.next(30).blank(0, RIGHT - 2, Look.BLANK_LINE).blank(RIGHT, LAST, Look.BLANK_LINE);
    pen.next().write(0, Look.LABEL, Cell.of(left)).write(RIGHT, Look.LABEL, Cell.of(right));
  }
}
