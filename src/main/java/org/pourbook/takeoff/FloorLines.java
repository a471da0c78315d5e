package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.Figures;
import org.pourbook.outline.FloorPlan;
import org.pourbook.outline.FloorPlan.Line;
import org.pourbook.takeoff.rule.PlacingTime;

/**
 * Lines across a floor in its own plan, as they are drawn [m].
 *
 * @param joints control joints (JOINT-1), in the order of their numbers on the Joints sheet
 * @param strips between the strips in which it is placed (POUR-1)
 * @param middles one along each strip, in the order of placing, in the part of it that lies in the
 *     floor; one alone where the floor is placed in one go
 * @param widest the longest line along X that lies in the floor, of those looked at
 */
public record FloorLines(
    List<Line> joints, List<Line> strips, List<Line> middles, Optional<Line> widest) {

  /** Where a line that lies in a band or a floor is looked for, as shares of its width. */
  private static final double[] SHARES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9};

  /** A line longer by less is not taken for longer [m]. */
  private static final double CLEARLY_M = 0.01;

  public FloorLines {
    joints = List.copyOf(joints);
    strips = List.copyOf(strips);
    middles = List.copyOf(middles);
  }

  /** Returns the lines of a floor. */
  public static FloorLines of(Job job, Section section) {
    List<FloorPlan> floor = Floors.plan(job, section);
    Figure figure = Figures.of(section);
    boolean alongX = figure.extentXM() >= figure.extentYM();
    int strips = strips(job, figure);
    List<Line> middles = new ArrayList<>();
    for (int i = 0; i < strips; i++) {
      longest(section, floor, alongX, strips, i).ifPresent(middles::add);
    }
    return new FloorLines(
        FloorJoints.of(job, section).cuts().stream().map(JointCut::line).toList(),
        parallel(section, floor, alongX, strips),
        middles,
        longest(section, floor, true, 1, 0));
  }

  private static int strips(Job job, Figure figure) {
    Length across = Length.ofMetres(Math.min(figure.extentXM(), figure.extentYM()));
    return PlacingTime.strips(across, job.practice().length(Setting.STRIP_WIDTH));
  }

  /** The longest part of a line along a band that lies in the floor. */
  private static Optional<Line> longest(
      Section section, List<FloorPlan> floor, boolean alongX, int bands, int band) {
    // lines are as long as each other in a rectangle: the first one stands
    Optional<Line> best = Optional.empty();
    for (double share : SHARES) {
      Line line = at(section, alongX, (band + share) / bands);
      for (FloorPlan piece : floor) {
        for (Line part : piece.inside(line)) {
          if (best.isEmpty() || part.lengthM() > best.get().lengthM() + CLEARLY_M) {
            best = Optional.of(part);
          }
        }
      }
      if (best.isPresent() && best.get().lengthM() > line.lengthM() - CLEARLY_M) {
        break; // none can be clearly longer
      }
    }
    return best;
  }

  /** Lines that cut a floor into equal bands. */
  private static List<Line> parallel(
      Section section, List<FloorPlan> floor, boolean alongX, int bands) {
    List<Line> lines = new ArrayList<>();
    for (int i = 1; i < bands; i++) {
      Line line = at(section, alongX, (double) i / bands);
      floor.forEach(piece -> lines.addAll(piece.inside(line)));
    }
    return lines;
  }

  /** A line through the rectangle round a section, at a share of its width. */
  private static Line at(Section section, boolean alongX, double share) {
    Line round = Floors.roundIt(section);
    Figure figure = Figures.of(section);
    double x = round.x1M();
    double y = round.y1M();
    double at = (alongX ? figure.extentYM() : figure.extentXM()) * share;
    return alongX
        ? new Line(x, y + at, x + figure.extentXM(), y + at)
        : new Line(x + at, y, x + at, y + figure.extentYM());
  }
}
