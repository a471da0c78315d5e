package org.pourbook.outline;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.pourbook.measure.Length;

/** The plan of a floor, or a piece of one, as joints and strips cut it [m]. */
public final class FloorPlan {

  /** Plans are written to 1/16 in: what is thinner is no piece. */
  private static final double WRITTEN_M = Length.ofInches(1, 16).metres();

  /** A line is drawn that much over its ends, so that it surely meets the sides there [m]. */
  private static final double OVER_M = 1e-6;

  private final Polygon polygon;

  private FloorPlan(Polygon polygon) {
    this.polygon = polygon;
  }

  /** A straight line in the plan. */
  public record Line(double x1M, double y1M, double x2M, double y2M) {
    public double lengthM() {
      return Math.sqrt((x2M - x1M) * (x2M - x1M) + (y2M - y1M) * (y2M - y1M));
    }
  }

  /** A band of a plan between two parallel lines. */
  public record Band(double areaM2, double lengthM) {}

  /**
   * Returns a floor less the parts that are taken out of it: several pieces where they divide it.
   * No sliver is left between a part and the side of the floor on which it lies.
   */
  public static List<FloorPlan> of(Figure floor, Collection<Placed> takenOut) {
    Geometry rest = Region.of(floor);
    for (Placed part : takenOut) {
      rest = Region.minus(rest, part.overSides(floor));
    }
    return plans(Region.pieces(rest, WRITTEN_M));
  }

  private static List<FloorPlan> plans(List<Polygon> pieces) {
    return pieces.stream().map(FloorPlan::new).toList();
  }

  Polygon polygon() {
    return polygon;
  }

  public double areaM2() {
    return polygon.getArea();
  }

  /** Returns whether a point lies in it or on its sides. */
  public boolean holds(double xM, double yM) {
    return polygon.distance(Region.point(xM, yM)) < WRITTEN_M;
  }

  /**
   * Returns a line from each re-entrant corner the shortest way across; one for two corners whose
   * lines would run beside each other within {@code nearM}.
   */
  public List<Line> cornerLines(double nearM) {
    return CornerLines.of(polygon, nearM);
  }

  /** Returns the rectangle round it along its longest side. */
  public Frame frame() {
    return Frame.round(polygon.getExteriorRing().getCoordinates());
  }

  /** Returns whether it fills the rectangle round it, but for what cannot be drawn. */
  public boolean isRectangle() {
    Frame frame = frame();
    double missingM2 = frame.lengthM() * frame.widthM() - areaM2();
    return missingM2 < WRITTEN_M * Math.max(frame.lengthM(), frame.widthM());
  }

  /** Returns the pieces that lines cut it into. */
  public List<FloorPlan> cutAlong(Collection<Line> lines) {
    if (lines.isEmpty()) {
      return List.of(this);
    }
    List<Geometry> edges = new ArrayList<>(List.of(polygon.getBoundary()));
    lines.forEach(line -> edges.add(longer(line)));
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(Region.union(edges));
    List<Polygon> pieces = new ArrayList<>();
    for (Object found : polygonizer.getPolygons()) {
      Polygon piece = (Polygon) found;
      if (polygon.contains(piece.getInteriorPoint())) {
        pieces.addAll(Region.pieces(piece, WRITTEN_M));
      }
    }
    return plans(pieces);
  }

  private static Geometry longer(Line line) {
    double overX = (line.x2M() - line.x1M()) / line.lengthM() * OVER_M;
    double overY = (line.y2M() - line.y1M()) / line.lengthM() * OVER_M;
    return Region.segment(
        new Coordinate(line.x1M() - overX, line.y1M() - overY),
        new Coordinate(line.x2M() + overX, line.y2M() + overY));
  }

  /** Returns what lies inside it of a line; parts along its sides do not. */
  public List<Line> inside(Line line) {
    Geometry common = Region.lines(Region.common(longer(line), polygon));
    Geometry within = Region.minus(common, polygon.getBoundary());
    List<Line> parts = new ArrayList<>();
    for (int i = 0; i < within.getNumGeometries(); i++) {
      if (within.getGeometryN(i) instanceof LineString part && part.getLength() > WRITTEN_M) {
        Coordinate from = part.getStartPoint().getCoordinate();
        Coordinate to = part.getEndPoint().getCoordinate();
        parts.add(new Line(from.x, from.y, to.x, to.y));
      }
    }
    return parts;
  }

  /** Returns whether a point lies on its outer side or on one of its openings. */
  public boolean hasOnSide(double xM, double yM) {
    return polygon.getBoundary().distance(Region.point(xM, yM)) < 2 * OVER_M;
  }

  /** Returns it cut into bands of equal width that run along X, or along Y. */
  public static List<Band> bands(List<FloorPlan> plans, boolean alongX, int count) {
    Envelope round = new Envelope();
    plans.forEach(plan -> round.expandToInclude(plan.polygon.getEnvelopeInternal()));
    double from = alongX ? round.getMinY() : round.getMinX();
    double step = (alongX ? round.getHeight() : round.getWidth()) / count;
    List<Band> bands = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Envelope band =
          alongX
              ? new Envelope(
                  round.getMinX(), round.getMaxX(), from + i * step, from + (i + 1) * step)
              : new Envelope(
                  from + i * step, from + (i + 1) * step, round.getMinY(), round.getMaxY());
      bands.add(band(plans, band, alongX));
    }
    return List.copyOf(bands);
  }

  private static Band band(List<FloorPlan> plans, Envelope band, boolean alongX) {
    double areaM2 = 0;
    Envelope extent = new Envelope();
    for (FloorPlan plan : plans) {
      Geometry within = Region.common(plan.polygon, Region.box(band));
      for (Polygon piece : Region.pieces(within, Region.THINNEST_M)) {
        areaM2 += piece.getArea();
        extent.expandToInclude(piece.getEnvelopeInternal());
      }
    }
    return new Band(areaM2, alongX ? extent.getWidth() : extent.getHeight());
  }
}
