package org.pourbook.book.in;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.book.Bounds;
import org.pourbook.book.Heading;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.buy.Price;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/** Reads the rows of Prices; a row with a problem is left out. */
final class PriceRows {

  private static final Set<Unit> METRIC =
      Set.of(Unit.M, Unit.MM, Unit.M2, Unit.M3, Unit.KG, Unit.T, Unit.L);

  private static final Pattern PACK =
      Pattern.compile("\\s*([0-9.,]+)\\s*([a-zA-Z][a-zA-Z0-9]*|)\\s*");

  private final Optional<Table> table;
  private final List<Problem> problems;
  private final List<Read> prices = new ArrayList<>();

  private record Read(Price price, TableRow row) {}

  PriceRows(Optional<Table> table, List<Problem> problems) {
    this.table = table;
    this.problems = problems;
    table.ifPresent(found -> found.rows().forEach(this::read));
  }

  private void read(TableRow row) {
    Cells cells = new Cells(row, UnitSystem.FT_IN, "", Effect.ROW_LEFT_OUT, problems);
    Optional<String> material = cells.text("Material");
    String size = cells.code("Size").orElse("");
    Optional<String> supplier = cells.text("Supplier");
    Optional<String> unit = cells.text("Unit");
    Optional<BigDecimal> price = cells.number("Price");
    MaterialKey key = new MaterialKey(material.map(PriceRows::canonical).orElse(""), size);
    boolean metric = isMetric(key, unit.orElse(""));
    Optional<Pack> pack =
        cells.parsed("Pack", text -> pack(text, key, row.table().column("Pack").bounds()));
    Price read =
        new Price(
            key,
            cells.code("Item").orElse(""),
            cells.textOrEmpty("Description"),
            supplier.orElse(""),
            unit.orElse(""),
            pack.map(Pack::holds).orElse(BigDecimal.ONE),
            pack.flatMap(Pack::unit),
            price.orElse(BigDecimal.ONE),
            cells.number("From").orElse(BigDecimal.ZERO),
            length(cells, "Stock length", metric),
            length(cells, "Sheet length", metric),
            length(cells, "Sheet width", metric),
            cells.count("In stock").map(OptionalInt::of).orElse(OptionalInt.empty()),
            cells.yesNo("Taxable").orElse(true),
            cells.count("Lead days").orElse(0),
            cells.date("Valid until"),
            cells.code("Cost code").orElse(""),
            cells.text("Instead of").map(PriceRows::key),
            row.place());
    checkSize(cells, key);
    if (cells.isSound()) {
      prices.add(new Read(read, row));
    }
  }

  private record Pack(BigDecimal holds, Optional<Unit> unit) {}

  /** Returns a pack such as {@code 50} or {@code 5 gal}, the unit one of its material's. */
  private static Optional<Pack> pack(String text, MaterialKey key, Bounds bounds) {
    Matcher parts = PACK.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    Optional<Unit> unit = Unit.named(parts.group(2)).filter(written -> isUnitOf(written, key));
    return parts.group(2).isEmpty() == unit.isPresent()
        ? Optional.empty()
        : NumberText.read(parts.group(1))
            .filter(holds -> holds.signum() > 0 && bounds.hold(holds))
            .map(holds -> new Pack(holds, unit));
  }

  private static boolean isUnitOf(Unit unit, MaterialKey key) {
    return Material.named(key.material())
        .map(material -> material.unit(UnitSystem.FT_IN).dimension() == unit.dimension())
        .orElse(true);
  }

  /** A size that no rule can ask for would never be found. */
  private static void checkSize(Cells cells, MaterialKey key) {
    boolean known =
        switch (Material.named(key.material()).orElse(Material.CONCRETE)) {
          case BAR -> BarSize.named(key.size()).isPresent();
          case FORM_BOARD -> LumberSize.named(key.size()).isPresent();
          default -> true;
        };
    if (!known && !key.size().isEmpty()) {
      cells.refuse(
          "Size", key.material().equals("bar") ? "a bar such as #4" : "a board such as 2x6");
    }
  }

  /** A heading may name the unit of a bare length; else the row's own sizes and units say it. */
  private Optional<Length> length(Cells cells, String heading, boolean metric) {
    Optional<String> headed =
        table
            .flatMap(t -> t.headed(heading))
            .flatMap(column -> Heading.of(column.heading()).unit());
    boolean inMetres = headed.map(unit -> unit.equals("m")).orElse(metric);
    return cells.length(heading, inMetres ? Unit.M : Unit.FT);
  }

  static boolean isMetric(MaterialKey key, String unit) {
    return Unit.named(unit).filter(METRIC::contains).isPresent()
        || BarSize.named(key.size()).filter(bar -> !bar.designation().startsWith("#")).isPresent()
        || LumberSize.named(key.size())
            .filter(board -> board.nominalThicknessIn() != Math.rint(board.nominalThicknessIn()))
            .isPresent();
  }

  /** Returns the material's own name where the tool knows it, else the name as written. */
  static String canonical(String material) {
    return Material.named(material).map(Material::label).orElse(material);
  }

  /** Returns material and size out of one text: {@code form board 2x6}, {@code bar / #4}. */
  static MaterialKey key(String text) {
    String words = text.strip();
    Optional<Material> known = Optional.empty();
    for (Material material : Material.values()) {
      if (words.toLowerCase(Locale.ROOT).startsWith(material.label())
          && known.map(k -> k.label().length() < material.label().length()).orElse(true)) {
        known = Optional.of(material);
      }
    }
    int slash = words.indexOf('/');
    int end = known.map(k -> k.label().length()).orElse(slash < 0 ? words.length() : slash);
    String size = words.substring(end).replaceFirst("^[\\s/,:]+", "");
    return new MaterialKey(known.map(Material::label).orElse(words.substring(0, end)), size);
  }

  /** Returns the suppliers, as {@link #same} compares them, that sell concrete by the m3 alone. */
  Set<String> metricSellers() {
    Map<String, Boolean> metric = new HashMap<>();
    for (Read read : prices) {
      Price price = read.price();
      if (price.key().material().equals(Material.CONCRETE.label())) {
        boolean m3 = Unit.named(price.orderUnit()).equals(Optional.of(Unit.M3));
        metric.merge(same(price.supplier()), m3, Boolean::logicalAnd);
      }
    }
    Set<String> sellers = new HashSet<>();
    metric.forEach((seller, m3) -> sellers.addAll(m3 ? Set.of(seller) : Set.of()));
    return sellers;
  }

  /** Returns a supplier's name as it is compared. */
  static String same(String supplier) {
    return MaterialKey.normal(supplier);
  }

  /** Returns the prices of suppliers in the batch's currency, each under its supplier's name. */
  List<Price> of(SupplierRows suppliers) {
    List<Price> sound = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (Read read : prices) {
      Price price = read.price();
      if (suppliers.isLeftOut(price.supplier())) {
        report(read, "a supplier whose row on Suppliers can be used", Effect.ROW_LEFT_OUT);
        continue;
      }
      Optional<String> name = suppliers.name(price.supplier());
      if (name.isEmpty() && told.add(same(price.supplier()))) {
        report(read, "a supplier of sheet Suppliers; without it no fees and no tax", Effect.NOTE);
      }
      sound.add(withSupplier(price, name.orElse(price.supplier())));
    }
    return sound;
  }

  private void report(Read read, String expected, Effect effect) {
    problems.add(
        new Problem(read.row().place("Supplier"), "", read.price().supplier(), expected, effect));
  }

  private static Price withSupplier(Price price, String name) {
    return name.equals(price.supplier())
        ? price
        : new Price(
            price.key(),
            price.item(),
            price.description(),
            name,
            price.orderUnit(),
            price.pack(),
            price.packUnit(),
            price.price(),
            price.from(),
            price.stockLength(),
            price.sheetLength(),
            price.sheetWidth(),
            price.inStock(),
            price.taxable(),
            price.leadDays(),
            price.validUntil(),
            price.costCode(),
            price.insteadOf(),
            price.place());
  }
}
