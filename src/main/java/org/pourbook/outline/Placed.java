package org.pourbook.outline;

import java.util.Optional;
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

  private static final Position ZERO = new Position(Length.ZERO, Length.ZERO);

  /** Returns a part in its parent's plan; empty where its place is not known. */
  public static Optional<Placed> in(Section parent, Section part) {
    return place(parent, part)
        .map(at -> new Placed(Figures.of(part), at.x().metres(), at.y().metres()));
  }

  /** Returns where a part's own origin lies in its parent's plan; empty where it is not known. */
  public static Optional<Position> place(Section parent, Section part) {
    boolean parentDrawn = parent.shape() instanceof Shape.Outline;
    if (part.shape() instanceof Shape.Outline) {
      Position origin = parentDrawn ? ZERO : parent.position().orElse(ZERO);
      return Optional.of(
          new Position(Length.ZERO.minus(origin.x()), Length.ZERO.minus(origin.y())));
    }
    Position corner = parentDrawn ? corner((Shape.Outline) parent.shape()) : ZERO;
    return part.position()
        .map(at -> new Position(at.x().plus(corner.x()), at.y().plus(corner.y())));
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
}
