package org.pourbook.ticket;

import java.util.Optional;
import org.pourbook.measure.Money;

/**
 * A ticket row, or a job's part of one, with the line it belongs to.
 *
 * @param ordered empty for what nobody ordered
 * @param item the item of it, present with {@code ordered}
 * @param own quantity in the own unit
 * @param money the row's money, or this job's part of it
 * @param delivered whether it counts as delivered: a delivery ticket, or a bill row whose ticket
 *     did not come by itself
 * @param billed whether it counts as billed: a bill row, or a priced ticket that is not billed else
 */
record Claim(
    Ticket ticket,
    Optional<Ordered> ordered,
    Optional<Ordered.Item> item,
    double own,
    Optional<Money> money,
    boolean delivered,
    boolean billed) {

  /**
   * Returns the row as the order calls it: plants print their own codes for a mix, and many no
   * unit.
   */
  Ticket meant() {
    return ordered
        .flatMap(line -> item.map(one -> ticket.meaning(line.key(), one.orderUnit())))
        .orElse(ticket);
  }

  /** Returns the same claim with the row as it is meant. */
  Claim told() {
    return new Claim(meant(), ordered, item, own, money, delivered, billed);
  }
}
