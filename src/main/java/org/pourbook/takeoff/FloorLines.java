package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.Figures;
import org.pourbook.outline.FloorPlan;
import org.pourbook.outline.FloorPlan.Line;
import org.pourbook.takeoff.rule.ControlJoints;
import org.pourbook.takeoff.rule.PlacingTime;

/**
 * Lines across a floor in its own plan, as they are drawn [m].
 *
 * @param joints control joints (JOINT-1)
 * @param strips between the strips in which it is placed (POUR-1)
 */
public record FloorLines(List<Line> joints, List<Line> strips) {
  public FloorLines {
    joints = List.copyOf(joints);
    strips = List.copyOf(strips);
  }

  /** Returns the lines of a floor. */
  public static FloorLines of(Job job, Section section) {
    List<FloorPlan> floor = Floors.plan(job, section);
    return new FloorLines(joints(section, floor), strips(job, section, floor));
  }

  private static List<Line> joints(Section section, List<FloorPlan> floor) {
    if (section.jointSpacing().none()) {
      return List.of();
    }
    Length largest =
        section
            .jointSpacing()
            .largest()
            .orElseGet(() -> ControlJoints.largestSide(section.thickness()));
    if (section.shape() instanceof Shape.Round round) {
      Length d = round.diameter();
      ControlJoints.Panels panels = ControlJoints.panels(d, d, largest);
      List<Line> lines = new ArrayList<>(parallel(section, floor, false, panels.alongLength()));
      lines.addAll(parallel(section, floor, true, panels.alongWidth()));
      return lines;
    }
    FloorPanels panels = FloorPanels.of(floor, largest);
    List<Line> lines = new ArrayList<>(panels.cornerLines());
    lines.addAll(panels.panelLines());
    return lines;
  }

  private static List<Line> strips(Job job, Section section, List<FloorPlan> floor) {
    Figure figure = Figures.of(section);
    boolean alongX = figure.extentXM() >= figure.extentYM();
    Length across = Length.ofMetres(Math.min(figure.extentXM(), figure.extentYM()));
    int strips = PlacingTime.strips(across, job.practice().length(Setting.STRIP_WIDTH));
    return parallel(section, floor, alongX, strips);
  }

  /** Lines that cut a floor into equal bands. */
  private static List<Line> parallel(
      Section section, List<FloorPlan> floor, boolean alongX, int bands) {
    Figure figure = Figures.of(section);
    boolean round = section.shape() instanceof Shape.Round;
    double x = round ? 0 : figure.sides().stream().mapToDouble(s -> s.x1M()).min().orElse(0);
    double y = round ? 0 : figure.sides().stream().mapToDouble(s -> s.y1M()).min().orElse(0);
    List<Line> lines = new ArrayList<>();
    for (int i = 1; i < bands; i++) {
      double at = (alongX ? figure.extentYM() : figure.extentXM()) * i / bands;
      Line line =
          alongX
              ? new Line(x, y + at, x + figure.extentXM(), y + at)
              : new Line(x + at, y, x + at, y + figure.extentYM());
      floor.forEach(piece -> lines.addAll(piece.inside(line)));
    }
    return lines;
  }
}
