package org.pourbook.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.pourbook.outline.Figure.Chord;

/** Cuts lines parallel to an axis out of polygons, their edges included. */
final class ScanLine {

  /**
   * A corner this near to a line lies on it; far below a nanometre and far above the rounding of a
   * coordinate [m].
   */
  private static final double ON_LINE_M = 1e-10;

  /** An edge from a to b; u runs along the lines, v across. */
  private record Edge(double ua, double va, double ub, double vb) {
    private boolean crossesJustBelow(double v) {
      return (va < v - ON_LINE_M) != (vb < v - ON_LINE_M);
    }

    private boolean crossesJustAbove(double v) {
      return (va > v + ON_LINE_M) != (vb > v + ON_LINE_M);
    }

    private double at(double v) {
      double part = Math.min(1, Math.max(0, (v - va) / (vb - va)));
      return ua + part * (ub - ua);
    }
  }

  private final List<Edge> edges;

  private ScanLine(List<Edge> edges) {
    this.edges = edges;
  }

  /** Returns the cutter of polygons for lines parallel to X, or to Y. */
  static ScanLine of(List<Polygon> polygons, boolean alongX) {
    List<Edge> edges = new ArrayList<>();
    for (Polygon polygon : polygons) {
      addRing(edges, polygon.getExteriorRing().getCoordinates(), alongX);
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        addRing(edges, polygon.getInteriorRingN(i).getCoordinates(), alongX);
      }
    }
    return new ScanLine(edges);
  }

  private static void addRing(List<Edge> edges, Coordinate[] ring, boolean alongX) {
    for (int i = 0; i + 1 < ring.length; i++) {
      Coordinate a = ring[i];
      Coordinate b = ring[i + 1];
      edges.add(alongX ? new Edge(a.x, a.y, b.x, b.y) : new Edge(a.y, a.x, b.y, b.x));
    }
  }

  /**
   * Returns the chords on the line at an offset, in order; none shorter than a nanometre. What the
   * line cuts just below and just above is put together, so that a line along an edge counts.
   */
  List<Chord> at(double offsetM) {
    List<Chord> cuts = new ArrayList<>(chords(offsetM, edge -> edge.crossesJustBelow(offsetM)));
    cuts.addAll(chords(offsetM, edge -> edge.crossesJustAbove(offsetM)));
    cuts.sort(Comparator.comparingDouble(Chord::fromM));
    List<Chord> chords = new ArrayList<>();
    for (Chord cut : cuts) {
      Chord last = chords.isEmpty() ? null : chords.get(chords.size() - 1);
      if (last != null && cut.fromM() <= last.toM() + Region.THINNEST_M) {
        double to = Math.max(last.toM(), cut.toM());
        chords.set(chords.size() - 1, new Chord(last.fromM(), to, offsetM));
      } else {
        chords.add(cut);
      }
    }
    chords.removeIf(chord -> chord.lengthM() < Region.THINNEST_M);
    return chords;
  }

  private List<Chord> chords(double offsetM, Predicate<Edge> crossing) {
    double[] cuts =
        edges.stream().filter(crossing).mapToDouble(edge -> edge.at(offsetM)).sorted().toArray();
    List<Chord> chords = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.length; i += 2) {
      chords.add(new Chord(cuts[i], cuts[i + 1], offsetM));
    }
    return chords;
  }
}
