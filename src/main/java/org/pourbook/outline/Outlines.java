package org.pourbook.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.job.Shape;
import org.pourbook.job.Shape.Point;

/** Checks outlines as they are written, exactly. */
public final class Outlines {

  private Outlines() {}

  /**
   * What keeps an outline from being a plan.
   *
   * @param ring index of the ring, from 0
   * @param point index in the ring, from 0, of the point at fault or of the point that the side at
   *     fault starts from; −1 for the ring as a whole
   * @param message names the points as the workbook does
   */
  public record Fault(int ring, int point, String message) {}

  /** A side of a ring, by the indexes of the ring and of the side's first point. */
  private record Side(int ring, int index, Point from, Point to) {
    private boolean meets(Side other) {
      return ExactPlane.meet(from, to, other.from, other.to);
    }

    private String words() {
      return "the side from " + pointWords(ring, from);
    }
  }

  /**
   * Returns the first thing wrong with an outline: fewer than three points in a ring, a side
   * without length, a side that doubles back, sides that cross or touch, an opening outside the
   * outer ring or inside another opening; empty where the outline is sound.
   */
  public static Optional<Fault> check(Shape.Outline outline) {
    List<Shape.Ring> rings = outline.rings();
    if (rings.isEmpty()) {
      return Optional.of(new Fault(0, -1, "an outline without points"));
    }
    List<Side> sides = new ArrayList<>();
    for (int ring = 0; ring < rings.size(); ring++) {
      List<Point> points = rings.get(ring).points();
      if (points.size() < 3) {
        return Optional.of(
            new Fault(ring, -1, ringWords(ring) + " of fewer than three points: " + points.size()));
      }
      for (int i = 0; i < points.size(); i++) {
        sides.add(new Side(ring, i, points.get(i), points.get((i + 1) % points.size())));
      }
    }
    return noLength(sides)
        .or(() -> doublingBack(rings, sides))
        .or(() -> meeting(rings, sides))
        .or(() -> misplacedOpening(rings));
  }

  private static Optional<Fault> noLength(List<Side> sides) {
    return sides.stream()
        .filter(s -> ExactPlane.same(s.from, s.to))
        .findFirst()
        .map(s -> fault(s, s.words() + " has no length: the next point is the same"));
  }

  private static Optional<Fault> doublingBack(List<Shape.Ring> rings, List<Side> sides) {
    for (Side side : sides) {
      List<Point> points = rings.get(side.ring).points();
      Point next = points.get((side.index + 2) % points.size());
      if (ExactPlane.cross(side.from, side.to, side.to, next).signum() == 0
          && ExactPlane.dot(side.from, side.to, side.to, next).signum() < 0) {
        int corner = (side.index + 1) % points.size();
        return Optional.of(
            new Fault(
                side.ring,
                corner,
                "the outline doubles back on itself at " + pointWords(side.ring, side.to)));
      }
    }
    return Optional.empty();
  }

  private static Optional<Fault> meeting(List<Shape.Ring> rings, List<Side> sides) {
    for (int i = 0; i < sides.size(); i++) {
      Side a = sides.get(i);
      for (Side b : sides.subList(i + 1, sides.size())) {
        if (!areNeighbours(rings, a, b) && a.meets(b)) {
          return Optional.of(fault(b, b.words() + " crosses or touches " + a.words()));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean areNeighbours(List<Shape.Ring> rings, Side a, Side b) {
    int between = Math.abs(a.index - b.index);
    return a.ring == b.ring && (between == 1 || between == rings.get(a.ring).points().size() - 1);
  }

  private static Optional<Fault> misplacedOpening(List<Shape.Ring> rings) {
    for (int ring = 1; ring < rings.size(); ring++) {
      Point point = rings.get(ring).points().get(0);
      if (!ExactPlane.inside(point, rings.get(0).points())) {
        return Optional.of(
            new Fault(ring, 0, pointWords(ring, point) + " lies outside the outer ring"));
      }
      for (int other = 1; other < rings.size(); other++) {
        if (other != ring && ExactPlane.inside(point, rings.get(other).points())) {
          return Optional.of(
              new Fault(ring, 0, pointWords(ring, point) + " lies inside " + ringWords(other)));
        }
      }
    }
    return Optional.empty();
  }

  private static Fault fault(Side side, String message) {
    return new Fault(side.ring, side.index, message);
  }

  private static String pointWords(int ring, Point point) {
    return "point " + point.name() + (ring == 0 ? "" : " of " + ringWords(ring));
  }

  private static String ringWords(int ring) {
    return "ring " + (ring + 1);
  }
}
