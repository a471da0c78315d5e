package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.FormedSide.Span;

/** Where sections of a job touch or lie over one another, as far as their positions are known. */
final class SharedSides {

  private SharedSides() {}

  /** Returns whether another slab lies along a side of a slab. */
  static boolean isShared(Job job, Section section, FigureSide side) {
    return !with(job, section, side).isEmpty();
  }

  /**
   * Returns where other slabs lie along a side of a slab, from its first corner; none where places
   * are not known.
   */
  static List<Span> with(Job job, Section section, FigureSide side) {
    FormedSide mine = FormedSide.of(job, section, side);
    if (section.kind() != Kind.SLAB || !mine.placed()) {
      return List.of();
    }
    return job.sections().stream()
        .filter(other -> other.kind() == Kind.SLAB && !other.equals(section))
        .flatMap(other -> Figures.of(other).sides().stream().map(s -> FormedSide.of(job, other, s)))
        .filter(FormedSide::placed)
        .map(mine::sharedWith)
        .filter(span -> !span.isEmpty())
        .toList();
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
}
