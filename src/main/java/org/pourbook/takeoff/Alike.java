package org.pourbook.takeoff;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps one of each text and each material key of many take-offs: in a season's batch most of them
 * are said over and over, and would fill most of the memory. Threads may share it.
 */
public final class Alike {

  private final Map<String, String> texts = new ConcurrentHashMap<>();
  private final Map<MaterialKey, Optional<MaterialKey>> keys = new ConcurrentHashMap<>();

  /** Returns an equal take-off that shares its texts and keys with those returned before. */
  public TakeOff of(TakeOff takeOff) {
    return new TakeOff(
        takeOff.job(),
        takeOff.quantities().stream().map(this::of).toList(),
        takeOff.pieces().stream().map(this::of).toList(),
        takeOff.pegs().stream().map(this::of).toList(),
        takeOff.concrete(),
        takeOff.boltPieces(),
        takeOff.barMarks().stream().map(this::of).toList(),
        takeOff.joints().stream().map(this::of).toList(),
        takeOff.cautions().stream().map(this::of).toList(),
        takeOff.ready().stream().map(this::of).toList(),
        takeOff.strips());
  }

  private String of(String text) {
    String before = texts.putIfAbsent(text, text);
    return before == null ? text : before;
  }

  private Optional<MaterialKey> of(MaterialKey key) {
    return keys.computeIfAbsent(
        key, k -> Optional.of(new MaterialKey(of(k.material()), of(k.size()))));
  }

  private Quantity of(Quantity quantity) {
    return new Quantity(
        quantity.section(),
        of(quantity.what()),
        quantity.amount(),
        quantity.unit(),
        of(quantity.working()),
        quantity.rule(),
        quantity.material().flatMap(this::of),
        quantity.pour(),
        quantity.allowancePercent(),
        of(quantity.unitText()),
        quantity.worked());
  }

  private PieceNeed of(PieceNeed piece) {
    return new PieceNeed(
        of(piece.material()).orElseThrow(),
        piece.length(),
        piece.count(),
        of(piece.goesTo()),
        of(piece.mark()),
        piece.pour(),
        piece.joined());
  }

  private BarMark of(BarMark bar) {
    return new BarMark(
        bar.section(),
        of(bar.mark()),
        bar.size(),
        bar.shape(),
        bar.count(),
        bar.cutLength(),
        bar.a(),
        bar.b(),
        bar.c(),
        bar.laps());
  }

  private JointLine of(JointLine joint) {
    return new JointLine(
        joint.section(),
        of(joint.joint()),
        joint.what(),
        joint.length(),
        joint.depth(),
        joint.bars(),
        of(joint.barText()),
        of(joint.note()));
  }

  private Caution of(Caution caution) {
    return new Caution(caution.section(), of(caution.says()), of(caution.rule()));
  }

  private ReadyItem of(ReadyItem item) {
    return new ReadyItem(of(item.what()), of(item.howMany()), of(item.why()));
  }
}
