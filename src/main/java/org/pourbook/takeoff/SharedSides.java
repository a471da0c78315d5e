package org.pourbook.takeoff;

import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;

/** Where sections of a job touch or lie over one another, as far as their positions are known. */
final class SharedSides {

  /** Points of two sections closer than this are one point [m]. */
  private static final double SAME_M = 1e-6;

  private SharedSides() {}

  /** Returns whether another slab lies along a side. */
  static boolean isShared(Job job, Section section, FigureSide side) {
    Optional<Position> origin = origin(section);
    if (origin.isEmpty() || section.kind() != Kind.SLAB) {
      return false;
    }
    for (Section other : job.sections()) {
      Optional<Position> otherOrigin = origin(other);
      if (other.kind() == Kind.SLAB && !other.equals(section) && otherOrigin.isPresent()) {
        double dx = metres(otherOrigin.get().x(), origin.get().x());
        double dy = metres(otherOrigin.get().y(), origin.get().y());
        if (Figures.of(other).sides().stream().anyMatch(s -> touch(side, s, dx, dy))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Returns the plan area that two rectangles at known positions have in common [m2]. */
  static Optional<Double> overlapM2(Section a, Section b) {
    if (a.position().isPresent()
        && b.position().isPresent()
        && a.shape() instanceof Shape.Rectangle first
        && b.shape() instanceof Shape.Rectangle second) {
      Position p = a.position().get();
      Position q = b.position().get();
      return Optional.of(
          common(p.x(), first.length(), q.x(), second.length())
              * common(p.y(), first.width(), q.y(), second.width()));
    }
    return Optional.empty();
  }

  private static double common(Length from, Length size, Length otherFrom, Length otherSize) {
    Length start = from.max(otherFrom);
    Length end = from.plus(size).min(otherFrom.plus(otherSize));
    return end.minus(start).max(Length.ZERO).metres();
  }

  /** Outlines are given in the job's plan, rectangles from their corner. */
  private static Optional<Position> origin(Section section) {
    return section.shape() instanceof Shape.Outline
        ? Optional.of(new Position(Length.ZERO, Length.ZERO))
        : section.position();
  }

  private static double metres(Length to, Length from) {
    return to.minus(from).metres();
  }

  /** Whether two sides lie on one line, run against one another and overlap. */
  private static boolean touch(FigureSide a, FigureSide b, double dx, double dy) {
    double length = a.length().metres();
    double ux = (a.x2M() - a.x1M()) / length;
    double uy = (a.y2M() - a.y1M()) / length;
    double startX = b.x1M() + dx - a.x1M();
    double startY = b.y1M() + dy - a.y1M();
    double endX = b.x2M() + dx - a.x1M();
    double endY = b.y2M() + dy - a.y1M();
    boolean onOneLine =
        Math.abs(ux * startY - uy * startX) < SAME_M && Math.abs(ux * endY - uy * endX) < SAME_M;
    double start = ux * startX + uy * startY;
    double end = ux * endX + uy * endY;
    boolean against = end < start;
    double overlap = Math.min(start, length) - Math.max(end, 0);
    return onOneLine && against && overlap > SAME_M;
  }
}
