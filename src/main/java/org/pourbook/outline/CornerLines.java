package org.pourbook.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.pourbook.outline.FloorPlan.Line;

/** The lines from the re-entrant corners of a floor, each the shortest way across. */
final class CornerLines {

  /** A lesser turn is a curve drawn in short sides, no corner [degrees]. */
  private static final double LEAST_TURN_DEG = 10;

  /** A line leaves no sharper corner of concrete than this: a sharper one breaks off [degrees]. */
  private static final double SHARPEST_DEG = 60;

  /** Lines that differ by less run the same way [degrees]. */
  private static final double SAME_WAY_DEG = 30;

  /** What lies nearer than this is met; far above rounding, far below what can be drawn [m]. */
  private static final double TOUCH_M = 1e-7;

  private final List<Coordinate[]> rings = new ArrayList<>();

  private CornerLines(Polygon floor) {
    rings.add(turned(floor.getExteriorRing(), true));
    for (int i = 0; i < floor.getNumInteriorRing(); i++) {
      rings.add(turned(floor.getInteriorRingN(i), false));
    }
  }

  /**
   * Returns one line from each re-entrant corner to the nearest side across: on along one of its
   * two sides or, where that would leave a corner under 60°, square to one of them. One line serves
   * two corners where a second would run beside it no farther than {@code nearM} away; the shorter
   * one stays.
   */
  static List<Line> of(Polygon floor, double nearM) {
    List<Line> all = new CornerLines(floor).shortest();
    all.sort(Comparator.comparingDouble(Line::lengthM));
    List<Line> kept = new ArrayList<>();
    for (Line line : all) {
      if (kept.stream().noneMatch(other -> serves(other, line, nearM))) {
        kept.add(line);
      }
    }
    return List.copyOf(kept);
  }

  /** Returns a ring without its last point, so turned that the concrete lies on the left. */
  private static Coordinate[] turned(LineString ring, boolean outer) {
    Coordinate[] closed = ring.getCoordinates();
    Coordinate[] open = new Coordinate[closed.length - 1];
    boolean reverse = Orientation.isCCW(closed) != outer;
    for (int i = 0; i < open.length; i++) {
      open[i] = closed[reverse ? open.length - i : i];
    }
    return open;
  }

  private List<Line> shortest() {
    List<Line> lines = new ArrayList<>();
    for (Coordinate[] ring : rings) {
      for (int i = 0; i < ring.length; i++) {
        Coordinate before = ring[(i + ring.length - 1) % ring.length];
        Coordinate after = ring[(i + 1) % ring.length];
        Way in = Way.from(before, ring[i]);
        Way out = Way.from(ring[i], after);
        Coordinate corner = ring[i];
        ways(in, out).stream()
            .map(way -> across(corner, way))
            .min(Comparator.comparingDouble(Line::lengthM))
            .ifPresent(lines::add);
      }
    }
    return lines;
  }

  /** Ways on from a corner that leave sound concrete on both sides; none where it is no corner. */
  private static List<Way> ways(Way in, Way out) {
    double turn = in.degreesTo(out);
    if (turn > -LEAST_TURN_DEG) {
      return List.of();
    }
    double inside = 180 - turn;
    List<Way> ways = new ArrayList<>();
    for (Way way : List.of(in, out.back(), in.left(), out.left())) {
      // Left of the side that goes out, to the way; then on to the side that came in.
      double first = (out.degreesTo(way) + 360) % 360;
      double second = inside - first;
      if (Math.min(first, second) > SHARPEST_DEG - 1e-6 && Math.max(first, second) < 180 + 1e-6) {
        ways.add(way);
      }
    }
    return ways;
  }

  /** Returns the line from a corner to the first side or corner that it meets. */
  private Line across(Coordinate from, Way way) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Coordinate[] ring : rings) {
      for (int i = 0; i < ring.length; i++) {
        double at = meets(from, way, ring[i], ring[(i + 1) % ring.length]);
        nearest = Math.min(nearest, at);
      }
    }
    return new Line(from.x, from.y, from.x + way.x * nearest, from.y + way.y * nearest);
  }

  private static double meets(Coordinate from, Way way, Coordinate a, Coordinate b) {
    double besideA = way.beside(from, a);
    double besideB = way.beside(from, b);
    double alongA = way.along(from, a);
    if (Math.abs(besideA) <= TOUCH_M) {
      return alongA > TOUCH_M ? alongA : Double.POSITIVE_INFINITY;
    }
    if (Math.abs(besideB) <= TOUCH_M || besideA > 0 == besideB > 0) {
      return Double.POSITIVE_INFINITY;
    }
    double alongB = way.along(from, b);
    double at = alongA + (alongB - alongA) * besideA / (besideA - besideB);
    return at > TOUCH_M ? at : Double.POSITIVE_INFINITY;
  }

  /** Whether a line lies beside another one, near enough that one is cut for both. */
  private static boolean serves(Line kept, Line line, double nearM) {
    Coordinate from = new Coordinate(kept.x1M(), kept.y1M());
    Coordinate a = new Coordinate(line.x1M(), line.y1M());
    Coordinate b = new Coordinate(line.x2M(), line.y2M());
    Way way = Way.from(from, new Coordinate(kept.x2M(), kept.y2M()));
    double angle = Math.abs(way.degreesTo(Way.from(a, b)));
    double start = Math.max(0, Math.min(way.along(from, a), way.along(from, b)));
    double end = Math.min(kept.lengthM(), Math.max(way.along(from, a), way.along(from, b)));
    return Math.min(angle, 180 - angle) < SAME_WAY_DEG
        && end - start > Math.min(nearM, kept.lengthM() / 2)
        && Math.abs(way.beside(from, a)) <= nearM + TOUCH_M;
  }

  /** A direction of length 1. */
  private record Way(double x, double y) {
    static Way from(Coordinate a, Coordinate b) {
      double length = a.distance(b);
      return new Way((b.x - a.x) / length, (b.y - a.y) / length);
    }

    Way back() {
      return new Way(-x, -y);
    }

    Way left() {
      return new Way(-y, x);
    }

    /** Turn to another way, to the left above zero, over −180 to 180 [degrees]. */
    double degreesTo(Way to) {
      return StrictMath.toDegrees(StrictMath.atan2(x * to.y - y * to.x, x * to.x + y * to.y));
    }

    double along(Coordinate from, Coordinate point) {
      return x * (point.x - from.x) + y * (point.y - from.y);
    }

    double beside(Coordinate from, Coordinate point) {
      return x * (point.y - from.y) - y * (point.x - from.x);
    }
  }
}
