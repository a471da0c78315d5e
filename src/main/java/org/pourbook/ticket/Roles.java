package org.pourbook.ticket;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.pourbook.takeoff.MaterialKey;

/** Which rows count as delivered and which as billed, so that a ticket and its bill count once. */
final class Roles {

  private record Number(String supplier, String ticket) {}

  private final Set<Number> onTickets = new HashSet<>();
  private final Set<Number> onBills = new HashSet<>();

  Roles(List<Ticket> rows) {
    for (Ticket row : rows) {
      if (!row.ticket().isEmpty()) {
        (row.isBill() ? onBills : onTickets).add(number(row));
      }
    }
  }

  private static Number number(Ticket row) {
    return new Number(MaterialKey.normal(row.supplier()), MaterialKey.normal(row.ticket()));
  }

  /** Returns whether a row counts as delivered: a ticket, or a bill row without one. */
  boolean isDelivered(Ticket row) {
    return !row.isBill() || !onTickets.contains(number(row));
  }

  /** Returns whether a row counts as billed: a bill row, or a priced ticket that no bill names. */
  boolean isBilled(Ticket row) {
    return row.isBill() || row.isPriced() && !onBills.contains(number(row));
  }
}
