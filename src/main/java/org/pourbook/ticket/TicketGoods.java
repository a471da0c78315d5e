package org.pourbook.ticket;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.measure.Dimension;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/** The goods that came on each ticket, against which its fees are checked. */
final class TicketGoods {

  private final Map<TicketNumber, List<Claim>> claims = new HashMap<>();
  private final Map<String, Double> concreteOfJobs = new HashMap<>();
  private final Map<Ordered, Boolean> counted = new IdentityHashMap<>();

  void add(Claim claim) {
    if (claim.delivered()) {
      claims
          .computeIfAbsent(TicketNumber.of(claim.ticket()), number -> new ArrayList<>())
          .add(claim);
    }
    claim
        .ordered()
        .filter(ordered -> counted.put(ordered, true) == null)
        .ifPresent(
            ordered ->
                concreteOfJobs.merge(
                    MaterialKey.normal(ordered.job()), concreteM3(ordered), Double::sum));
  }

  /** Returns the goods rows on the fee's ticket. */
  List<Ticket> of(Ticket fee) {
    return claims.getOrDefault(TicketNumber.of(fee), List.of()).stream()
        .map(Claim::ticket)
        .distinct()
        .toList();
  }

  /** Returns the concrete on the fee's ticket [m3]. */
  double concreteM3(Ticket fee) {
    return claims.getOrDefault(TicketNumber.of(fee), List.of()).stream()
        .mapToDouble(Claim::concreteM3)
        .sum();
  }

  /**
   * Returns the concrete of the orders that the fee's ticket delivers; of the job's where the
   * ticket holds none [m3].
   */
  double orderedM3(Ticket fee) {
    Map<Ordered, Boolean> lines = new IdentityHashMap<>();
    for (Claim claim : claims.getOrDefault(TicketNumber.of(fee), List.of())) {
      claim.ordered().ifPresent(ordered -> lines.put(ordered, true));
    }
    double onTicket = lines.keySet().stream().mapToDouble(TicketGoods::concreteM3).sum();
    return onTicket > 0
        ? onTicket
        : concreteOfJobs.getOrDefault(MaterialKey.normal(fee.job()), 0.0);
  }

  private static double concreteM3(Ordered ordered) {
    boolean concrete =
        Material.named(ordered.key().material()).equals(Optional.of(Material.CONCRETE));
    return Unit.named(ordered.unit())
        .filter(unit -> concrete && unit.dimension() == Dimension.VOLUME)
        .map(unit -> unit.toBase(ordered.ordered()))
        .orElse(0.0);
  }
}
