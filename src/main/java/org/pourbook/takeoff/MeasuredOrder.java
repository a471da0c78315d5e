package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.job.DepthCheck;
import org.pourbook.job.Job;
import org.pourbook.job.Practice;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.DepthOrder;

/** What depth checks make of the order, and what they warn of (CON-10). */
final class MeasuredOrder {

  private static final String RULE = "CON-10";
  private static final String ACI = "CON-10, ACI 117-10 § 4.5.4";

  private final Part part;
  private final Job job;
  private final Section section;
  private final Working working;

  private MeasuredOrder(Part part, Job job, Section section) {
    this.part = part;
    this.job = job;
    this.section = section;
    this.working = new Working(job.units());
  }

  /** Adds what is told of a section's depth checks. */
  static void add(Part part, Job job, Section section) {
    List<DepthCheck> written = MeasuredDepth.written(job, section);
    if (written.isEmpty()) {
      return;
    }
    MeasuredOrder told = new MeasuredOrder(part, job, section);
    told.leftOut(written);
    MeasuredDepth.of(job, section)
        .ifPresent(
            depth -> {
              told.order(depth);
              told.thinPoints(depth);
              told.thinMean(depth);
            });
  }

  private void leftOut(List<DepthCheck> written) {
    int used = MeasuredDepth.used(job, section).size();
    if (used < written.size()) {
      caution(
          written.size()
              - used
              + " of "
              + written.size()
              + " depth checks lie in an edge, thickening or recess, or outside the floor: left"
              + " out.",
          RULE);
    }
    if (MeasuredDepth.of(job, section).isEmpty()) {
      caution(
          DepthOrder.areEnough(used)
              ? "The depth checks lie in one line: the design thickness is ordered."
              : "Only "
                  + used
                  + " depth checks count, five are asked: the design thickness is"
                  + " ordered.",
          RULE);
    }
  }

  private void order(MeasuredDepth depth) {
    Practice practice = job.practice();
    int times = job.timesOf(section);
    double spill = practice.number(Setting.SPILL);
    double orderM3 = DepthOrder.orderM3(depth.volumeM3(), depth.marginM3(practice), spill) * times;
    Unit unit = working.volumeUnit();
    part.add(
        Quantity.told(
            section.code(),
            "order by depth checks",
            unit.fromBase(orderM3),
            unit,
            "("
                + working.volume(depth.volumeM3())
                + " + t "
                + Working.number(depth.t(practice))
                + " × "
                + MeasuredDepth.depth(working, depth.surface().standardError())
                + " × "
                + working.area(depth.areaM2())
                + ") × "
                + Working.number(1 + spill / 100)
                + working.times(times)
                + ", "
                + Working.number(practice.number(Setting.ORDER_CONFIDENCE))
                + " % confident = "
                + working.volume(orderM3),
            RULE,
            section.pour()));
    if (orderM3 < depth.designM3() * times) {
      caution(
          "The order by depth checks, "
              + working.volume(orderM3)
              + ", is under the net at the design thickness, "
              + working.volume(depth.designM3() * times)
              + ": check the string line and the base.",
          RULE);
    }
  }

  private void thinPoints(MeasuredDepth depth) {
    long thin =
        depth.used().stream()
            .filter(check -> DepthOrder.isThinPoint(check.depth(), section.thickness()))
            .count();
    if (thin > 0) {
      DepthCheck least = depth.thinnest();
      caution(
          thin
              + " of "
              + depth.used().size()
              + " depth checks "
              + (thin == 1 ? "is" : "are")
              + " more than "
              + working.small(DepthOrder.THIN_POINT)
              + " under the thickness of "
              + working.small(section.thickness())
              + "; the thinnest, at X "
              + working.length(least.x())
              + ", Y "
              + working.length(least.y())
              + ", is "
              + working.small(least.depth())
              + ".",
          ACI);
    }
  }

  private void thinMean(MeasuredDepth depth) {
    Length mean = Length.ofMetres(depth.surface().mean());
    if (DepthOrder.isThinMean(mean, section.thickness())) {
      caution(
          "The mean depth of "
              + MeasuredDepth.depth(working, depth.surface().mean())
              + " is more than "
              + working.small(DepthOrder.THIN_MEAN)
              + " under the thickness of "
              + working.small(section.thickness())
              + ".",
          ACI);
    }
  }

  private void caution(String says, String rule) {
    part.add(new Caution(section.code(), says, rule));
  }
}
