package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.measure.Length;

/** What is on offer, put together for a test. */
final class Shelf implements OnOffer {

  private record Good(Optional<Length> longest, BigDecimal price) {}

  private final Map<MaterialKey, Good> goods = new LinkedHashMap<>();

  static Shelf empty() {
    return new Shelf();
  }

  /** Puts boards of a size on offer, up to a length, at a price a metre. */
  Shelf boards(String size, Length longest, String aMetre) {
    goods.put(Material.FORM_BOARD.of(size), new Good(Optional.of(longest), new BigDecimal(aMetre)));
    return this;
  }

  Shelf each(Material material, String size, String price) {
    goods.put(material.of(size), new Good(Optional.empty(), new BigDecimal(price)));
    return this;
  }

  @Override
  public List<String> sizes(String material) {
    return goods.keySet().stream()
        .filter(key -> key.material().equals(material))
        .map(MaterialKey::size)
        .toList();
  }

  @Override
  public Optional<Length> longestStock(MaterialKey key) {
    return good(key).flatMap(Good::longest).stream().max(Comparator.naturalOrder());
  }

  @Override
  public Optional<BigDecimal> leastPrice(MaterialKey key) {
    return good(key).map(Good::price);
  }

  @Override
  public List<SheetSize> sheets(MaterialKey key) {
    return List.of();
  }

  @Override
  public boolean has(MaterialKey key) {
    return good(key).isPresent();
  }

  private Optional<Good> good(MaterialKey key) {
    return Optional.ofNullable(goods.get(key));
  }
}
