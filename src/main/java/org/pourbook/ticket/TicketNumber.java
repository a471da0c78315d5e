package org.pourbook.ticket;

import org.pourbook.takeoff.MaterialKey;

/** A supplier's ticket number, as numbers are compared. */
record TicketNumber(String supplier, String ticket) {

  static TicketNumber of(Ticket row) {
    return new TicketNumber(MaterialKey.normal(row.supplier()), MaterialKey.normal(row.ticket()));
  }
}
