package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Joined;

/** What a cut plan makes us buy: stock pieces by item and delivery. */
final class CutPurchases {

  private final Lot lot;
  private final List<CutPiece> pieces;
  private final List<CutStock> stock;
  private final CutResult.Planned plan;

  /** The same stock and cuts stand in many patterns: one of each is kept. */
  private final Map<CutJob.Stock, CutJob.Stock> stockInWords = new HashMap<>();

  private final Map<CutResult.Cut, CutResult.Cut> cutsInWords = new HashMap<>();

  private CutPurchases(
      Lot lot, List<CutPiece> pieces, List<CutStock> stock, CutResult.Planned plan) {
    this.lot = lot;
    this.pieces = pieces;
    this.stock = stock;
    this.plan = plan;
  }

  /**
   * Returns the option that a plan makes; ids of its stock and places are indexes of {@code stock}
   * and {@code pieces}.
   *
   * @param beyondStock why what is in stock is not enough for a plan; empty where it is
   */
  static Option option(
      Lot lot,
      List<CutPiece> pieces,
      List<CutStock> stock,
      CutResult.Planned plan,
      PriceBook prices,
      Optional<String> beyondStock) {
    CutPurchases made = new CutPurchases(lot, pieces, stock, plan);
    Optional<Supplier> supplier =
        stock.stream()
            .findFirst()
            .flatMap(CutStock::offer)
            .map(offer -> prices.supplierOf(offer.first()));
    List<Told> cautions =
        beyondStock.isPresent() && supplier.isPresent()
            ? List.of(
                new Told(
                    lot.key()
                        + ": nobody has enough in stock for the cut plan. "
                        + beyondStock.get()
                        + " Ordered all the same: ask "
                        + supplier.get().name(),
                    "CUT-1"))
            : List.of();
    return new Option(
        supplier, made.purchases(), Optional.of(made.planInWords()), List.of(), cautions);
  }

  private List<Purchase> purchases() {
    Map<Integer, TreeMap<Delivery, Integer>> counts = new TreeMap<>();
    for (CutResult.Pattern pattern : plan.patterns()) {
      if (!StockInHand.isOf(pattern) && stock.get(stockOf(pattern)).onHand().isEmpty()) {
        counts
            .computeIfAbsent(stockOf(pattern), k -> new TreeMap<>())
            .merge(firstNeeded(pattern), pattern.times(), Integer::sum);
      }
    }
    addSpares(counts);
    if (counts.isEmpty() && stock.stream().anyMatch(item -> item.onHand().isPresent())) {
      // Everything comes from stock on hand; the need still has its row.
      counts.put(0, new TreeMap<>());
    }
    Map<Object, Purchase> purchases = new LinkedHashMap<>();
    counts.forEach(
        (index, byDelivery) -> {
          CutStock item = stock.get(index);
          Object key = item.offer().<Object>map(offer -> offer).orElse(index);
          purchases.merge(key, purchase(item, byDelivery), CutPurchases::joined);
        });
    return purchases.values().stream().map(this::atTier).toList();
  }

  private static int stockOf(CutResult.Pattern pattern) {
    return Integer.parseInt(pattern.stock().id());
  }

  private CutPiece pieceOf(CutResult.Cut cut) {
    return pieces.get(Integer.parseInt(cut.goesTo()));
  }

  /**
   * Returns the delivery on which a stock piece must come: the first that one of its cuts needs.
   */
  private Delivery firstNeeded(CutResult.Pattern pattern) {
    return pattern.cuts().stream()
        .map(cut -> pieceOf(cut).portion().delivery())
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** Adds the spare pieces: of the longest stock used of which enough is left, on its first day. */
  private void addSpares(Map<Integer, TreeMap<Delivery, Integer>> counts) {
    int spare = Math.max(0, CountedOptions.spare(lot) - StockInHand.left(lot.inHand(), plan));
    Comparator<Map.Entry<Integer, TreeMap<Delivery, Integer>>> enoughLeft =
        Comparator.comparing(
            entry ->
                entry.getValue().values().stream().mapToInt(count -> count).sum() + (long) spare
                    <= stock.get(entry.getKey()).limit(true));
    counts.entrySet().stream()
        .max(enoughLeft.thenComparing(entry -> stock.get(entry.getKey()).length()))
        .ifPresent(
            longest ->
                longest.getValue().merge(longest.getValue().firstKey(), spare, Integer::sum));
  }

  private Purchase purchase(CutStock item, TreeMap<Delivery, Integer> byDelivery) {
    Map<Delivery, BigDecimal> packs = new LinkedHashMap<>();
    int sofar = 0;
    BigDecimal before = BigDecimal.ZERO;
    for (Map.Entry<Delivery, Integer> delivery : byDelivery.entrySet()) {
      sofar += delivery.getValue();
      BigDecimal units = item.orderUnits(sofar);
      if (units.compareTo(before) > 0) {
        packs.put(delivery.getKey(), units.subtract(before));
      }
      before = units;
    }
    String unpricedName = LengthFormat.of(item.length(), lot.jobs().get(0).units());
    return new Purchase(
        item.offer().map(Offer::first),
        item.offer().map(offer -> offer.first().item()).orElse(unpricedName),
        item.piecesPerUnit() * item.length().metres(),
        item.offer().map(offer -> offer.first().orderUnit()).orElse(Unit.EACH.label()),
        sofar * item.length().metres(),
        packs);
  }

  /** Returns one purchase of an item sold by measure, whatever the lengths it is brought in. */
  private static Purchase joined(Purchase first, Purchase second) {
    TreeMap<Delivery, BigDecimal> packs = new TreeMap<>(first.packs());
    second.packs().forEach((delivery, more) -> packs.merge(delivery, more, BigDecimal::add));
    return new Purchase(
        first.price(),
        first.item(),
        first.held(),
        first.orderUnit(),
        first.needed() + second.needed(),
        packs);
  }

  /** Returns a purchase at the price of the tier that its order units reach (BUY-2). */
  private Purchase atTier(Purchase bought) {
    Optional<Price> price =
        bought
            .price()
            .map(
                first ->
                    stock.stream()
                        .flatMap(item -> item.offer().stream())
                        .filter(offer -> offer.tiers().contains(first))
                        .findFirst()
                        .orElseThrow()
                        .at(bought.totalPacks()));
    return new Purchase(
        price, bought.item(), bought.held(), bought.orderUnit(), bought.needed(), bought.packs());
  }

  /** Returns stock by the item that is bought, or as being there already. */
  private CutJob.Stock inWords(CutJob.Stock indexed) {
    return stockInWords.computeIfAbsent(indexed, this::named);
  }

  private CutJob.Stock named(CutJob.Stock indexed) {
    CutStock item = stock.get(Integer.parseInt(indexed.id()));
    String bought = item.offer().map(offer -> offer.first().item()).orElse("");
    String id = item.onHand().isPresent() ? Yard.ON_HAND : bought;
    return new CutJob.Stock(id, indexed.length(), indexed.costMicros(), indexed.limit());
  }

  private CutResult.Cut inWords(CutResult.Cut cut, boolean shared) {
    return new CutResult.Cut(cut.length(), cut.count(), pieceOf(cut).goesTo(shared));
  }

  /** Returns the plan with places in words; patterns that then are alike are one. */
  private CutResult.Planned planInWords() {
    boolean shared = lot.jobs().size() > 1;
    Map<CutResult.Pattern, Integer> times = new LinkedHashMap<>();
    for (CutResult.Pattern pattern : plan.patterns()) {
      List<CutResult.Cut> cuts = new ArrayList<>();
      for (CutResult.Cut cut : pattern.cuts()) {
        cuts.add(cutsInWords.computeIfAbsent(cut, c -> inWords(c, shared)));
      }
      times.merge(
          new CutResult.Pattern(
              StockInHand.isOf(pattern) ? pattern.stock() : inWords(pattern.stock()),
              1,
              cuts,
              pattern.offcut()),
          pattern.times(),
          Integer::sum);
    }
    List<CutResult.Pattern> patterns = new ArrayList<>();
    times.forEach(
        (pattern, count) ->
            patterns.add(
                new CutResult.Pattern(pattern.stock(), count, pattern.cuts(), pattern.offcut())));
    return new CutResult.Planned(
        patterns,
        plan.costMicros(),
        plan.boundMicros(),
        divisionsInWords(shared),
        plan.anywhereMicros());
  }

  private List<CutResult.Division> divisionsInWords(boolean shared) {
    Map<CutResult.Division, Integer> times = new LinkedHashMap<>();
    for (CutResult.Division division : plan.divisions()) {
      CutJob.Run run = division.run();
      CutPiece piece = pieces.get(Integer.parseInt(run.goesTo()));
      CutJob.Run inWords =
          new CutJob.Run(
              piece.need().joined().map(Joined::length).orElse(run.length()),
              run.joints(),
              run.lap(),
              run.shortest(),
              run.longest(),
              run.courses(),
              run.count(),
              piece.goesTo(shared));
      times.merge(
          new CutResult.Division(inWords, division.pieces(), 1), division.times(), Integer::sum);
    }
    List<CutResult.Division> divisions = new ArrayList<>();
    times.forEach(
        (one, count) -> divisions.add(new CutResult.Division(one.run(), one.pieces(), count)));
    return divisions;
  }
}
