package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * Quotations of one request side by side, and the ways to buy.
 *
 * @param suppliers in the order of the files
 * @param ways all from each supplier, then the best split
 * @param split what to take from whom
 */
public record Compared(
    List<String> suppliers, List<Line> lines, List<Way> ways, List<Taken> split) {
  public Compared {
    suppliers = List.copyOf(suppliers);
    lines = List.copyOf(lines);
    ways = List.copyOf(ways);
    split = List.copyOf(split);
  }

  /**
   * A line asked for.
   *
   * @param amounts by supplier; empty where it does not offer the line
   * @param best the supplier of the least amount, fees aside
   */
  public record Line(
      String job,
      MaterialKey key,
      double asked,
      String unit,
      List<Optional<Money>> amounts,
      Optional<String> best) {
    public Line {
      amounts = List.copyOf(amounts);
    }
  }

  /**
   * A way to buy what was asked.
   *
   * @param name {@code all from NAME} or {@code best split}
   * @param delivery all fees of all deliveries
   * @param stops deliveries that it takes
   * @param stopCosts what these cost the builder besides; weighed, not paid (BUY-3)
   * @param missing lines asked for that it does not buy
   * @param says how sure it is
   */
  public record Way(
      String name,
      Money goods,
      Money delivery,
      Money tax,
      int stops,
      Money stopCosts,
      int missing,
      String says) {

    /** Returns goods, delivery and tax. */
    public Money total() {
      return goods.plus(delivery).plus(tax);
    }

    /** Returns the total with what the stops cost the builder: by this ways are chosen. */
    public Money weighed() {
      return total().plus(stopCosts);
    }

    Way saying(String words) {
      return new Way(name, goods, delivery, tax, stops, stopCosts, missing, words);
    }
  }

  /** What is bought of a line from a supplier; nothing from nobody where it is missing. */
  public record Taken(
      String job,
      MaterialKey key,
      String supplier,
      String item,
      BigDecimal packs,
      String orderUnit,
      Money amount) {}

  /** Returns the cheapest of the ways that miss fewest lines. */
  public Way best() {
    return ways.stream()
        .min(Comparator.comparingInt(Way::missing).thenComparing(Way::weighed))
        .orElseThrow();
  }
}
