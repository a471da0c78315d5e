package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pourbook.buy.Line;
import org.pourbook.buy.Order;
import org.pourbook.buy.Supplier;
import org.pourbook.desk.Estimate;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.TakeOff;

/** The lines of every order; packs and prices of goods come from Materials. */
final class OrdersSheet {

  static final String NAME = "Orders";
  static final String PACKS = "Packs";
  static final String PRICE = "Unit price";
  static final String AMOUNT = "Amount";
  static final String TAXABLE = "Taxable";
  static final String KIND = "Kind";
  static final String GOODS = "goods";
  static final String FEE = "fee";

  private final SheetSpec<Row> spec;
  private final Spans<String> orders;
  private final MaterialsSheet materials;
  private final Map<String, List<String>> openChanges;
  private final Map<String, List<Integer>> sources;

  record Row(Order order, Order.OrderLine line) {}

  OrdersSheet(Estimate estimate, MaterialsSheet materials, int most) {
    this.materials = materials;
    this.openChanges = openChanges(estimate);
    this.sources = sources(materials);
    List<Row> rows = MadeRows.of(estimate.bought().orders(), Order::lines, Row::new);
    this.orders = Spans.of(rows, row -> row.order().number());
    this.spec =
        SheetSpec.landscape(
                NAME,
                "Every line of every order, fees among them; printed orders are on Order pages.",
                columns(),
                rows)
            .together(row -> row.order().number(), most)
            .withPlaces();
  }

  private List<Column<Row>> columns() {
    List<Column<Row>> columns = new ArrayList<>(what());
    columns.add(Column.of(PACKS, Look.NUMBER, 9, this::packs));
    columns.add(Column.text("Order unit", 7, row -> row.line().orderUnit()));
    columns.add(Column.of(PRICE, Look.PRICE, 10, this::price));
    columns.add(Column.of(AMOUNT, Look.MONEY, 11, OrdersSheet::amount).inTotal());
    columns.add(Column.of("Price note", Look.WORDS, 8, OrdersSheet::note));
    columns.add(
        Column.onScreen(
            Column.cell(TAXABLE, Look.TEXT, 7, row -> Cell.ofYesNo(row.line().taxable()))));
    columns.add(Column.onScreen(Column.text(KIND, 7, row -> row.line().fee() ? FEE : GOODS)));
    columns.add(Column.text("Open changes", 14, this::openChanges));
    return columns;
  }

  private static List<Column<Row>> what() {
    return List.of(
        Column.text("Order", 9, row -> row.order().number()),
        Column.count("Line", 5, row -> row.line().line()),
        Column.text("Supplier", 18, row -> supplier(row.order())),
        Column.text("Deliver to", 11, row -> row.order().deliverTo()),
        Column.text("Jobs", 13, row -> String.join(", ", row.line().jobs())),
        Column.cell("Needed by", Look.DATE, 13, row -> Cell.ofDay(row.order().neededBy())),
        Column.cell("Order by", Look.DATE, 13, row -> Cell.ofDay(row.line().orderBy())),
        Column.text("Material", 17, row -> row.line().key().material()),
        Column.text("Size", 12, row -> row.line().key().size()),
        Column.text("Item", 11, row -> row.line().item()),
        Column.onScreen(Column.text("Description", 26, row -> row.line().description())));
  }

  /** Returns what the line's jobs have not taken up: {@code BAKERY C2}. */
  private String openChanges(Row row) {
    return row.line().jobs().stream()
        .flatMap(job -> openChanges.getOrDefault(job, List.of()).stream())
        .collect(Collectors.joining(", "));
  }

  private static Map<String, List<String>> openChanges(Estimate estimate) {
    Map<String, List<String>> changes = new HashMap<>();
    for (TakeOff takeOff : estimate.takeOffs()) {
      String job = takeOff.job().code();
      changes.put(
          job,
          takeOff.job().openChanges().stream().map(change -> job + " " + change.code()).toList());
    }
    return changes;
  }

  static String supplier(Order order) {
    return order.supplier().map(Supplier::name).orElse("");
  }

  /** Rows of Materials by the one order that brings them. */
  private static Map<String, List<Integer>> sources(MaterialsSheet materials) {
    Map<String, List<Integer>> rows = new HashMap<>();
    for (int i = 0; i < materials.spec().rows().size(); i++) {
      Line line = materials.spec().rows().get(i);
      if (line.orders().size() == 1) {
        rows.computeIfAbsent(line.orders().get(0), k -> new ArrayList<>())
            .add(SheetSpec.FIRST_ROW + i);
      }
    }
    return rows;
  }

  private List<Integer> sourcesOf(Row row) {
    return row.line().fee()
        ? List.of()
        : sources.getOrDefault(row.order().number(), List.of()).stream()
            .filter(source -> isOf(materials.lineAt(source), row.line()))
            .toList();
  }

  private static boolean isOf(Line source, Order.OrderLine line) {
    return source.item().equals(line.item()) && source.key().normal().equals(line.key().normal());
  }

  private Cell packs(At<Row> at) {
    List<Integer> from = sourcesOf(at.record());
    double packs = at.record().line().packs().doubleValue();
    if (from.isEmpty()) {
      return Cell.of(packs);
    }
    double sum =
        from.stream().mapToDouble(row -> materials.lineAt(row).packs().doubleValue()).sum();
    String formula =
        from.stream()
            .map(row -> materials.cell(row, MaterialsSheet.PACKS))
            .collect(Collectors.joining("+"));
    return Cell.live(formula, sum, packs);
  }

  private Cell price(At<Row> at) {
    Optional<Double> price = at.record().line().unitPrice().map(Number::doubleValue);
    List<Integer> from = sourcesOf(at.record());
    if (price.isEmpty() || from.isEmpty()) {
      return Cell.ofPrice(at.record().line().unitPrice());
    }
    double there =
        materials.lineAt(from.get(0)).price().map(p -> p.price().doubleValue()).orElse(0.0);
    return Cell.live(materials.cell(from.get(0), MaterialsSheet.PRICE), there, price.get());
  }

  private static Cell amount(At<Row> at) {
    Order.OrderLine line = at.record().line();
    double figure = line.amount().map(money -> money.amount().doubleValue()).orElse(0.0);
    double byFormula =
        line.unitPrice()
            .map(price -> Money.ofPrice(line.packs(), price))
            .map(money -> money.amount().doubleValue())
            .orElse(0.0);
    return Cell.live("ROUND(" + at.cell(PACKS) + "*" + at.cell(PRICE) + ",2)", byFormula, figure);
  }

  private static Cell note(At<Row> at) {
    return MaterialsSheet.note(at.cell(PRICE), at.record().line().unitPrice().isPresent());
  }

  SheetSpec<Row> spec() {
    return spec;
  }

  Optional<Span> rowsOf(String order) {
    return orders.of(order);
  }

  String cells(Span rows, String heading) {
    return spec.cells(rows, heading);
  }

  String cell(int row, String heading) {
    return spec.cell(row, heading);
  }
}
