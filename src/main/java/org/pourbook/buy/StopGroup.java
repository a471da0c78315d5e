package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;
import org.pourbook.measure.Money;

/**
 * Lots whose suppliers bear on one another's fees, since they may come by the same stops.
 *
 * @param lots indexes of the batch's lots, one an item of the problem
 */
record StopGroup(List<Integer> lots, StopProblem problem) {

  private static final Comparator<Stop> BY_NAME =
      Comparator.comparing(Stop::delivery).thenComparing(Stop::supplier);

  /** A supplier at a delivery. */
  private record Stop(String supplier, Delivery delivery) {}

  /** Returns the groups of all lots that have prices; independent of the order of the lots. */
  static List<StopGroup> of(List<Offered> lots) {
    DisjointSets joined = new DisjointSets(lots.size());
    for (int i = 0; i < lots.size(); i++) {
      if (lots.get(i).options().get(0).isPriced()) {
        for (Delivery delivery : lots.get(i).lot().deliveries()) {
          joined.joinBy(delivery, i);
        }
      }
    }
    return joined.groups().stream()
        .filter(members -> lots.get(members.get(0)).options().get(0).isPriced())
        .map(members -> group(lots, members))
        .toList();
  }

  private static StopGroup group(List<Offered> lots, List<Integer> members) {
    List<Integer> sorted =
        members.stream()
            .sorted(
                Comparator.comparing((Integer lot) -> lots.get(lot).lot().key())
                    .thenComparing(lot -> lots.get(lot).lot().jobs().get(0).code())
                    .thenComparing(lot -> lots.get(lot).lot().deliveries().get(0)))
            .toList();
    TreeMap<Stop, StopProblem.Terms> terms = new TreeMap<>(BY_NAME);
    for (int lot : sorted) {
      addTerms(lots.get(lot), terms);
    }
    List<Stop> stops = List.copyOf(terms.keySet());
    Map<Stop, Integer> index = new TreeMap<>(BY_NAME);
    stops.forEach(stop -> index.put(stop, index.size()));
    List<StopProblem.Item> items = new ArrayList<>();
    for (int lot : sorted) {
      items.add(
          new StopProblem.Item(
              lots.get(lot).options().stream()
                  .map(option -> way(lots.get(lot).lot(), option, index))
                  .toList()));
    }
    return new StopGroup(sorted, new StopProblem(List.copyOf(terms.values()), items));
  }

  private static void addTerms(Offered offered, Map<Stop, StopProblem.Terms> terms) {
    double another =
        offered.lot().jobs().stream()
            .mapToDouble(job -> job.practice().number(Setting.COST_OF_ANOTHER_STOP))
            .max()
            .orElse(0);
    for (Option option : offered.options()) {
      Supplier supplier = option.supplier().orElseThrow();
      for (Delivery delivery : offered.lot().deliveries()) {
        terms.merge(
            new Stop(supplier.name(), delivery),
            new StopProblem.Terms(
                supplier.deliveryFee().orElse(Money.ZERO).cents(),
                supplier.freeFrom().map(Money::cents).orElse(Long.MAX_VALUE),
                supplier.minimumOrder().orElse(Money.ZERO).cents(),
                Math.round(another * 1e6)),
            (one, two) -> one.ownMicros() >= two.ownMicros() ? one : two);
      }
    }
  }

  private static StopProblem.Way way(Lot lot, Option option, Map<Stop, Integer> index) {
    Supplier supplier = option.supplier().orElseThrow();
    Map<Delivery, Long> goods = new TreeMap<>();
    BigDecimal cost = option.goods().plus(option.loadFees()).amount();
    for (Purchase purchase : option.purchases()) {
      purchase.amounts().forEach((to, money) -> goods.merge(to, money.cents(), Long::sum));
      cost = cost.add(tax(lot, option, purchase));
    }
    List<StopProblem.Part> parts = new ArrayList<>();
    goods.forEach(
        (delivery, cents) ->
            parts.add(
                new StopProblem.Part(
                    index.getOrDefault(new Stop(supplier.name(), delivery), 0),
                    cents,
                    lot.delivered())));
    long micros = cost.movePointRight(6).setScale(0, RoundingMode.HALF_UP).longValueExact();
    return new StopProblem.Way(micros, parts);
  }

  /** Returns the tax on a purchase, not yet rounded. */
  private static BigDecimal tax(Lot lot, Option option, Purchase purchase) {
    if (!purchase.price().map(Price::taxable).orElse(true)) {
      return BigDecimal.ZERO;
    }
    List<Job> jobs = lot.jobs();
    List<Money> shares = Shares.ofMoney(purchase.amount(), lot.weights());
    BigDecimal tax = BigDecimal.ZERO;
    for (int i = 0; i < jobs.size(); i++) {
      BigDecimal percent = SalesTax.percent(jobs.get(i), option.supplier());
      tax = tax.add(shares.get(i).amount().multiply(percent).movePointLeft(2));
    }
    return tax;
  }
}
