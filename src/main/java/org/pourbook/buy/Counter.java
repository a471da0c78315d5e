package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.pourbook.buy.QuoteLine.Standing;
import org.pourbook.cut.CutPlanner;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;

/**
 * A supplier's counter on a day: what the list offers of a lot, from what is left in stock, as
 * asked or in place of it.
 */
final class Counter implements OnOffer {

  private final List<Price> ranOut;
  private final CutPlanner planner;
  private final Map<MaterialKey, Length> atMost;
  private PriceBook book;

  /**
   * Opens the counter with one supplier's list.
   *
   * @param atMost how long pieces may be of a material of which too few longer ones are in stock
   */
  Counter(PriceBook list, LocalDate date, CutPlanner planner, Map<MaterialKey, Length> atMost) {
    this.planner = planner;
    this.atMost = Map.copyOf(atMost);
    this.ranOut = list.prices().stream().filter(price -> isOver(price, date)).toList();
    this.book =
        new PriceBook(
            list.prices().stream().filter(price -> !isOver(price, date)).toList(),
            list.suppliers(),
            list.currency());
  }

  private static boolean isOver(Price price, LocalDate date) {
    return price.validUntil().filter(date::isAfter).isPresent();
  }

  /** Returns the answer to a lot; what it takes is no longer in stock. */
  Answer answer(Lot lot) {
    if (book.has(lot.key())) {
      CutOptions.Result ways = Choosing.ways(lot, book, planner, List.of());
      Option way = ways.options().get(0);
      if (way.isPriced() && beyondStock(way).isEmpty()) {
        return taken(lot, lot, way, Standing.AS_ASKED, "");
      }
      return instead(lot)
          .orElseGet(
              () ->
                  new Answer(
                      lot,
                      Optional.empty(),
                      Standing.NOT_STOCKED,
                      beyondStock(way).orElse("cannot be cut from the lengths in stock"),
                      Choosing.notCut(lot, ways)));
    }
    return instead(lot).orElseGet(() -> nothing(lot));
  }

  private Answer nothing(Lot lot) {
    List<Price> over = ranOut.stream().filter(price -> answers(price, lot.key())).toList();
    Optional<Price> last = over.stream().max(Comparator.comparing(price -> until(price)));
    return new Answer(
        lot,
        Optional.empty(),
        last.isPresent() ? Standing.RAN_OUT : Standing.NOT_STOCKED,
        last.map(price -> (price.item() + " was valid until " + until(price)).strip()).orElse(""),
        Optional.empty());
  }

  private static LocalDate until(Price price) {
    return price.validUntil().orElse(LocalDate.MAX);
  }

  private static boolean answers(Price price, MaterialKey key) {
    MaterialKey own = price.key().normal();
    MaterialKey asked = key.normal();
    return own.material().equals(asked.material())
        && (own.size().isEmpty() || own.size().equals(asked.size()));
  }

  /** Returns the cheapest that may stand in, if any is in stock. */
  private Optional<Answer> instead(Lot lot) {
    record Way(Lot lot, Option option) {}
    List<Way> found = new ArrayList<>();
    for (MaterialKey other : substitutes(lot.key())) {
      Lot inIts = new Lot(other, lot.planning(), lot.service(), lot.delivered(), lot.portions());
      Option way = Choosing.ways(inIts, book, planner, List.of()).options().get(0);
      if (way.isPriced() && beyondStock(way).isEmpty()) {
        found.add(new Way(inIts, way));
      }
    }
    return found.stream()
        .min(Comparator.comparing(way -> way.option().goods()))
        .map(
            way -> {
              boolean over = ranOut.stream().anyMatch(price -> answers(price, lot.key()));
              String why =
                  book.has(lot.key()) ? "too few in stock" : over ? "price ran out" : "not stocked";
              return taken(
                  lot,
                  way.lot(),
                  way.option(),
                  Standing.INSTEAD,
                  offered(way.option()) + " in place of " + lot.key() + " (" + why + ")");
            });
  }

  private static String offered(Option way) {
    return way.purchases().stream()
        .flatMap(bought -> bought.price().stream())
        .map(
            price ->
                price.description().isEmpty()
                    ? price.key().toString()
                    : price.key() + ", " + price.description())
        .distinct()
        .collect(Collectors.joining("; "));
  }

  /** Returns what may stand in for a key and is worked out in the same way. */
  private Set<MaterialKey> substitutes(MaterialKey key) {
    Set<MaterialKey> found = new LinkedHashSet<>();
    for (Price price : book.prices()) {
      boolean meant = price.insteadOf().map(MaterialKey::normal).equals(Optional.of(key.normal()));
      if (meant && planning(price.key()).equals(planning(key))) {
        found.add(price.key());
      }
    }
    return found;
  }

  private static Optional<Material.Planning> planning(MaterialKey key) {
    return Material.named(key.material()).map(Material::planning);
  }

  /** Returns how much more is wanted of an item than is in stock. */
  private static Optional<String> beyondStock(Option way) {
    for (Purchase bought : way.purchases()) {
      OptionalInt stock = bought.price().map(Price::inStock).orElse(OptionalInt.empty());
      if (stock.isPresent()
          && bought.totalPacks().compareTo(BigDecimal.valueOf(stock.getAsInt())) > 0) {
        return Optional.of(
            "needs "
                + bought.totalPacks().toPlainString()
                + " "
                + bought.orderUnit()
                + " "
                + bought.item()
                + ", "
                + stock.getAsInt()
                + " left in stock");
      }
    }
    return Optional.empty();
  }

  private Answer taken(Lot asked, Lot offered, Option way, Standing standing, String says) {
    boolean limited =
        way.purchases().stream()
            .anyMatch(bought -> bought.price().filter(p -> p.inStock().isPresent()).isPresent());
    if (limited) {
      book =
          new PriceBook(
              book.prices().stream().map(price -> left(price, way)).toList(),
              book.suppliers(),
              book.currency());
    }
    return new Answer(
        asked, Optional.of(new Choice(offered, way)), standing, says, Optional.empty());
  }

  private static Price left(Price price, Option way) {
    if (price.inStock().isEmpty()) {
      return price;
    }
    BigDecimal used =
        way.purchases().stream()
            .filter(bought -> bought.price().filter(p -> isSameItem(p, price)).isPresent())
            .map(Purchase::totalPacks)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    int left = price.inStock().getAsInt() - used.setScale(0, RoundingMode.CEILING).intValueExact();
    return price.withInStock(Math.max(0, left));
  }

  private static boolean isSameItem(Price one, Price other) {
    return one.key().equals(other.key())
        && one.item().equals(other.item())
        && one.orderUnit().equals(other.orderUnit())
        && one.stockLength().equals(other.stockLength());
  }

  @Override
  public List<String> sizes(String material) {
    return book.sizes(material);
  }

  @Override
  public Optional<Length> longestStock(MaterialKey key) {
    MaterialKey sold = sold(key);
    return lengths(sold).stream()
        .filter(length -> !length.isMoreThan(atMost.getOrDefault(sold.normal(), length)))
        .max(Comparator.naturalOrder());
  }

  private List<Length> lengths(MaterialKey sold) {
    return book.answering(sold).stream().flatMap(price -> price.stockLength().stream()).toList();
  }

  /**
   * Returns how long pieces may be where an answer found too few of the longest: as the next
   * shorter stock. Nothing where that is not why, or nothing shorter is sold.
   */
  Map<MaterialKey, Length> shorter(Answer answer) {
    MaterialKey sold = sold(answer.asked().key());
    Optional<Length> longest = longestStock(answer.asked().key());
    if (answer.choice().isPresent() || longest.isEmpty() || !isScarce(sold, longest.get())) {
      return Map.of();
    }
    return lengths(sold).stream()
        .filter(longest.get()::isMoreThan)
        .max(Comparator.naturalOrder())
        .map(next -> Map.of(sold.normal(), next))
        .orElse(Map.of());
  }

  private boolean isScarce(MaterialKey sold, Length length) {
    return book.answering(sold).stream()
        .filter(price -> price.stockLength().equals(Optional.of(length)))
        .allMatch(price -> price.inStock().isPresent());
  }

  @Override
  public Optional<BigDecimal> leastPrice(MaterialKey key) {
    return book.leastPrice(sold(key));
  }

  @Override
  public List<SheetSize> sheets(MaterialKey key) {
    return book.sheets(sold(key));
  }

  @Override
  public boolean has(MaterialKey key) {
    return book.has(sold(key));
  }

  private MaterialKey sold(MaterialKey key) {
    return book.has(key) ? key : substitutes(key).stream().findFirst().orElse(key);
  }
}
