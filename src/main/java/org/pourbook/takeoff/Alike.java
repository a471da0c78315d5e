package org.pourbook.takeoff;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps one of each text, material key and kind of row of many take-offs, and one of each figure of
 * one: in a season's batch most of them are said over and over, and would fill most of the memory.
 * Threads may share it.
 */
public final class Alike {

  private final Map<String, String> texts = new ConcurrentHashMap<>();
  private final Map<MaterialKey, Optional<MaterialKey>> keys = new ConcurrentHashMap<>();
  private final Map<ReadyItem, ReadyItem> items = new ConcurrentHashMap<>();
  private final Map<Quantity.Kind, Quantity.Kind> kinds = new ConcurrentHashMap<>();

  /** Returns an equal take-off that shares its texts and keys with those returned before. */
  public TakeOff of(TakeOff takeOff) {
    AlikeFigures figures = new AlikeFigures();
    return new TakeOff(
        takeOff.job(),
        takeOff.quantities().stream().map(row -> of(row, figures)).toList(),
        takeOff.pieces().stream().map(piece -> of(piece, figures)).toList(),
        takeOff.pegs().stream().map(peg -> of(peg, figures)).toList(),
        takeOff.concrete(),
        takeOff.boltPieces().stream().map(piece -> of(piece, figures)).toList(),
        takeOff.barMarks().stream().map(bar -> of(bar, figures)).toList(),
        takeOff.joints().stream().map(joint -> of(joint, figures)).toList(),
        takeOff.cautions().stream().map(this::of).toList(),
        takeOff.ready().stream().map(this::of).toList(),
        takeOff.strips().stream().map(strip -> of(strip, figures)).toList());
  }

  private String of(String text) {
    String before = texts.putIfAbsent(text, text);
    return before == null ? text : before;
  }

  private Optional<MaterialKey> of(MaterialKey key) {
    return keys.computeIfAbsent(
        key, k -> Optional.of(new MaterialKey(of(k.material()), of(k.size()))));
  }

  private Quantity of(Quantity quantity, AlikeFigures figures) {
    return new Quantity(
        kinds.computeIfAbsent(quantity.kind(), this::of),
        quantity.section(),
        quantity.amount(),
        of(quantity.working()),
        figures.ofWorked(quantity.worked()));
  }

  private Quantity.Kind of(Quantity.Kind kind) {
    return new Quantity.Kind(
        of(kind.what()),
        kind.unit(),
        of(kind.rule()),
        kind.material().flatMap(this::of),
        kind.pour(),
        kind.allowancePercent(),
        of(kind.unitText()));
  }

  private PieceNeed of(PieceNeed piece, AlikeFigures figures) {
    return new PieceNeed(
        of(piece.material()).orElseThrow(),
        figures.of(piece.length()),
        piece.count(),
        of(piece.goesTo()),
        of(piece.mark()),
        piece.pour(),
        figures.ofJoined(piece.joined()));
  }

  private static BoltPiece of(BoltPiece piece, AlikeFigures figures) {
    return new BoltPiece(
        piece.plate(),
        piece.piece(),
        piece.count(),
        figures.of(piece.length()),
        piece.bolts(),
        figures.of(piece.positions()),
        piece.bolt(),
        figures.of(piece.embedment()));
  }

  private BarMark of(BarMark bar, AlikeFigures figures) {
    return new BarMark(
        bar.section(),
        of(bar.mark()),
        bar.size(),
        bar.shape(),
        bar.count(),
        figures.of(bar.cutLength()),
        figures.of(bar.a()),
        figures.ofLength(bar.b()),
        figures.ofLength(bar.c()),
        bar.laps());
  }

  private JointLine of(JointLine joint, AlikeFigures figures) {
    return new JointLine(
        joint.section(),
        of(joint.joint()),
        joint.what(),
        figures.of(joint.length()),
        figures.ofLength(joint.depth()),
        joint.bars(),
        of(joint.barText()),
        of(joint.note()));
  }

  private static Strip of(Strip strip, AlikeFigures figures) {
    return new Strip(
        strip.section(),
        strip.pour(),
        strip.strip(),
        figures.of(strip.width()),
        figures.of(strip.length()),
        strip.volumeM3(),
        strip.start());
  }

  private Caution of(Caution caution) {
    return new Caution(caution.section(), of(caution.says()), of(caution.rule()));
  }

  private ReadyItem of(ReadyItem item) {
    return items.computeIfAbsent(
        item, i -> new ReadyItem(of(i.what()), of(i.howMany()), of(i.why())));
  }
}
