package org.pourbook.desk;

import java.util.List;
import org.pourbook.ticket.Ordered;

/**
 * An order workbook as the office left it.
 *
 * @param batch its input as it was read at the estimate
 * @param ordered its Materials, grouped by job, material and size
 */
public record OrderBook(Batch batch, List<Ordered> ordered) {
  public OrderBook {
    ordered = List.copyOf(ordered);
  }
}
