package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.job.Job;

/**
 * Everything worked out for one job, before anything is bought.
 *
 * @param quantities rows of the Takeoff sheet; a material's net is the sum of its rows
 * @param pieces of cut-planned materials
 * @param concrete by pour and mix
 */
public record TakeOff(
    Job job,
    List<Quantity> quantities,
    List<PieceNeed> pieces,
    List<ConcreteNeed> concrete,
    List<BoltPiece> boltPieces,
    List<BarMark> barMarks,
    List<JointLine> joints,
    List<Caution> cautions,
    List<ReadyItem> ready) {
  public TakeOff {
    quantities = List.copyOf(quantities);
    pieces = List.copyOf(pieces);
    concrete = List.copyOf(concrete);
    boltPieces = List.copyOf(boltPieces);
    barMarks = List.copyOf(barMarks);
    joints = List.copyOf(joints);
    cautions = List.copyOf(cautions);
    ready = List.copyOf(ready);
  }
}
