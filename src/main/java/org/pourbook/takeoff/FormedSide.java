package org.pourbook.takeoff;

import java.util.Optional;
import java.util.function.Predicate;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;

/**
 * A side of a section's figure that the section says is formed, in the job's plan.
 *
 * @param xM of its first corner in the job's plan [m]; of a section without a position in its own
 * @param placed whether that plan is the job's
 */
record FormedSide(Section section, FigureSide side, double xM, double yM, boolean placed) {

  /** Sides closer than this lie on one line, and shorter pieces of a side are none [m]. */
  static final double NEAR_M = 0.001;

  static FormedSide of(Job job, Section section, FigureSide side) {
    boolean placed =
        section.partOf().isEmpty()
            && job.timesOf(section) == 1
            && !(section.shape() instanceof Shape.Round)
            && (section.position().isPresent() || section.shape() instanceof Shape.Outline);
    Position at = origin(section);
    return new FormedSide(
        section, side, side.x1M() + at.x().metres(), side.y1M() + at.y().metres(), placed);
  }

  /**
   * Returns where a section's own plan begins in the job's: outlines are drawn in the job's plan,
   * rectangles from their corner.
   */
  private static Position origin(Section section) {
    Position zero = new Position(Length.ZERO, Length.ZERO);
    return section.shape() instanceof Shape.Outline ? zero : section.position().orElse(zero);
  }

  /** Returns the height of the face: a turned-down edge's only where the edge is turned down. */
  Length face() {
    boolean ofEdge =
        section.edge().map(edge -> edge.depth().equals(section.formHeight())).orElse(false);
    return ofEdge && !side.turnedDown() ? section.thickness() : section.formHeight();
  }

  /**
   * Returns the span of this side, in metres from its first corner, along which {@code other} lies
   * on the same line the other way round; empty (to ≤ from) where there is none.
   */
  Span sharedWith(FormedSide other) {
    double lengthM = side.length().metres();
    double ux = (side.x2M() - side.x1M()) / lengthM;
    double uy = (side.y2M() - side.y1M()) / lengthM;
    double dx = other.xM - xM;
    double dy = other.yM - yM;
    double ex = dx + other.side.x2M() - other.side.x1M();
    double ey = dy + other.side.y2M() - other.side.y1M();
    boolean onOneLine =
        Math.abs(ux * dy - uy * dx) < NEAR_M && Math.abs(ux * ey - uy * ex) < NEAR_M;
    double from = ux * ex + uy * ey;
    double to = ux * dx + uy * dy;
    return onOneLine && to > from
        ? new Span(Math.max(0, from), Math.min(lengthM, to))
        : new Span(0, 0);
  }

  /** Returns the joint of some kinds that lies on this side, if any. */
  Optional<Joint> joint(Job job, Predicate<Joint> which) {
    return job.joints().stream()
        .filter(which)
        .filter(joint -> joint.section().equals(Optional.of(section.code())))
        .filter(joint -> joint.side().equals(Optional.of(side.name())))
        .findFirst();
  }

  /** A part of a side, in metres from its first corner. */
  record Span(double fromM, double toM) {
    boolean isEmpty() {
      return toM - fromM < NEAR_M;
    }
  }
}
