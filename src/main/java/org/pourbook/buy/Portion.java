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
    List<PieceNeed> pieces,
    Optional<ConcreteNeed> concrete) {
  Portion {
    pieces = List.copyOf(pieces);
  }
}
