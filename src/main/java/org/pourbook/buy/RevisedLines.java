package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/** Pools and what was bought besides as rows: one for each job, material, size and item. */
final class RevisedLines {

  private static final BigDecimal NONE = BigDecimal.ZERO;

  private record Row(MaterialKey key, String unitKind, String job, ItemInHand.Id item) {}

  private final Map<Row, Line> bought = new LinkedHashMap<>();
  private final List<RevisedLine> lines = new ArrayList<>();
  private final PriceBook prices;

  private RevisedLines(Bought besides, PriceBook prices) {
    this.prices = prices;
    besides.lines().stream()
        .filter(line -> line.packs().signum() > 0)
        .forEach(line -> bought.put(row(line), line));
  }

  /**
   * Returns the rows, those to order or send back first; by job in that order, then material and
   * size.
   *
   * @param prices that hold now
   */
  static List<RevisedLine> of(
      List<Pool> pools, List<InHand> left, Bought besides, PriceBook prices, List<String> jobs) {
    RevisedLines rows = new RevisedLines(besides, prices);
    pools.forEach(pool -> pool.items().forEach(item -> rows.add(pool, item)));
    rows.bought.values().forEach(line -> rows.lines.add(onlyBesides(line)));
    left.forEach(row -> rows.lines.add(leftAsOrdered(row)));
    rows.lines.sort(
        Comparator.comparing((RevisedLine line) -> !line.isAnyToDo())
            .thenComparing(line -> jobs.indexOf(line.job()))
            .thenComparing(RevisedLine::key, Lots.TRADE_ORDER));
    return withNets(rows.lines, nets(pools));
  }

  /** Returns what each job needs without allowances, in base units. */
  private static Map<Pool.Want, Double> nets(List<Pool> pools) {
    Map<Pool.Want, Double> nets = new LinkedHashMap<>();
    for (Pool pool : pools) {
      for (Lot lot : pool.now()) {
        lot.portions()
            .forEach(p -> nets.merge(Pool.want(lot, p.job().code()), p.net(), Double::sum));
      }
    }
    return nets;
  }

  private static List<RevisedLine> withNets(List<RevisedLine> lines, Map<Pool.Want, Double> nets) {
    List<RevisedLine> all = new ArrayList<>();
    for (RevisedLine line : lines) {
      OwnUnit own = OwnUnit.written(line.unit());
      Double net = nets.remove(new Pool.Want(line.key().normal(), own.kind(), line.job()));
      all.add(net == null ? line : line.withNet(net / own.toBase(1)));
    }
    return all;
  }

  private static Row row(Line line) {
    OwnUnit own = OwnUnit.written(line.unit());
    String supplier = line.price().map(Price::supplier).orElse("");
    double held = own.toBase(line.packHolds());
    return new Row(
        line.key().normal(),
        own.kind(),
        line.job(),
        ItemInHand.Id.of(supplier, line.item(), line.orderUnit(), held));
  }

  private void add(Pool pool, ItemInHand item) {
    Map<String, BigDecimal> kept = KeptShares.kept(pool, item);
    Map<String, BigDecimal> back = KeptShares.back(item, kept);
    String standing = standing(pool, item);
    OwnUnit own = OwnUnit.written(item.first().unit());
    kept.forEach(
        (job, packs) -> {
          Row row = new Row(item.first().key().normal(), own.kind(), job, item.id());
          Optional<Line> line = Optional.ofNullable(bought.remove(row));
          boolean any = item.isOf(job) || packs.signum() > 0 || line.isPresent();
          if (any) {
            lines.add(line(job, item, packs, back.getOrDefault(job, NONE), line, standing));
          }
        });
  }

  private String standing(Pool pool, ItemInHand item) {
    if (pool.isUnchanged()) {
      return "not changed";
    }
    if (pool.now().isEmpty()) {
      return "no longer needed";
    }
    boolean sold =
        prices.answering(item.first().key()).stream()
            .anyMatch(
                row ->
                    row.supplier().equals(item.first().supplier())
                        && row.item().equals(item.first().item()));
    String planned = planned(pool.jobs());
    return sold || item.first().unitPrice().isEmpty()
        ? planned
        : planned + "; no longer in the price book, used first";
  }

  private static String planned(Set<String> jobs) {
    return jobs.size() == 1 ? "changed" : "changed; planned again for " + String.join(", ", jobs);
  }

  private static RevisedLine line(
      String job,
      ItemInHand item,
      BigDecimal kept,
      BigDecimal back,
      Optional<Line> besides,
      String standing) {
    BigDecimal before = item.packsOf(job);
    BigDecimal more = besides.map(Line::packs).orElse(NONE);
    Optional<BigDecimal> price = item.first().unitPrice();
    Money paid = item.amountOf(job).orElse(Money.ZERO);
    Money credit =
        back.signum() > 0 && back.compareTo(before) == 0
            ? paid
            : price.map(one -> Money.ofPrice(back, one)).orElse(Money.ZERO);
    Optional<Money> amount = besides.isPresent() ? besides.get().amount() : Optional.of(Money.ZERO);
    return new RevisedLine(
        job,
        item.first().key(),
        0,
        item.first().unit(),
        item.first().supplier(),
        item.first().item(),
        item.first().orderUnit(),
        item.first().packHolds(),
        before,
        KeptShares.plain(kept.add(more)),
        more,
        back,
        besides.flatMap(Line::price).map(Price::price).or(() -> price),
        amount,
        credit,
        paid.plus(amount.orElse(Money.ZERO)).minus(credit),
        standing);
  }

  private static RevisedLine onlyBesides(Line line) {
    return new RevisedLine(
        line.job(),
        line.key(),
        0,
        line.unit(),
        line.price().map(Price::supplier).orElse(""),
        line.item(),
        line.orderUnit(),
        line.packHolds(),
        NONE,
        line.packs(),
        line.packs(),
        NONE,
        line.price().map(Price::price),
        line.amount(),
        Money.ZERO,
        line.amount().orElse(Money.ZERO),
        "new");
  }

  private static RevisedLine leftAsOrdered(InHand row) {
    return new RevisedLine(
        row.job(),
        row.key(),
        0,
        row.unit(),
        row.supplier(),
        row.item(),
        row.orderUnit(),
        row.packHolds(),
        row.packs(),
        row.packs(),
        NONE,
        NONE,
        row.unitPrice(),
        Optional.of(Money.ZERO),
        Money.ZERO,
        row.amount().orElse(Money.ZERO),
        "left as ordered, see Problems");
  }
}
