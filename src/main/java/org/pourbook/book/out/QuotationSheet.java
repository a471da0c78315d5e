package org.pourbook.book.out;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.buy.Price;
import org.pourbook.buy.QuoteLine;
import org.pourbook.desk.Quote;
import org.pourbook.measure.Money;

/** What a supplier offers, line by line; fees stand in Terms. */
final class QuotationSheet {

  static final String NAME = "Quotation";
  static final String PACKS = "Packs";
  static final String PRICE = "Unit price";
  static final String AMOUNT = "Amount";
  static final String TAXABLE = "Taxable";
  static final String DELIVERY = "Delivery no.";
  static final String TRUCK_FEES = "Truck fees";

  private final SheetSpec<QuoteLine> spec;

  QuotationSheet(Quote quote) {
    List<Column<QuoteLine>> columns = new ArrayList<>(asked());
    columns.addAll(offered());
    columns.addAll(where());
    this.spec =
        SheetSpec.landscape(
            NAME,
            "Every line asked for, and what is offered; goods and services only, fees stand in"
                + " Terms.",
            columns,
            quote.quoted().lines());
  }

  private static List<Column<QuoteLine>> asked() {
    return List.of(
        Column.text("Job", 12, QuoteLine::job),
        Column.text("Material", 16, line -> line.key().material()),
        Column.text("Size", 12, line -> line.key().size()),
        Column.cell("Asked", Look.NUMBER, 9, line -> Cell.of(line.asked())),
        Column.text("Unit", 6, QuoteLine::unit));
  }

  private static List<Column<QuoteLine>> offered() {
    return List.of(
        Column.text("Standing", 11, line -> line.standing().label()),
        Column.text("Item", 12, line -> of(line, Price::item)),
        Column.cell(PACKS, Look.NUMBER, 8, line -> ifOffered(line, line.packs())),
        Column.text("Order unit", 7, line -> of(line, Price::orderUnit)),
        Column.cell(
            PRICE, Look.EDIT_PRICE, 10, line -> Cell.ofPrice(line.price().map(Price::price))),
        Column.<QuoteLine>of(AMOUNT, Look.MONEY, 11, QuotationSheet::amount).inTotal(),
        Column.text("Offered", 26, line -> isInstead(line) ? line.says() : ""),
        Column.text("Note", 18, line -> isInstead(line) ? "" : line.says()));
  }

  private static List<Column<QuoteLine>> where() {
    return List.of(
        Column.text("Deliver to", 13, QuoteLine::deliverTo),
        Column.cell("Needed by", Look.DATE, 13, line -> Cell.ofDay(line.neededBy())),
        Column.onScreen(
            Column.cell(
                "Lead days",
                Look.COUNT,
                6,
                line -> line.price().map(price -> Cell.of(price.leadDays())).orElse(Cell.BLANK))),
        Column.onScreen(
            Column.cell(
                TAXABLE,
                Look.TEXT,
                8,
                line ->
                    line.price().map(price -> Cell.ofYesNo(price.taxable())).orElse(Cell.BLANK))),
        Column.onScreen(
            Column.cell("Tax %", Look.PERCENT, 6, line -> ifOffered(line, line.taxPercent()))),
        Column.onScreen(Column.cell(TRUCK_FEES, Look.MONEY, 8, QuotationSheet::truckFees)),
        Column.onScreen(
            Column.cell(
                DELIVERY,
                Look.COUNT,
                9,
                line -> line.delivery() == 0 ? Cell.BLANK : Cell.of(line.delivery()))),
        Column.onScreen(
            Column.cell("Brought", Look.TEXT, 10, line -> Cell.ofYesNo(line.brought()))));
  }

  private static boolean isInstead(QuoteLine line) {
    return line.standing() == QuoteLine.Standing.INSTEAD;
  }

  private static String of(QuoteLine line, Function<Price, String> part) {
    return line.price().map(part).orElse("");
  }

  private static Cell ifOffered(QuoteLine line, BigDecimal figure) {
    return line.price().isPresent() ? Cell.of(figure) : Cell.BLANK;
  }

  private static Cell truckFees(QuoteLine line) {
    return line.truckFees().isZero() ? Cell.BLANK : Cell.of(line.truckFees());
  }

  private static Cell amount(At<QuoteLine> at) {
    QuoteLine line = at.record();
    Optional<Money> byFormula =
        line.price().map(price -> Money.ofPrice(line.packs(), price.price()));
    if (byFormula.isEmpty()) {
      return Cell.BLANK;
    }
    return Cell.live(
        "ROUND(" + at.cell(PACKS) + "*" + at.cell(PRICE) + ",2)",
        byFormula.get().amount().doubleValue(),
        line.amount().amount().doubleValue());
  }

  SheetSpec<QuoteLine> spec() {
    return spec;
  }

  /** Returns the whole of a column, for other sheets' formulas. */
  String column(String heading) {
    Span all = new Span(SheetSpec.FIRST_ROW, Math.max(SheetSpec.FIRST_ROW, spec.lastRow()));
    return all.in(NAME, spec.letter(heading));
  }

  String cell(int row, String heading) {
    return Span.cell(NAME, spec.letter(heading), row);
  }
}
