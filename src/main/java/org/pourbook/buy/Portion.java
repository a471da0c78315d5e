package org.pourbook.buy;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.takeoff.ConcreteNeed;
import org.pourbook.takeoff.PieceNeed;

/**
 * What one pour of a job needs of a material.
 *
 * @param net in the base unit of {@code unit}
 * @param needed net with its allowance, likewise; of cut-planned and strip materials the net
 * @param before what an earlier order brings of it besides, likewise
 * @param pieces of a cut-planned material
 * @param concrete of ready-mixed concrete
 */
record Portion(
    Job job,
    int pour,
    Delivery delivery,
    OwnUnit unit,
    double net,
    double needed,
    double before,
    List<PieceNeed> pieces,
    Optional<ConcreteNeed> concrete) {
  Portion {
    pieces = List.copyOf(pieces);
  }

  /** Returns what is left to buy where an earlier order brings a part of it. */
  Portion after(double brought) {
    return ordered(brought, needed - brought);
  }

  /** Returns the same with so much left to buy, which an order step may have rounded up. */
  Portion ordered(double brought, double left) {
    double share = needed > 0 ? left / needed : 0;
    return new Portion(
        job, pour, delivery, unit, net * share, left, before + brought, pieces, concrete);
  }

  /** Returns the same need in other pieces. */
  Portion cut(List<PieceNeed> other) {
    return new Portion(job, pour, delivery, unit, net, needed, before, other, concrete);
  }

  /** Returns the same brought otherwise. */
  Portion on(Delivery other) {
    return new Portion(job, pour, other, unit, net, needed, before, pieces, concrete);
  }
}
