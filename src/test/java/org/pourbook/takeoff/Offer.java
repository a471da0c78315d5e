package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Length;

/** A price book of a test: the keys it lists, one size of roll, and the longest stock. */
record Offer(List<MaterialKey> keys, List<OnOffer.SheetSize> rolls, Optional<Length> longest)
    implements OnOffer {

  static final Offer NOTHING = new Offer(List.of(), List.of(), Optional.empty());

  static Offer roll(long lengthFeet, long widthFeet) {
    return new Offer(
        List.of(),
        List.of(new SheetSize(Length.ofFeet(lengthFeet), Length.ofFeet(widthFeet))),
        Optional.empty());
  }

  static Offer of(MaterialKey... keys) {
    return new Offer(List.of(keys), List.of(), Optional.empty());
  }

  /** Returns the same with boards and bars sold up to a length. */
  Offer upTo(Length stock) {
    return new Offer(keys, rolls, Optional.of(stock));
  }

  @Override
  public List<String> sizes(String material) {
    return keys.stream()
        .filter(key -> key.material().equals(material))
        .map(MaterialKey::size)
        .toList();
  }

  @Override
  public Optional<Length> longestStock(MaterialKey key) {
    return longest;
  }

  @Override
  public Optional<BigDecimal> leastPrice(MaterialKey key) {
    return Optional.empty();
  }

  @Override
  public List<SheetSize> sheets(MaterialKey key) {
    return rolls;
  }

  @Override
  public boolean has(MaterialKey key) {
    return keys.contains(key);
  }
}
