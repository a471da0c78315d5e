package org.pourbook.outline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.LineStringExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Areas of the plan as the geometry library holds them, and how they combine [m]. */
final class Region {

  /** Lengths are whole nanometres, so what is thinner than one is a rounding error [m]. */
  static final double THINNEST_M = 1e-9;

  private static final double PER_METRE = 1e9;

  /** A round figure stands for that many sides where it must be cut by straight lines. */
  private static final int ROUND_SIDES = 360;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Region() {}

  /** Returns the region of a figure; a round one as a polygon of many sides and the same area. */
  static Polygon of(Figure figure) {
    return figure instanceof RoundFigure round ? polygon(round) : polygon(figure.sides());
  }

  /** Returns the region of a figure whose plan's origin is put at dx, dy. */
  static Geometry of(Figure figure, double dxM, double dyM) {
    return moved(of(figure), dxM, dyM);
  }

  /**
   * Returns a region moved by dx, dy. Its corners are whole nanometres again: a corner at 44 ft +
   * 20 ft is that at 64 ft.
   */
  static Geometry moved(Geometry region, double dxM, double dyM) {
    Geometry moved = AffineTransformation.translationInstance(dxM, dyM).transform(region);
    moved.apply(
        (CoordinateFilter)
            corner -> {
              corner.x = Math.rint(corner.x * PER_METRE) / PER_METRE;
              corner.y = Math.rint(corner.y * PER_METRE) / PER_METRE;
            });
    moved.geometryChanged();
    return moved;
  }

  static Geometry box(Envelope extent) {
    return FACTORY.toGeometry(extent);
  }

  static Polygon polygon(List<FigureSide> sides) {
    Map<Integer, List<Coordinate>> corners = new LinkedHashMap<>();
    for (FigureSide side : sides) {
      corners
          .computeIfAbsent(side.ring(), ring -> new ArrayList<>())
          .add(new Coordinate(side.x1M(), side.y1M()));
    }
    List<LinearRing> rings = corners.values().stream().map(Region::closed).toList();
    return FACTORY.createPolygon(
        rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
  }

  static Polygon polygon(Coordinate... corners) {
    return FACTORY.createPolygon(closed(Arrays.asList(corners)));
  }

  static Geometry segment(Coordinate from, Coordinate to) {
    return FACTORY.createLineString(new Coordinate[] {from, to});
  }

  static Geometry point(double x, double y) {
    return FACTORY.createPoint(new Coordinate(x, y));
  }

  private static Polygon polygon(RoundFigure round) {
    double step = 2 * Math.PI / ROUND_SIDES;
    double r = round.radiusM() * Math.sqrt(step / StrictMath.sin(step));
    Coordinate[] corners = new Coordinate[ROUND_SIDES];
    for (int i = 0; i < ROUND_SIDES; i++) {
      corners[i] =
          new Coordinate(
              round.radiusM() + r * StrictMath.cos(i * step),
              round.radiusM() + r * StrictMath.sin(i * step));
    }
    return polygon(corners);
  }

  private static LinearRing closed(List<Coordinate> corners) {
    List<Coordinate> ring = new ArrayList<>(corners);
    ring.add(ring.get(0).copy());
    return FACTORY.createLinearRing(ring.toArray(Coordinate[]::new));
  }

  static Geometry union(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.UNION);
  }

  static Geometry union(Collection<Geometry> all) {
    return all.isEmpty() ? FACTORY.createPolygon() : OverlayNGRobust.union(all);
  }

  static Geometry minus(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
  }

  static Geometry common(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
  }

  /** Returns the lines among what two geometries share: they may meet in points besides. */
  static Geometry lines(Geometry shared) {
    return LineStringExtracter.getGeometry(shared);
  }

  /** Returns the pieces of a region that are thicker than a given width. */
  static List<Polygon> pieces(Geometry region, double thickerThanM) {
    List<Polygon> pieces = new ArrayList<>();
    for (int i = 0; i < region.getNumGeometries(); i++) {
      // A long thin piece is twice its area over its perimeter wide.
      if (region.getGeometryN(i) instanceof Polygon piece
          && 2 * piece.getArea() > thickerThanM * piece.getLength()) {
        pieces.add(piece);
      }
    }
    return pieces;
  }

  static double areaM2(Geometry region) {
    return pieces(region, THINNEST_M).stream().mapToDouble(Polygon::getArea).sum();
  }
}
