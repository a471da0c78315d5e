package org.pourbook.ticket;

import java.util.Optional;
import org.pourbook.measure.Dimension;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/**
 * A ticket row, or a job's part of one, with the line it belongs to.
 *
 * @param ordered empty for what nobody ordered
 * @param item the item of it, present with {@code ordered}
 * @param own quantity in the own unit
 * @param share the part of the row that this is
 * @param delivered whether it counts as delivered: a delivery ticket, or a bill row whose ticket
 *     did not come by itself
 * @param billed whether it counts as billed: a bill row, or a priced ticket that is not billed else
 */
record Claim(
    Ticket ticket,
    Optional<Ordered> ordered,
    Optional<Ordered.Item> item,
    double own,
    Share share,
    boolean delivered,
    boolean billed) {

  /** Returns the row's money, or this job's part of it. */
  Optional<Money> money() {
    return ticket.money().map(share::of);
  }

  /** Returns what is billed in the own unit: nothing where only the price is credited. */
  double ownBilled() {
    return billed && !ticket.isPriceCredit() ? own : 0;
  }

  /** Returns the code of the job it went to; of what nobody ordered the one on the ticket. */
  String job() {
    return ordered.map(Ordered::job).orElse(ticket.job());
  }

  /**
   * Returns the volume of concrete; 0 for other goods, and where nothing says in which unit it is
   * [m3].
   */
  double concreteM3() {
    MaterialKey key = ordered.map(Ordered::key).orElse(ticket.key());
    String unit = ordered.map(Ordered::unit).orElse(ticket.unit());
    return Material.named(key.material()).equals(Optional.of(Material.CONCRETE))
        ? Unit.named(unit)
            .filter(known -> known.dimension() == Dimension.VOLUME)
            .map(known -> known.toBase(own))
            .orElse(0.0)
        : 0;
  }
}
