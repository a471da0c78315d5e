package org.pourbook.outline;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pourbook.job.Edge;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

/** Makes figures of shapes. */
public final class Figures {

  /** Plans are written to 1/16 in. */
  private static final double WRITTEN_M = Length.ofInches(1, 16).metres();

  private Figures() {}

  /**
   * Returns the figure of a section's plan, its sides marked as the section says.
   *
   * @throws IllegalArgumentException for an outline in which {@link Outlines#check} finds a fault
   */
  public static Figure of(Section section) {
    return of(
        section.shape(), section.formed(), section.edge().map(Edge::sides).orElse(Sides.NONE));
  }

  /**
   * Returns the figure of a plan of which no side is marked.
   *
   * @throws IllegalArgumentException for an outline in which {@link Outlines#check} finds a fault
   */
  public static Figure of(Shape shape) {
    return of(shape, Sides.NONE, Sides.NONE);
  }

  /** Returns the figure of a shape whose sides are formed and turned down where said. */
  static Figure of(Shape shape, Sides formed, Sides turnedDown) {
    if (shape instanceof Shape.Rectangle rectangle) {
      return RectangleFigure.of(rectangle, formed, turnedDown);
    }
    if (shape instanceof Shape.Round round) {
      return RoundFigure.of(round, formed, turnedDown);
    }
    return OutlineFigure.of((Shape.Outline) shape, formed, turnedDown);
  }

  /**
   * Returns whether a figure lies inside another one, when its plan's origin is put at dx, dy of
   * the other's plan [m]. Sticking out by less than 1/16 in, to which plans are written, does not
   * count.
   */
  public static boolean contains(Figure outer, Figure inner, double dxM, double dyM) {
    Polygon around = Region.of(outer);
    if (inner instanceof RoundFigure round) {
      Geometry centre = Region.point(round.radiusM() + dxM, round.radiusM() + dyM);
      double room =
          outer instanceof RoundFigure wide
              ? wide.radiusM() - awayM(wide, round.radiusM() + dxM, round.radiusM() + dyM)
              : around.contains(centre) ? around.getBoundary().distance(centre) : -1;
      return room >= round.radiusM() - WRITTEN_M;
    }
    if (outer instanceof RoundFigure wide) {
      return inner.sides().stream()
          .allMatch(
              side ->
                  awayM(wide, side.x1M() + dxM, side.y1M() + dyM) <= wide.radiusM() + WRITTEN_M);
    }
    Geometry out = Region.minus(Region.of(inner, dxM, dyM), around);
    return Region.pieces(out, WRITTEN_M).isEmpty();
  }

  /**
   * Returns whether two figures overlap, when the second one's plan origin is put at dx, dy of the
   * first one's plan [m]. Touching, or overlapping by less than 1/16 in, does not count.
   */
  public static boolean overlap(Figure first, Figure second, double dxM, double dyM) {
    if (first instanceof RoundFigure a && second instanceof RoundFigure b) {
      return awayM(a, b.radiusM() + dxM, b.radiusM() + dyM) < a.radiusM() + b.radiusM() - WRITTEN_M;
    }
    if (first instanceof RoundFigure round) {
      return overlap(second, round, -dxM, -dyM);
    }
    if (second instanceof RoundFigure round) {
      Geometry centre = Region.point(round.radiusM() + dxM, round.radiusM() + dyM);
      return Region.of(first).distance(centre) < round.radiusM() - WRITTEN_M;
    }
    Geometry common = Region.common(Region.of(first), Region.of(second, dxM, dyM));
    return !Region.pieces(common, WRITTEN_M).isEmpty();
  }

  private static double awayM(RoundFigure round, double xM, double yM) {
    double dx = xM - round.radiusM();
    double dy = yM - round.radiusM();
    return Math.sqrt(dx * dx + dy * dy);
  }
}
