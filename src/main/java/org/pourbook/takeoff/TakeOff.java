package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.job.Extra;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Job;

/**
 * Everything worked out for one job, before anything is bought.
 *
 * @param quantities rows of the Takeoff sheet; a material's net is the sum of its rows
 * @param pieces of cut-planned materials
 * @param pegs stakes and braces that are bought by the piece; each may be cut from a board instead
 *     ({@link CutPegs})
 * @param concrete by pour and mix
 * @param strips rows of the Pour plan, in the order of placing
 */
public record TakeOff(
    Job job,
    List<Quantity> quantities,
    List<PieceNeed> pieces,
    List<PieceNeed> pegs,
    List<ConcreteNeed> concrete,
    List<BoltPiece> boltPieces,
    List<BarMark> barMarks,
    List<JointLine> joints,
    List<Caution> cautions,
    List<ReadyItem> ready,
    List<Strip> strips) {
  public TakeOff {
    quantities = List.copyOf(quantities);
    pieces = List.copyOf(pieces);
    pegs = List.copyOf(pegs);
    concrete = List.copyOf(concrete);
    boltPieces = List.copyOf(boltPieces);
    barMarks = List.copyOf(barMarks);
    joints = List.copyOf(joints);
    cautions = List.copyOf(cautions);
    ready = List.copyOf(ready);
    strips = List.copyOf(strips);
  }

  /** Returns the same with other bolts. */
  public TakeOff withBolts(List<BoltPiece> bolts) {
    return new TakeOff(
        job, quantities, pieces, pegs, concrete, bolts, barMarks, joints, cautions, ready, strips);
  }

  /** Returns whether a material is work or hire, to which no goods are delivered. */
  public boolean isService(MaterialKey key) {
    return Material.named(key.material())
        .map(material -> material.planning() == Material.Planning.SERVICE)
        .orElseGet(() -> job.extras().stream().anyMatch(extra -> isService(extra, key)));
  }

  private static boolean isService(Extra extra, MaterialKey key) {
    return (extra.kind() == ExtraKind.SERVICE || extra.kind() == ExtraKind.RENT)
        && new MaterialKey(extra.what(), extra.size()).normal().equals(key.normal());
  }
}
