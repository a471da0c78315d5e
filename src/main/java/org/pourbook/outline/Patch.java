package org.pourbook.outline;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.pourbook.outline.Surface.Point;

/**
 * A piece of the plan over which a value changes evenly.
 *
 * @param held the measured points that give the value: one holds it level, between two it changes
 *     along their line, three hold a plane
 */
record Patch(Polygon piece, List<Point> held) {

  Patch {
    held = List.copyOf(held);
  }

  /** Returns the patches that points hold over a region inside a figure's region. */
  static List<Patch> of(Polygon region, List<Point> held, Polygon figure) {
    return Region.pieces(Region.common(region, figure), Region.THINNEST_M).stream()
        .map(piece -> new Patch(piece, held))
        .toList();
  }

  double areaM2() {
    return piece.getArea();
  }

  /**
   * Returns the shares that the points have in the value's mean over the piece, which is exactly
   * that at the centroid; in their order, one in sum.
   */
  double[] shares() {
    Coordinate centroid = piece.getCentroid().getCoordinate();
    return switch (held.size()) {
      case 1 -> new double[] {1};
      case 2 -> ofTwo(held.get(0), held.get(1), centroid.x, centroid.y);
      default -> ofThree(held.get(0), held.get(1), held.get(2), centroid.x, centroid.y);
    };
  }

  private static double[] ofTwo(Point a, Point b, double x, double y) {
    double dx = b.xM() - a.xM();
    double dy = b.yM() - a.yM();
    double along = ((x - a.xM()) * dx + (y - a.yM()) * dy) / (dx * dx + dy * dy);
    return new double[] {1 - along, along};
  }

  private static double[] ofThree(Point a, Point b, Point c, double x, double y) {
    double bx = b.xM() - a.xM();
    double by = b.yM() - a.yM();
    double cx = c.xM() - a.xM();
    double cy = c.yM() - a.yM();
    double cross = bx * cy - by * cx;
    double ofB = ((x - a.xM()) * cy - (y - a.yM()) * cx) / cross;
    double ofC = ((y - a.yM()) * bx - (x - a.xM()) * by) / cross;
    return new double[] {1 - ofB - ofC, ofB, ofC};
  }
}
