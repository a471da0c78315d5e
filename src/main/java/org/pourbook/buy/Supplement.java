package org.pourbook.buy;

import java.util.List;
import java.util.Map;
import org.pourbook.measure.Money;

/**
 * What a revision changes in an earlier order.
 *
 * @param besides what is bought besides: its orders, loads, cut plans and money
 * @param lines one an item of a material of a job, ordered before or besides
 * @param creditTax tax on what can be sent back, by job
 */
public record Supplement(Bought besides, List<RevisedLine> lines, Map<String, Money> creditTax) {
  public Supplement {
    lines = List.copyOf(lines);
    creditTax = Map.copyOf(creditTax);
  }

  /** Returns what a job is credited for what it sends back, without tax. */
  public Money credit(String job) {
    return Money.sum(
        lines.stream().filter(line -> line.job().equals(job)).map(RevisedLine::credit).toList());
  }
}
