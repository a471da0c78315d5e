package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.job.Setting;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material.Planning;

/** The ways to meet a lot by whole packs (BUY-1, BUY-2): one a supplier. */
final class CountedOptions {

  private final Lot lot;
  private final PriceBook prices;

  private CountedOptions(Lot lot, PriceBook prices) {
    this.lot = lot;
    this.prices = prices;
  }

  /**
   * Returns an option a supplier, in the price book's order; one without a price if there is none.
   */
  static List<Option> of(Lot lot, PriceBook prices) {
    return new CountedOptions(lot, prices).all();
  }

  private List<Option> all() {
    Map<String, List<Offer>> bySupplier = new LinkedHashMap<>();
    for (Offer offer : Offer.of(prices.answering(lot.key()))) {
      bySupplier.computeIfAbsent(offer.supplier(), k -> new ArrayList<>()).add(offer);
    }
    if (bySupplier.isEmpty()) {
      return List.of(unpriced());
    }
    List<Option> inStock =
        bySupplier.values().stream().map(this::fromStock).flatMap(Optional::stream).toList();
    return inStock.isEmpty()
        ? bySupplier.values().stream().map(this::beyondStock).toList()
        : inStock;
  }

  /** Returns the cheapest item that is in stock, else several items together, else nothing. */
  private Optional<Option> fromStock(List<Offer> offers) {
    Optional<Purchase> one =
        offers.stream()
            .filter(offer -> offer.inStock(packs(offer)))
            .map(this::whole)
            .min(Comparator.comparing(Purchase::amount));
    return one.map(purchase -> option(offers.get(0), List.of(purchase), tierTold(offers, purchase)))
        .or(() -> together(offers));
  }

  /** Returns items filled up to their stock, cheapest by the unit first. */
  private Optional<Option> together(List<Offer> offers) {
    List<Purchase> purchases = new ArrayList<>();
    double from = 0;
    for (Offer offer : offers.stream().sorted(Comparator.comparing(this::perUnit)).toList()) {
      double limit = offer.first().inStock().orElse(0) * held(offer);
      double to = Math.min(lot.needed(), from + limit);
      if (to > from) {
        purchases.add(part(offer, from, to));
      }
      from = to;
    }
    boolean whole = Packs.up(lot.needed() - from, 1).signum() == 0 && spare() == 0;
    return whole ? Optional.of(option(offers.get(0), purchases, List.of())) : Optional.empty();
  }

  private Option beyondStock(List<Offer> offers) {
    Purchase purchase =
        offers.stream().map(this::whole).min(Comparator.comparing(Purchase::amount)).orElseThrow();
    String says =
        lot.key()
            + ": "
            + purchase.totalPacks()
            + " "
            + purchase.orderUnit()
            + " are needed, "
            + "nobody has so many in stock; ordered all the same, ask "
            + offers.get(0).supplier();
    return option(offers.get(0), List.of(purchase), List.of(new Told(says, "BUY-2")));
  }

  private Option option(Offer any, List<Purchase> purchases, List<Told> cautions) {
    return Option.of(prices.supplierOf(any.first()), purchases, cautions);
  }

  private BigDecimal perUnit(Offer offer) {
    return offer.first().price().divide(Packs.exact(held(offer)), MathContext.DECIMAL64);
  }

  private double held(Offer offer) {
    return OrderUnits.held(offer.first(), lot.key(), lot.unit());
  }

  private BigDecimal packs(Offer offer) {
    return Packs.up(lot.needed(), held(offer)).add(BigDecimal.valueOf(spare()));
  }

  /** Returns the spare rolls or sheets of strip materials. */
  private int spare() {
    return lot.planning() == Planning.STRIPS ? spare(lot) : 0;
  }

  /** Returns the spare pieces that the lot's jobs ask for together. */
  static int spare(Lot lot) {
    return lot.jobs().stream()
        .mapToInt(job -> (int) job.practice().number(Setting.SPARE_PIECES))
        .sum();
  }

  private Purchase whole(Offer offer) {
    return part(offer, 0, lot.needed());
  }

  /** Returns what one item brings of the need between two marks, each delivery in whole packs. */
  private Purchase part(Offer offer, double from, double to) {
    Map<Delivery, BigDecimal> packs = byDelivery(held(offer), from, to);
    BigDecimal total = packs.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    Price price = offer.at(total);
    return new Purchase(
        Optional.of(price), price.item(), held(offer), price.orderUnit(), to - from, packs);
  }

  /** Returns whole packs by delivery: each brings what all so far need, less what came before. */
  private Map<Delivery, BigDecimal> byDelivery(double held, double from, double to) {
    Map<Delivery, BigDecimal> packs = new LinkedHashMap<>();
    double needed = 0;
    BigDecimal before = BigDecimal.ZERO;
    for (Map.Entry<Delivery, Double> delivery : lot.neededByDelivery().entrySet()) {
      needed += delivery.getValue();
      BigDecimal sofar = Packs.up(Math.min(needed, to) - from, held).max(before);
      BigDecimal brought = sofar.subtract(before);
      if (before.signum() == 0 && brought.signum() > 0) {
        brought = brought.add(BigDecimal.valueOf(spare()));
      }
      if (brought.signum() > 0) {
        packs.put(delivery.getKey(), brought);
      }
      before = sofar;
    }
    return packs;
  }

  /** Returns a caution where buying up to the next tier would cost less (BUY-2). */
  private static List<Told> tierTold(List<Offer> offers, Purchase bought) {
    Price row = bought.price().orElseThrow();
    Offer offer = offers.stream().filter(o -> o.tiers().contains(row)).findFirst().orElseThrow();
    return offer.next(bought.totalPacks()).stream()
        .filter(next -> Money.ofPrice(next.from(), next.price()).compareTo(bought.amount()) < 0)
        .map(
            next ->
                new Told(
                    row.key()
                        + ": "
                        + next.from().toPlainString()
                        + " "
                        + row.orderUnit()
                        + " would cost less than the "
                        + bought.totalPacks().toPlainString()
                        + " ordered: the price falls from "
                        + row.price().toPlainString()
                        + " to "
                        + next.price().toPlainString(),
                    "BUY-2"))
        .toList();
  }

  private Option unpriced() {
    double one = lot.unit().toBase(1);
    Map<Delivery, BigDecimal> packs = byDelivery(one, 0, lot.needed());
    return Option.unpriced(
        List.of(new Purchase(Optional.empty(), "", one, lot.unit().label(), lot.needed(), packs)));
  }
}
