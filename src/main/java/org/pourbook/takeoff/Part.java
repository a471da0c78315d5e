package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;

/**
 * What one family of rules found for a job, gathered while it works: each family fills one and
 * hands it over; {@link TakeOff} is made of all of them.
 */
public final class Part {
  private final List<Quantity> quantities = new ArrayList<>();
  private final List<PieceNeed> pieces = new ArrayList<>();
  private final List<PieceNeed> pegs = new ArrayList<>();
  private final List<ConcreteNeed> concrete = new ArrayList<>();
  private final List<BoltPiece> boltPieces = new ArrayList<>();
  private final List<BarMark> barMarks = new ArrayList<>();
  private final List<JointLine> joints = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();
  private final List<ReadyItem> ready = new ArrayList<>();
  private final List<Strip> strips = new ArrayList<>();

  public void add(Quantity quantity) {
    quantities.add(quantity);
  }

  public void add(PieceNeed piece) {
    pieces.add(piece);
  }

  /** Adds stakes or braces that are bought and may be cut from a board instead. */
  public void addPegs(PieceNeed bought) {
    pegs.add(bought);
  }

  public void add(ConcreteNeed need) {
    concrete.add(need);
  }

  public void add(BoltPiece piece) {
    boltPieces.add(piece);
  }

  public void add(BarMark mark) {
    barMarks.add(mark);
  }

  public void add(JointLine joint) {
    joints.add(joint);
  }

  public void add(Caution caution) {
    cautions.add(caution);
  }

  public void add(ReadyItem item) {
    ready.add(item);
  }

  public void add(Strip strip) {
    strips.add(strip);
  }

  public List<Quantity> quantities() {
    return List.copyOf(quantities);
  }

  public List<PieceNeed> pieces() {
    return List.copyOf(pieces);
  }

  public List<PieceNeed> pegs() {
    return List.copyOf(pegs);
  }

  public List<ConcreteNeed> concrete() {
    return List.copyOf(concrete);
  }

  public List<BoltPiece> boltPieces() {
    return List.copyOf(boltPieces);
  }

  public List<BarMark> barMarks() {
    return List.copyOf(barMarks);
  }

  public List<JointLine> joints() {
    return List.copyOf(joints);
  }

  public List<Caution> cautions() {
    return List.copyOf(cautions);
  }

  public List<ReadyItem> ready() {
    return List.copyOf(ready);
  }

  public List<Strip> strips() {
    return List.copyOf(strips);
  }
}
