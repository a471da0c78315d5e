package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figures;
import org.pourbook.outline.Placed;
import org.pourbook.outline.Widened;
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

  /** Returns what a recess and the cover round it leave of a bar along Length, or across. */
  static Function<MatLine, Stream<MatLine>> interruption(
      Section parent, Section recess, boolean along, Length cover) {
    Optional<Placed> placed = placed(parent, recess);
    if (placed.isEmpty()) {
      return Stream::of;
    }
    if (recess.shape() instanceof Shape.Rectangle size) {
      MatLine.Gap gap = gap(parent, recess, size, along);
      return line -> line.interruptedBy(gap, cover).stream();
    }
    Widened round = Widened.of(placed.get(), cover.metres(), along);
    return line -> line.without(round.on(line.offset().metres())).stream();
  }

  /** Returns a recess in its parent's plan, where its place is known and there is one of it. */
  private static Optional<Placed> placed(Section parent, Section recess) {
    return recess.count() == 1 ? Placed.in(parent, recess) : Optional.empty();
  }

  private static MatLine.Gap gap(
      Section parent, Section recess, Shape.Rectangle size, boolean along) {
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
            .filter(recess -> placed(parent, recess).isEmpty())
            .mapToDouble(recess -> Figures.of(recess).areaM2() * recess.count())
            .sum();
    return Math.min(1, areaM2 / Figures.of(parent).areaM2());
  }
}
