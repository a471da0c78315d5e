package org.pourbook.book.in;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.pourbook.book.Heading;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/** Reads the rows of Suppliers; a row with a problem is left out, and its prices with it. */
final class SupplierRows {

  private static final String DEFAULT_CURRENCY = "USD";
  private static final BigDecimal M3_PER_YD3 = BigDecimal.valueOf(Unit.YD3.toBase(1));

  private final Set<String> metricSellers;
  private final List<Problem> problems;
  private final List<Supplier> suppliers = new ArrayList<>();
  private final Map<String, String> names = new HashMap<>();
  private final Set<String> leftOut = new HashSet<>();
  private Optional<String> currency = Optional.empty();

  SupplierRows(Optional<Table> table, Set<String> metricSellers, List<Problem> problems) {
    this.metricSellers = metricSellers;
    this.problems = problems;
    table.ifPresent(found -> found.rows().forEach(row -> read(found, row)));
  }

  List<Supplier> suppliers() {
    return suppliers;
  }

  /** Returns the one currency of the batch. */
  String currency() {
    return currency.orElse(DEFAULT_CURRENCY);
  }

  /** Returns the name of a supplier as its row writes it. */
  Optional<String> name(String supplier) {
    return Optional.ofNullable(names.get(PriceRows.same(supplier)));
  }

  boolean isLeftOut(String supplier) {
    return leftOut.contains(PriceRows.same(supplier));
  }

  private void read(Table table, TableRow row) {
    Cells cells = new Cells(row, UnitSystem.FT_IN, "", Effect.ROW_LEFT_OUT, problems);
    String name = cells.text("Supplier").orElse("");
    String same = PriceRows.same(name);
    if (names.containsKey(same) || leftOut.contains(same)) {
      cells.refuse("Supplier", "one row a supplier");
      return;
    }
    checkCurrency(cells);
    Supplier supplier = supplier(table, row, cells, name);
    if (cells.isSound()) {
      names.put(same, name);
      suppliers.add(supplier);
    } else {
      leftOut.add(same);
    }
  }

  private void checkCurrency(Cells cells) {
    Optional<String> code =
        cells.parsed(
            "Currency",
            text ->
                text.matches("[A-Za-z]{3}")
                    ? Optional.of(text.toUpperCase(Locale.ROOT))
                    : Optional.empty());
    if (currency.isEmpty()) {
      currency = code;
    } else if (code.isPresent() && !code.equals(currency)) {
      cells.refuse("Currency", currency() + ", the one currency of the batch");
    }
  }

  private Supplier supplier(Table table, TableRow row, Cells cells, String name) {
    boolean metric = metricSellers.contains(PriceRows.same(name));
    Optional<String> basis =
        cells.parsed(
            "Short load basis", text -> oneOf(text, "flat", "per yd3 short", "per m3 short"));
    boolean byVolume = basis.isPresent() && !basis.get().equals("flat");
    BigDecimal fee = cells.number("Short load fee").orElse(BigDecimal.ZERO);
    return new Supplier(
        name,
        cells.textOrEmpty("Contact"),
        cells.code("Phone").orElse(""),
        cells.textOrEmpty("Email"),
        money(cells, "Delivery fee"),
        money(cells, "Free from"),
        cells.percent("Tax %").orElse(BigDecimal.ZERO),
        volumeM3(table, cells, "Load size", metric),
        volumeM3(table, cells, "Order step", metric),
        volumeM3(table, cells, "Short load under", metric),
        basis.filter("per yd3 short"::equals).isPresent() ? perM3(fee) : fee,
        byVolume,
        cells
            .parsed("Short load by", text -> oneOf(text, "load", "order"))
            .filter("order"::equals)
            .isPresent(),
        money(cells, "Fee per load"),
        cells.decimal("Minutes away"),
        cells
            .number("Free minutes per yd3")
            .map(minutes -> OptionalDouble.of(perM3(minutes).doubleValue()))
            .orElse(OptionalDouble.empty()),
        cells.number("Waiting per minute"),
        money(cells, "Minimum order"),
        row.place());
  }

  private static Optional<String> oneOf(String text, String... words) {
    for (String word : words) {
      if (Heading.key(word).equals(Heading.key(text))) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }

  private static Optional<Money> money(Cells cells, String heading) {
    return cells.number(heading).map(Money::rounded);
  }

  private static BigDecimal perM3(BigDecimal perYd3) {
    return perYd3.divide(M3_PER_YD3, MathContext.DECIMAL64);
  }

  private static OptionalDouble volumeM3(
      Table table, Cells cells, String heading, boolean metricSeller) {
    Optional<String> headed =
        table.headed(heading).flatMap(column -> Heading.of(column.heading()).unit());
    boolean metric = headed.map(unit -> unit.equals("m3")).orElse(metricSeller);
    Optional<BigDecimal> volume = cells.number(heading);
    return volume.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of((metric ? Unit.M3 : Unit.YD3).toBase(volume.get().doubleValue()));
  }
}
