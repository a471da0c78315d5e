package org.pourbook.desk;

import java.util.Map;
import java.util.Set;
import org.pourbook.measure.Money;

/**
 * An earlier order as it is revised.
 *
 * @param totals what each job came to, with fees and tax; without those where its Summary does not
 *     say
 * @param lastOrder number of its last order, counted from 1; 0 where none is known
 * @param unreadable jobs of which not every row of Materials can be read
 */
public record EarlierOrder(
    OrderBook book, Map<String, Money> totals, int lastOrder, Set<String> unreadable) {
  public EarlierOrder {
    totals = Map.copyOf(totals);
    unreadable = Set.copyOf(unreadable);
  }
}
