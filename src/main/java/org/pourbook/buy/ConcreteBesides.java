package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Ready-mixed concrete: the new order quantity less what is ordered, pour by pour. */
final class ConcreteBesides {

  private final Pool pool;
  private final PriceBook earlierPrices;
  private final PriceBook prices;
  private double free;

  private ConcreteBesides(Pool pool, PriceBook earlierPrices, PriceBook prices) {
    this.pool = pool;
    this.earlierPrices = earlierPrices;
    this.prices = prices;
    this.free = pool.items().stream().mapToDouble(i -> i.packs().doubleValue() * i.held()).sum();
  }

  /** Returns what is left to order from the same plant; what is over is given back. */
  static List<Lot> open(Pool pool, PriceBook earlierPrices, PriceBook prices) {
    return new ConcreteBesides(pool, earlierPrices, prices).all();
  }

  private List<Lot> all() {
    Map<Integer, Double> before = new HashMap<>();
    pool.before().forEach(lot -> before.putAll(byPour(lot, earlierPrices)));
    List<Lot> open = new ArrayList<>();
    for (Lot lot : pool.now()) {
      Map<Integer, Double> wanted = byPour(lot, prices);
      Map<Integer, Double> kept = new HashMap<>();
      wanted.forEach(
          (pour, m3) -> kept.put(pour, take(Math.min(m3, before.getOrDefault(pour, 0.0)))));
      wanted.forEach(
          (pour, m3) -> kept.merge(pour, take(m3 - kept.getOrDefault(pour, 0.0)), Double::sum));
      List<Portion> left = new ArrayList<>();
      for (Portion portion : lot.portions()) {
        double brought = kept.getOrDefault(portion.pour(), 0.0);
        double rest = wanted.getOrDefault(portion.pour(), 0.0) - brought;
        if (Packs.exact(rest).signum() > 0) {
          left.add(portion.ordered(brought, rest));
        }
      }
      if (!left.isEmpty()) {
        open.add(lot.withPortions(left).onlyFrom(plant()));
      }
    }
    giveBack();
    return open;
  }

  private String plant() {
    return pool.items().stream().map(item -> item.first().supplier()).findFirst().orElse("");
  }

  private double take(double m3) {
    double taken = Math.max(0, Math.min(free, m3));
    free -= taken;
    return taken;
  }

  /** Returns the order quantities, by the plant that has the order where it still sells the mix. */
  private Map<Integer, Double> byPour(Lot lot, PriceBook book) {
    List<Option> options = ConcreteOptions.of(lot, book);
    Option option =
        options.stream()
            .filter(way -> way.supplier().map(Supplier::name).equals(Optional.of(plant())))
            .findFirst()
            .orElse(options.get(0));
    Map<Integer, Double> byPour = new TreeMap<>();
    option
        .pours()
        .forEach(pour -> byPour.merge(pour.portion().pour(), pour.plan().orderM3(), Double::sum));
    return byPour;
  }

  private void giveBack() {
    double left = free;
    for (ItemInHand item : pool.items()) {
      BigDecimal back = Packs.ratio(left, item.held()).min(item.packs());
      item.giveBack(back);
      left -= back.doubleValue() * item.held();
    }
  }
}
