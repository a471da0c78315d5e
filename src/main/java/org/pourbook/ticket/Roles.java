package org.pourbook.ticket;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which rows count as delivered and which as billed, so that a ticket and its bill count once. */
final class Roles {

  private final Set<TicketNumber> onTickets = new HashSet<>();
  private final Set<TicketNumber> onBills = new HashSet<>();

  Roles(List<Ticket> rows) {
    for (Ticket row : rows) {
      if (!row.ticket().isEmpty()) {
        (row.isBill() ? onBills : onTickets).add(TicketNumber.of(row));
      }
    }
  }

  /** Returns whether a row counts as delivered: a ticket, or a bill row without one. */
  boolean isDelivered(Ticket row) {
    return !row.isBill() || !onTickets.contains(TicketNumber.of(row));
  }

  /** Returns whether a row counts as billed: a bill row, or a priced ticket that no bill names. */
  boolean isBilled(Ticket row) {
    return row.isBill() || row.isPriced() && !onBills.contains(TicketNumber.of(row));
  }
}
