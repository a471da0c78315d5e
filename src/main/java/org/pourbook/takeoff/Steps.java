package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figures;
import org.pourbook.outline.Placed;
import org.pourbook.takeoff.rule.StepTieBars;

/** How the recesses of a slab interrupt its mat (BAR-1, BAR-5). */
final class Steps {

  private Steps() {}

  /** Returns how far a recess's upper bars lie below its parent's. */
  static Length levels(Job job, Section parent, Section recess) {
    return recess.drop().plus(SteelJob.topCover(job, recess)).minus(SteelJob.topCover(job, parent));
  }

  /** Returns the recesses through which bars of a size do not run on. */
  static List<Section> interrupting(SteelJob steel, Section parent, BarSize bar) {
    Job job = steel.job();
    return job.partsOf(parent).stream()
        .filter(part -> part.kind() == Kind.RECESS)
        .filter(recess -> StepTieBars.isBent(levels(job, parent, recess), bar))
        .toList();
  }

  /** Returns whether a recess's place in its parent is known: one rectangle with a position. */
  static boolean isPlaced(Section recess) {
    return recess.position().isPresent()
        && recess.count() == 1
        && recess.shape() instanceof Shape.Rectangle;
  }

  /** Returns the gap of a placed recess for bars along Length, or across. */
  static MatLine.Gap gap(Section parent, Section recess, boolean along) {
    Shape.Rectangle size = (Shape.Rectangle) recess.shape();
    Position corner = Placed.place(parent, size, recess.position()).orElseThrow();
    Length x = corner.x();
    Length y = corner.y();
    Length farX = x.plus(size.length());
    Length farY = y.plus(size.width());
    return along ? new MatLine.Gap(x, farX, y, farY) : new MatLine.Gap(y, farY, x, farX);
  }

  /** Returns which part of the parent's area the recesses without a known place take. */
  static double unplacedShare(Section parent, List<Section> recesses) {
    double areaM2 =
        recesses.stream()
            .filter(recess -> !isPlaced(recess))
            .mapToDouble(recess -> Figures.of(recess).areaM2() * recess.count())
            .sum();
    return Math.min(1, areaM2 / Figures.of(parent).areaM2());
  }
}
