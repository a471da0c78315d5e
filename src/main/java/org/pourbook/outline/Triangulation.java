package org.pourbook.outline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import org.pourbook.outline.Surface.Point;

/** The triangles between measured points, and what lies outside their hull. */
final class Triangulation {

  /** A side of a triangle, from and to in the triangle's turn. */
  private record Way(Point from, Point to) {
    private Way back() {
      return new Way(to, from);
    }
  }

  private final Map<Coordinate, Point> points;
  private final Polygon figure;
  private final double farM;
  private final List<Patch> patches = new ArrayList<>();

  private Triangulation(Map<Coordinate, Point> points, Polygon figure) {
    this.points = points;
    this.figure = figure;
    Envelope extent = figure.getEnvelopeInternal();
    points.keySet().forEach(extent::expandToInclude);
    this.farM = 2 * (extent.getWidth() + extent.getHeight());
  }

  /** Returns patches that cover a figure; the points must not lie in one line. */
  static List<Patch> patches(List<Point> measured, Polygon figure) {
    Triangulation triangulation = new Triangulation(distinct(measured), figure);
    Set<Way> ways = triangulation.addTriangles();
    triangulation.addOutside(hull(ways));
    return triangulation.patches;
  }

  /** Returns the points by their places; values measured at one place are averaged. */
  private static Map<Coordinate, Point> distinct(List<Point> measured) {
    Map<Coordinate, List<Point>> byPlace = new LinkedHashMap<>();
    for (Point point : measured) {
      byPlace
          .computeIfAbsent(new Coordinate(point.xM(), point.yM()), place -> new ArrayList<>())
          .add(point);
    }
    Map<Coordinate, Point> distinct = new LinkedHashMap<>();
    byPlace.forEach(
        (place, same) -> {
          double mean = same.stream().mapToDouble(Point::value).sum() / same.size();
          distinct.put(place, new Point(place.x, place.y, mean));
        });
    return distinct;
  }

  private Set<Way> addTriangles() {
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(points.keySet());
    Geometry triangles = builder.getTriangles(new GeometryFactory());
    Set<Way> ways = new LinkedHashSet<>();
    for (int i = 0; i < triangles.getNumGeometries(); i++) {
      Polygon triangle = (Polygon) triangles.getGeometryN(i);
      Coordinate[] corners = triangle.getCoordinates();
      Point a = point(corners[0]);
      Point b = point(corners[1]);
      Point c = point(corners[2]);
      patches.addAll(Patch.of(triangle, List.of(a, b, c), figure));
      boolean left = cross(a, b, c) > 0;
      ways.add(left ? new Way(a, b) : new Way(b, a));
      ways.add(left ? new Way(b, c) : new Way(c, b));
      ways.add(left ? new Way(c, a) : new Way(a, c));
    }
    return ways;
  }

  private Point point(Coordinate corner) {
    return Objects.requireNonNull(points.get(corner), "a triangle's corner is a measured point");
  }

  /** Returns the ways that only one triangle uses, the next one after each by its first point. */
  private static Map<Point, Way> hull(Set<Way> ways) {
    Map<Point, Way> hull = new LinkedHashMap<>();
    for (Way way : ways) {
      if (!ways.contains(way.back())) {
        hull.put(way.from, way);
      }
    }
    return hull;
  }

  /** Adds the strip square to each side of the hull, and the wedge at each of its corners. */
  private void addOutside(Map<Point, Way> hull) {
    for (Way way : hull.values()) {
      Coordinate out = outwards(way);
      Coordinate from = place(way.from);
      Coordinate to = place(way.to);
      Polygon strip = Region.polygon(from, far(from, out), far(to, out), to);
      patches.addAll(Patch.of(strip, List.of(way.from, way.to), figure));
      Way next = Objects.requireNonNull(hull.get(way.to), "a hull is closed");
      Coordinate nextOut = outwards(next);
      double x = out.x + nextOut.x;
      double y = out.y + nextOut.y;
      double length = Math.sqrt(x * x + y * y);
      if (cross(way.from, way.to, next.to) > 0 && length > 0) {
        Coordinate middle = new Coordinate(x / length, y / length);
        Polygon wedge = Region.polygon(to, far(to, out), far(to, middle), far(to, nextOut));
        patches.addAll(Patch.of(wedge, List.of(way.to), figure));
      }
    }
  }

  private static Coordinate place(Point point) {
    return new Coordinate(point.xM(), point.yM());
  }

  private Coordinate far(Coordinate from, Coordinate way) {
    return new Coordinate(from.x + farM * way.x, from.y + farM * way.y);
  }

  private static Coordinate outwards(Way way) {
    double dx = way.to.xM() - way.from.xM();
    double dy = way.to.yM() - way.from.yM();
    double length = Math.sqrt(dx * dx + dy * dy);
    return new Coordinate(dy / length, -dx / length);
  }

  private static double cross(Point a, Point b, Point c) {
    return (b.xM() - a.xM()) * (c.yM() - a.yM()) - (b.yM() - a.yM()) * (c.xM() - a.xM());
  }
}
