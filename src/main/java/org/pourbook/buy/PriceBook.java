package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;

/** The prices and suppliers of a batch, in one currency. */
public final class PriceBook implements OnOffer {

  /** A book without prices. */
  public static final PriceBook EMPTY = new PriceBook(List.of(), List.of(), "");

  private final List<Price> prices;
  private final List<Supplier> suppliers;
  private final String currency;
  private final Map<String, Supplier> byName = new HashMap<>();
  private final Map<String, List<Price>> byMaterial = new LinkedHashMap<>();

  /**
   * Returns a price book.
   *
   * @param currency code of the one currency, e.g. {@code USD}
   */
  public PriceBook(List<Price> prices, List<Supplier> suppliers, String currency) {
    this.prices = List.copyOf(prices);
    this.suppliers = List.copyOf(suppliers);
    this.currency = currency;
    this.suppliers.forEach(supplier -> byName.putIfAbsent(supplier.name(), supplier));
    for (Price price : this.prices) {
      byMaterial
          .computeIfAbsent(MaterialKey.normal(price.key().material()), k -> new ArrayList<>())
          .add(price);
    }
  }

  public List<Price> prices() {
    return prices;
  }

  public List<Supplier> suppliers() {
    return suppliers;
  }

  public String currency() {
    return currency;
  }

  /** Returns the supplier of that name, if the Suppliers sheet holds it. */
  public Optional<Supplier> supplier(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** Returns the supplier of a row; one named only in Prices has no fees and no tax. */
  public Supplier supplierOf(Price price) {
    return supplier(price.supplier())
        .orElseGet(() -> Supplier.named(price.supplier(), price.place()));
  }

  /** Returns the rows that answer a key: its own size, and rows without a size. */
  public List<Price> answering(MaterialKey key) {
    String size = MaterialKey.normal(key.size());
    return byMaterial.getOrDefault(MaterialKey.normal(key.material()), List.of()).stream()
        .filter(
            price ->
                price.key().size().isEmpty() || MaterialKey.normal(price.key().size()).equals(size))
        .toList();
  }

  @Override
  public List<String> sizes(String material) {
    Set<String> sizes = new LinkedHashSet<>();
    for (Price price : byMaterial.getOrDefault(MaterialKey.normal(material), List.of())) {
      sizes.add(price.key().size());
    }
    return List.copyOf(sizes);
  }

  @Override
  public Optional<Length> longestStock(MaterialKey key) {
    return answering(key).stream()
        .map(Price::stockLength)
        .flatMap(Optional::stream)
        .max(Comparator.naturalOrder());
  }

  @Override
  public Optional<BigDecimal> leastPrice(MaterialKey key) {
    OwnUnit own =
        Material.named(key.material())
            .map(material -> OwnUnit.of(material, UnitSystem.FT_IN))
            .orElse(OwnUnit.written(Unit.EACH.label()));
    return answering(key).stream()
        .map(price -> perBaseUnit(price, key, own))
        .min(Comparator.naturalOrder());
  }

  private static BigDecimal perBaseUnit(Price price, MaterialKey key, OwnUnit own) {
    double held = OrderUnits.held(price, key, own);
    return price.price().divide(BigDecimal.valueOf(held), 9, RoundingMode.HALF_UP);
  }

  @Override
  public List<SheetSize> sheets(MaterialKey key) {
    List<SheetSize> sheets = new ArrayList<>();
    for (Price price : answering(key)) {
      if (price.sheetLength().isPresent() && price.sheetWidth().isPresent()) {
        SheetSize sheet = new SheetSize(price.sheetLength().get(), price.sheetWidth().get());
        if (!sheets.contains(sheet)) {
          sheets.add(sheet);
        }
      }
    }
    return sheets;
  }

  @Override
  public boolean has(MaterialKey key) {
    return !answering(key).isEmpty();
  }
}
