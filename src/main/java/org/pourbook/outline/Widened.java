package org.pourbook.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pourbook.outline.Figure.Chord;

/** A placed figure moved out all round, as it interrupts lines parallel to X, or to Y. */
public final class Widened {

  /** A line no further inside runs beside the figure: bars are held to the micrometre [m]. */
  private static final double BESIDE_M = 1e-6;

  private final DoubleFunction<List<Chord>> cutter;
  private final double shiftM;
  private final double acrossM;

  private Widened(DoubleFunction<List<Chord>> cutter, double shiftM, double acrossM) {
    this.cutter = cutter;
    this.shiftM = shiftM;
    this.acrossM = acrossM;
  }

  /**
   * Returns a figure moved out (mitred) by a distance.
   *
   * @param along whether the lines are parallel to X
   */
  public static Widened of(Placed placed, double outM, boolean along) {
    double shift = along ? placed.dxM() : placed.dyM();
    double across = along ? placed.dyM() : placed.dxM();
    if (placed.figure() instanceof RoundFigure round) {
      return new Widened(offset -> chord(round, outM, offset), shift, across);
    }
    List<FigureSide> sides = placed.figure().sides();
    Geometry moved = MovedSides.moved(Region.of(placed.figure()), sides, -outM, side -> true);
    List<Polygon> pieces = Region.pieces(moved, Region.THINNEST_M);
    return new Widened(ScanLine.of(pieces, along)::at, shift, across);
  }

  private static List<Chord> chord(RoundFigure round, double outM, double offsetM) {
    double r = round.radiusM() + outM;
    double away = offsetM - round.radiusM();
    double half = Math.sqrt(Math.max(0, r * r - away * away));
    return half == 0
        ? List.of()
        : List.of(new Chord(round.radiusM() - half, round.radiusM() + half, offsetM));
  }

  /** Returns what it takes of the line at an offset, in order; nothing of one along its side. */
  public List<Chord> on(double offsetM) {
    List<Chord> taken = new ArrayList<>();
    for (Chord below : cutter.apply(offsetM - acrossM - BESIDE_M)) {
      for (Chord above : cutter.apply(offsetM - acrossM + BESIDE_M)) {
        double from = Math.max(below.fromM(), above.fromM());
        double to = Math.min(below.toM(), above.toM());
        if (to - from > BESIDE_M) {
          taken.add(new Chord(from + shiftM, to + shiftM, offsetM));
        }
      }
    }
    return taken;
  }
}
