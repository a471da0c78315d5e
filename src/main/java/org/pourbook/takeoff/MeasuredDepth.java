package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.DepthCheck;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Practice;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.outline.FloorPlan;
import org.pourbook.outline.Placed;
import org.pourbook.outline.Surface;
import org.pourbook.takeoff.rule.DepthOrder;

/**
 * What the depth checks of one floor say (CON-10).
 *
 * @param surface through the checks; depths in metres
 * @param used the checks that count
 * @param areaM2 the floor's own area, recesses taken out
 * @param designM3 its volume at the design thickness, with its fall
 */
record MeasuredDepth(
    Section section, Surface surface, List<DepthCheck> used, double areaM2, double designM3) {

  /** Returns what was measured of a floor; empty where fewer than five checks count. */
  static Optional<MeasuredDepth> of(Job job, Section section) {
    List<DepthCheck> used = used(job, section);
    if (!DepthOrder.areEnough(used.size())) {
      return Optional.empty();
    }
    List<Surface.Point> points =
        used.stream()
            .map(c -> new Surface.Point(c.x().metres(), c.y().metres(), c.depth().metres()))
            .toList();
    double areaM2 = Floors.ownAreaM2(job, section);
    return Surface.of(points, Floors.plan(job, section))
        .map(
            surface ->
                new MeasuredDepth(section, surface, used, areaM2, Floors.designM3(job, section)));
  }

  /** Returns the checks of a floor. */
  static List<DepthCheck> written(Job job, Section section) {
    return job.depthChecks().stream()
        .filter(check -> check.section().equals(section.code()))
        .toList();
  }

  /** Returns those of a floor's checks that lie in its flat part: no edge, thickening, recess. */
  static List<DepthCheck> used(Job job, Section section) {
    if (!section.kind().isFloor()) {
      return List.of();
    }
    List<FloorPlan> floor = Floors.plan(job, section);
    return written(job, section).stream()
        .filter(check -> isFlat(job, section, floor, check.x().metres(), check.y().metres()))
        .toList();
  }

  private static boolean isFlat(
      Job job, Section section, List<FloorPlan> floor, double xM, double yM) {
    double slope = job.practice().number(Setting.BASE_BANK_SLOPE);
    double edgeM =
        EdgeBelow.of(section, job.practice())
            .map(below -> below.width().metres() + slope * below.depth().metres())
            .orElse(0.0);
    return floor.stream().anyMatch(piece -> piece.holds(xM, yM))
        && Figures.of(section).sides().stream()
            .filter(FigureSide::turnedDown)
            .allMatch(side -> side.distanceM(xM, yM) > edgeM - NEAR_M)
        && job.partsOf(section).stream().allMatch(part -> isClear(job, section, part, xM, yM));
  }

  private static boolean isClear(Job job, Section section, Section part, double xM, double yM) {
    Length below =
        part.kind() == Kind.THICKENING ? Floors.below(job, part) : Floors.lowerBy(job, part);
    double bankM = job.practice().number(Setting.BASE_BANK_SLOPE) * below.max(Length.ZERO).metres();
    return Placed.in(section, part)
        .filter(placed -> placed.distanceM(xM, yM) < Math.max(bankM, NEAR_M))
        .isEmpty();
  }

  /** A point this near to a part's side lies on it [m]. */
  private static final double NEAR_M = 0.001;

  /** Returns the measured volume of one of it [m3]. */
  double volumeM3() {
    return surface.mean() * areaM2;
  }

  /** Returns the check with the least depth. */
  DepthCheck thinnest() {
    DepthCheck least = used.get(0);
    for (DepthCheck check : used) {
      least = check.depth().isLessThan(least.depth()) ? check : least;
    }
    return least;
  }

  /**
   * Returns what the mean may be short of, at the confidence asked for, as a volume of one [m3].
   */
  double marginM3(Practice practice) {
    return t(practice) * surface.standardError() * areaM2;
  }

  /** Returns Student's t at the confidence asked for. */
  double t(Practice practice) {
    return DepthOrder.t(practice.number(Setting.ORDER_CONFIDENCE), surface.degreesOfFreedom());
  }

  /** Returns what is ordered over the measured volume, in percent of it. */
  double allowancePercent(Practice practice) {
    double order =
        DepthOrder.orderM3(volumeM3(), marginM3(practice), practice.number(Setting.SPILL));
    return (order / volumeM3() - 1) * 100;
  }

  /** Returns how the volume follows, without the figure at its end. */
  String working(Working working) {
    return working.area(areaM2)
        + " × "
        + depth(working, surface.mean())
        + " (mean of "
        + used.size()
        + " depth checks, thinnest "
        + working.small(thinnest().depth())
        + ", standard error "
        + depth(working, surface.standardError())
        + "; design "
        + working.small(section.thickness())
        + " = "
        + working.volume(designM3)
        + ")";
  }

  /** Returns a computed depth: inches, or millimetres. */
  static String depth(Working working, double metres) {
    return working.units().isMetric()
        ? Working.number(metres * 1000) + " mm"
        : Working.number(Length.ofMetres(metres).inches()) + "\"";
  }
}
