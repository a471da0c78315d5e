package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.buy.Quotation.LineKey;
import org.pourbook.buy.Quotation.Row;
import org.pourbook.measure.Money;

/** The cheapest split of a request between quotations (BUY-3), by the estimate's own chooser. */
final class BestSplit {

  private static final long MICROS_IN_A_CENT = 10_000;

  private static final Comparator<Stop> BY_DELIVERY =
      Comparator.comparing(Stop::delivery).thenComparing(Stop::supplier);

  /** A supplier, by index, at a delivery. */
  private record Stop(int supplier, Delivery delivery) {}

  private final List<Quotation> quotations;
  private final QuoteItems items;
  private final Map<LineKey, Integer> chosen = new HashMap<>();
  private long gapMicros;

  private BestSplit(List<Quotation> quotations, QuoteItems items) {
    this.quotations = quotations;
    this.items = items;
  }

  static BestSplit of(List<Quotation> quotations, QuoteItems items) {
    BestSplit split = new BestSplit(quotations, items);
    split.groups().forEach(split::choose);
    return split;
  }

  /** Returns the items that somebody sells, with those together that may come by one stop. */
  private List<List<List<LineKey>>> groups() {
    List<List<LineKey>> sold =
        items.all().stream().filter(item -> !items.sellers(item).isEmpty()).toList();
    DisjointSets joined = new DisjointSets(sold.size());
    for (int i = 0; i < sold.size(); i++) {
      int index = i;
      for (int supplier : items.sellers(sold.get(i))) {
        bought(supplier, sold.get(i)).forEach(row -> joined.joinBy(row.delivery(), index));
      }
    }
    return joined.groups().stream().map(group -> group.stream().map(sold::get).toList()).toList();
  }

  private List<Row> bought(int supplier, List<LineKey> item) {
    return item.stream()
        .flatMap(key -> items.quotes().rows(supplier, key).stream())
        .filter(row -> !QuotedWay.isNothing(row))
        .toList();
  }

  private void choose(List<List<LineKey>> group) {
    TreeMap<Stop, StopProblem.Terms> terms = new TreeMap<>(BY_DELIVERY);
    for (List<LineKey> item : group) {
      for (int supplier : items.sellers(item)) {
        bought(supplier, item)
            .forEach(
                row ->
                    terms.merge(
                        new Stop(supplier, row.delivery()),
                        terms(supplier, items.quotes().anotherStop(row.job())),
                        (one, two) -> one.ownMicros() >= two.ownMicros() ? one : two));
      }
    }
    if (terms.isEmpty()) {
      group.forEach(item -> item.forEach(key -> chosen.put(key, items.sellers(item).get(0))));
      return;
    }
    Map<Stop, Integer> index = new HashMap<>();
    terms.keySet().forEach(stop -> index.put(stop, index.size()));
    List<StopProblem.Item> problem = new ArrayList<>();
    for (List<LineKey> item : group) {
      problem.add(
          new StopProblem.Item(
              items.sellers(item).stream()
                  .map(supplier -> way(supplier, bought(supplier, item), index))
                  .toList()));
    }
    StopSearch.Found found =
        StopSearch.cheapest(
            new StopProblem(List.copyOf(terms.values()), problem), CheapestTotal.NODE_LIMIT);
    gapMicros += found.costMicros() - found.boundMicros();
    for (int i = 0; i < group.size(); i++) {
      int supplier = items.sellers(group.get(i)).get(found.chosen().get(i));
      group.get(i).forEach(key -> chosen.put(key, supplier));
    }
  }

  private StopProblem.Terms terms(int supplier, Money anotherStop) {
    Supplier known = quotations.get(supplier).supplier();
    return new StopProblem.Terms(
        known.deliveryFee().orElse(Money.ZERO).cents(),
        known.freeFrom().map(Money::cents).orElse(Long.MAX_VALUE),
        known.minimumOrder().orElse(Money.ZERO).cents(),
        anotherStop.cents() * MICROS_IN_A_CENT);
  }

  private static StopProblem.Way way(int supplier, List<Row> rows, Map<Stop, Integer> index) {
    BigDecimal cost = BigDecimal.ZERO;
    Map<Integer, StopProblem.Part> parts = new LinkedHashMap<>();
    for (Row row : rows) {
      cost = cost.add(row.amount().amount()).add(row.truckFees().amount()).add(QuotedWay.tax(row));
      int stop = index.getOrDefault(new Stop(supplier, row.delivery()), 0);
      parts.merge(
          stop,
          new StopProblem.Part(stop, row.amount().cents(), row.brought()),
          (one, two) ->
              new StopProblem.Part(
                  stop, one.goodsCents() + two.goodsCents(), one.delivered() || two.delivered()));
    }
    return new StopProblem.Way(
        cost.movePointRight(6).setScale(0, RoundingMode.HALF_UP).longValueExact(),
        List.copyOf(parts.values()));
  }

  /** Returns what the split comes to, and how sure it is that nothing is cheaper. */
  Compared.Way way() {
    List<QuotedWay.Pick> picks = new ArrayList<>();
    int missing = 0;
    for (List<LineKey> item : items.all()) {
      for (LineKey key : item) {
        Integer supplier = chosen.get(key);
        if (supplier == null) {
          missing += items.quotes().asked(key) > 0 ? 1 : 0;
        } else {
          items
              .quotes()
              .rows(supplier, key)
              .forEach(
                  row -> picks.add(new QuotedWay.Pick(quotations.get(supplier).supplier(), row)));
        }
      }
    }
    Compared.Way way = QuotedWay.of("best split", picks, missing, "", items.quotes()::anotherStop);
    Money gap = Money.rounded(BigDecimal.valueOf(gapMicros, 6));
    String says =
        gapMicros == 0
            ? "exact: no split of the lines costs less"
            : "not proven: no split costs less than " + way.weighed().minus(gap);
    String counted = way.stopCosts().isZero() ? "" : ", its stops counted";
    return way.saying(says + counted);
  }

  /** Returns what to take from whom, in the order of the lines. */
  List<Compared.Taken> taken() {
    List<Compared.Taken> taken = new ArrayList<>();
    for (LineKey key : items.keys()) {
      Optional<Integer> supplier = Optional.ofNullable(chosen.get(key));
      Row first = items.quotes().first(key);
      if (supplier.isEmpty() && items.quotes().asked(key) > 0) {
        taken.add(
            new Compared.Taken(first.job(), first.key(), "", "", BigDecimal.ZERO, "", Money.ZERO));
      }
      supplier.ifPresent(
          from ->
              items.quotes().rows(from, key).stream()
                  .filter(row -> !QuotedWay.isNothing(row))
                  .forEach(row -> taken.add(taken(row, quotations.get(from).name()))));
    }
    return taken;
  }

  private static Compared.Taken taken(Row row, String supplier) {
    return new Compared.Taken(
        row.job(), row.key(), supplier, row.item(), row.packs(), row.orderUnit(), row.amount());
  }
}
