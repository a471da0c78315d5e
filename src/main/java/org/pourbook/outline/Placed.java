package org.pourbook.outline;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Geometry;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;

/**
 * A figure at a known place in another figure's plan: its own origin lies at dx, dy there [m].
 *
 * <p>X and Y of a part are taken from its parent's corner: of a rectangle that at 0, 0, of an
 * outline the corner of least X and least Y of the rectangle round it. An outline needs no X and Y:
 * the outlines of a job share one plan.
 */
public record Placed(Figure figure, double dxM, double dyM) {

  /** A side nearer than this to another's line lies on it: plans are written to 1/16 in. */
  private static final double ON_SIDE_M = Length.ofInches(1, 16).metres();

  private static final Position ZERO = new Position(Length.ZERO, Length.ZERO);

  /** Returns a part in its parent's plan; empty where its place is not known. */
  public static Optional<Placed> in(Section parent, Section part) {
    return place(parent, part.shape(), part.position())
        .map(at -> new Placed(Figures.of(part), at.x().metres(), at.y().metres()));
  }

  /**
   * Returns where a part's own origin lies in its parent's plan; empty where it is not known.
   *
   * @param written X and Y of the part
   */
  public static Optional<Position> place(Section parent, Shape part, Optional<Position> written) {
    boolean parentDrawn = parent.shape() instanceof Shape.Outline;
    if (part instanceof Shape.Outline) {
      Position origin = parentDrawn ? ZERO : parent.position().orElse(ZERO);
      return Optional.of(
          new Position(Length.ZERO.minus(origin.x()), Length.ZERO.minus(origin.y())));
    }
    Position corner = parentDrawn ? corner((Shape.Outline) parent.shape()) : ZERO;
    return written.map(at -> new Position(at.x().plus(corner.x()), at.y().plus(corner.y())));
  }

  private static Position corner(Shape.Outline outline) {
    Length x = outline.rings().get(0).points().get(0).x();
    Length y = outline.rings().get(0).points().get(0).y();
    for (Shape.Point point : outline.rings().get(0).points()) {
      x = x.min(point.x());
      y = y.min(point.y());
    }
    return new Position(x, y);
  }

  /** Returns whether it lies inside the other figure ({@link Figures#contains}). */
  public boolean isInside(Figure other) {
    return Figures.contains(other, figure, dxM, dyM);
  }

  /** Returns whether it overlaps a figure that is placed in the same plan. */
  public boolean overlaps(Placed other) {
    return Figures.overlap(figure, other.figure, other.dxM - dxM, other.dyM - dyM);
  }

  /**
   * Returns the area that it has in common with a figure that is placed in the same plan [m2].
   * Touching, or overlapping by less than 1/16 in, does not count.
   */
  public double commonM2(Placed other) {
    return isApartFrom(other) || !overlaps(other)
        ? 0
        : Region.common(Region.of(figure, dxM, dyM), Region.of(other.figure, other.dxM, other.dyM))
            .getArea();
  }

  /** Returns whether the rectangles round them already lie beside each other. */
  private boolean isApartFrom(Placed other) {
    return isDrawnOfSides()
        && other.isDrawnOfSides()
        && (isApart(FigureSide::x1M, dxM, other, other.dxM)
            || isApart(FigureSide::y1M, dyM, other, other.dyM));
  }

  private boolean isDrawnOfSides() {
    return !(figure instanceof RoundFigure);
  }

  private boolean isApart(
      ToDoubleFunction<FigureSide> of, double atM, Placed other, double otherAtM) {
    DoubleSummaryStatistics mine = figure.sides().stream().mapToDouble(of).summaryStatistics();
    DoubleSummaryStatistics its = other.figure.sides().stream().mapToDouble(of).summaryStatistics();
    return mine.getMax() + atM <= its.getMin() + otherAtM
        || its.getMax() + otherAtM <= mine.getMin() + atM;
  }

  /** Returns how far a point of the same plan lies from it; 0 inside [m]. */
  public double distanceM(double xM, double yM) {
    return Region.of(figure, dxM, dyM).distance(Region.point(xM, yM));
  }

  /** Returns its region, a little over the sides of the figure round it on which its own lie. */
  Geometry overSides(Figure round) {
    Geometry region = Region.of(figure);
    if (!(figure instanceof RoundFigure)) {
      List<FigureSide> sides = figure.sides();
      region = MovedSides.moved(Region.of(figure), sides, -ON_SIDE_M, s -> isOnSideOf(s, round));
    }
    return Region.moved(region, dxM, dyM);
  }

  private boolean isOnSideOf(FigureSide side, Figure round) {
    return round.sides().stream().anyMatch(outer -> liesOn(side, outer));
  }

  /** Returns the names of its sides that do not lie on a side of the figure round it. */
  public List<String> sidesInside(Figure round) {
    return figure.sides().stream()
        .filter(side -> figure instanceof RoundFigure || !isOnSideOf(side, round))
        .map(FigureSide::name)
        .toList();
  }

  private boolean liesOn(FigureSide side, FigureSide outer) {
    double lengthM = outer.length().metres();
    double ux = (outer.x2M() - outer.x1M()) / lengthM;
    double uy = (outer.y2M() - outer.y1M()) / lengthM;
    double dx = side.x1M() + dxM - outer.x1M();
    double dy = side.y1M() + dyM - outer.y1M();
    double ex = side.x2M() + dxM - outer.x1M();
    double ey = side.y2M() + dyM - outer.y1M();
    double middle = (ux * (dx + ex) + uy * (dy + ey)) / 2;
    return Math.abs(ux * dy - uy * dx) < ON_SIDE_M
        && Math.abs(ux * ey - uy * ex) < ON_SIDE_M
        && middle > 0
        && middle < lengthM;
  }
}
