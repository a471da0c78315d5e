package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/** A job's parts as rows: one for each material, size, supplier, item and price. */
final class LineRows {

  private record MaterialRows(MaterialKey key, String unit) {}

  private record RowKey(
      MaterialRows rows, Optional<String> supplier, String item, Optional<BigDecimal> price) {}

  private LineRows() {}

  /** Returns the rows, in the order of the parts; net and allowance stand on a material's first. */
  static List<Line> of(List<JobPart> parts) {
    Map<RowKey, Line> rows = new LinkedHashMap<>();
    Map<MaterialRows, double[]> nets = new LinkedHashMap<>();
    for (JobPart part : parts) {
      MaterialRows material = new MaterialRows(part.lot().key().normal(), part.unit().label());
      double[] net = nets.computeIfAbsent(material, k -> new double[2]);
      net[0] += part.net();
      net[1] += part.allowed();
      for (JobPart.Bought bought : part.bought()) {
        Optional<Price> price = bought.purchase().price();
        RowKey key =
            new RowKey(
                material,
                price.map(Price::supplier),
                bought.purchase().item(),
                price.map(row -> row.price().stripTrailingZeros()));
        rows.merge(key, row(part, bought), LineRows::joined);
      }
    }
    return withNets(rows, nets);
  }

  private static List<Line> withNets(Map<RowKey, Line> rows, Map<MaterialRows, double[]> nets) {
    List<Line> lines = new ArrayList<>();
    Set<MaterialRows> seen = new LinkedHashSet<>();
    rows.forEach(
        (key, line) -> {
          double[] net = nets.getOrDefault(key.rows(), new double[2]);
          double allowance = net[0] > 0 ? (net[1] / net[0] - 1) * 100 : 0;
          lines.add(
              seen.add(key.rows())
                  ? line.withNet(net[0], Packs.exact(allowance).doubleValue())
                  : line);
        });
    return lines;
  }

  private static Line row(JobPart part, JobPart.Bought bought) {
    Purchase purchase = bought.purchase();
    return new Line(
        part.job().code(),
        part.job().units(),
        part.lot().key(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        part.needed(purchase),
        part.unit().label(),
        purchase.price(),
        purchase.item(),
        part.unit().fromBase(purchase.held()),
        bought.packs(),
        purchase.orderUnit(),
        purchase.price().map(row -> bought.amount()),
        part.lot().service(),
        purchase.packs().keySet().stream()
            .map(Delivery::day)
            .filter(Optional::isPresent)
            .min(Comparator.comparing(Optional::orElseThrow))
            .orElse(Optional.empty()),
        bought.orders());
  }

  private static Line joined(Line first, Line second) {
    Set<String> orders = new LinkedHashSet<>(first.orders());
    orders.addAll(second.orders());
    return new Line(
        first.job(),
        first.units(),
        first.key(),
        first.net(),
        first.allowancePercent(),
        first.needed() + second.needed(),
        first.unit(),
        first.price(),
        first.item(),
        first.packHolds(),
        first.packs().add(second.packs()),
        first.orderUnit(),
        first.amount().map(amount -> amount.plus(second.amount().orElse(Money.ZERO))),
        first.service(),
        first.neededBy().or(second::neededBy),
        List.copyOf(orders));
  }
}
