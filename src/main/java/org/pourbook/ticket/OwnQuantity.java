package org.pourbook.ticket;

import java.util.Optional;
import org.pourbook.measure.Unit;

/** A ticket's quantity in the material's own unit. */
final class OwnQuantity {

  private OwnQuantity() {}

  /**
   * Returns the quantity in the own unit of what was ordered: by the item's pack where the ticket
   * counts order units (or says no unit), by exact conversion where it gives another measure of the
   * same kind; empty where neither fits.
   */
  static Optional<Double> of(Ticket ticket, Ordered ordered, Ordered.Item item) {
    String word = ticket.unit().strip();
    if (word.isEmpty() || word.equalsIgnoreCase(item.orderUnit())) {
      return Optional.of(ticket.quantity() * item.packHolds());
    }
    if (word.equalsIgnoreCase(ordered.unit())) {
      return Optional.of(ticket.quantity());
    }
    Optional<Unit> from = Unit.named(word);
    Optional<Unit> own = Unit.named(ordered.unit());
    Optional<Unit> order = Unit.named(item.orderUnit());
    if (from.isPresent() && own.isPresent() && from.get().dimension() == own.get().dimension()) {
      return Optional.of(own.get().fromBase(from.get().toBase(ticket.quantity())));
    }
    if (from.isPresent()
        && order.isPresent()
        && from.get().dimension() == order.get().dimension()) {
      double orderUnits = order.get().fromBase(from.get().toBase(ticket.quantity()));
      return Optional.of(orderUnits * item.packHolds());
    }
    return Optional.empty();
  }
}
