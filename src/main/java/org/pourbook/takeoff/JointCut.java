package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.FloorPlan.Line;
import org.pourbook.takeoff.FloorPanels.Panel;
import org.pourbook.takeoff.rule.ControlJoints;

/**
 * One straight control joint of a section.
 *
 * @param what its kind as the Joints sheet names it
 * @param place where it lies
 */
record JointCut(String what, String place, Length length) {

  /** The joints of a floor and the panels between them. */
  record Cuts(List<JointCut> joints, List<Panel> panels) {
    Cuts {
      joints = List.copyOf(joints);
      panels = List.copyOf(panels);
    }
  }

  /** Returns the joints of a rectangle without re-entrant corners. */
  static Cuts ofRectangle(Shape.Rectangle rectangle, Length largest, Working working) {
    ControlJoints.Panels panels =
        ControlJoints.panels(rectangle.length(), rectangle.width(), largest);
    List<JointCut> cuts = new ArrayList<>();
    for (int i = 1; i < panels.alongLength(); i++) {
      Length at = rectangle.length().times(i).dividedBy(panels.alongLength());
      cuts.add(across(at, rectangle.width(), working));
    }
    for (int i = 1; i < panels.alongWidth(); i++) {
      Length at = rectangle.width().times(i).dividedBy(panels.alongWidth());
      cuts.add(along(at, rectangle.length(), working));
    }
    Length a = rectangle.length().dividedBy(panels.alongLength());
    Length b = rectangle.width().dividedBy(panels.alongWidth());
    Panel panel = new Panel(a.max(b), a.min(b), true);
    return new Cuts(cuts, Collections.nCopies(panels.count(), panel));
  }

  /** Returns the joints of a circle: the panels of the square about it; each joint is a chord. */
  static Cuts ofRound(Shape.Round round, Length largest, Working working) {
    Length d = round.diameter();
    ControlJoints.Panels panels = ControlJoints.panels(d, d, largest);
    List<JointCut> cuts = new ArrayList<>();
    for (int i = 1; i < panels.alongLength(); i++) {
      Length at = d.times(i).dividedBy(panels.alongLength());
      cuts.add(across(at, chord(d, at), working));
    }
    for (int i = 1; i < panels.alongWidth(); i++) {
      Length at = d.times(i).dividedBy(panels.alongWidth());
      cuts.add(along(at, chord(d, at), working));
    }
    return new Cuts(cuts, List.of());
  }

  private static Length chord(Length diameter, Length at) {
    double away = at.metres() - diameter.metres() / 2;
    return Length.ofMetres(2 * Math.sqrt(diameter.metres() * diameter.metres() / 4 - away * away));
  }

  /** Returns the joints of any other floor. */
  static Cuts of(FloorPanels floor, Working working) {
    List<JointCut> cuts = new ArrayList<>();
    floor
        .cornerLines()
        .forEach(line -> cuts.add(of("control joint, from a re-entrant corner", line, working)));
    floor.panelLines().forEach(line -> cuts.add(of("control joint, of panels", line, working)));
    return new Cuts(cuts, floor.panels());
  }

  private static JointCut across(Length at, Length length, Working working) {
    return new JointCut(
        "control joint, across Length", working.length(at) + " along Length", length);
  }

  private static JointCut along(Length at, Length length, Working working) {
    return new JointCut("control joint, along Length", working.length(at) + " along Width", length);
  }

  private static JointCut of(String what, Line line, Working working) {
    String place =
        "from "
            + point(line.x1M(), line.y1M(), working)
            + " to "
            + point(line.x2M(), line.y2M(), working);
    return new JointCut(what, place, Length.ofMetres(line.lengthM()));
  }

  private static String point(double x, double y, Working working) {
    return "X " + working.length(Length.ofMetres(x)) + ", Y " + working.length(Length.ofMetres(y));
  }

  /** Returns the sum of their lengths, like ones together: {@code 2 × 24'-0" + 1 × 36'-0"}. */
  static String working(List<JointCut> cuts, Working working) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    cuts.forEach(cut -> counts.merge(working.length(cut.length()), 1, Integer::sum));
    String sum =
        counts.entrySet().stream()
            .map(entry -> entry.getValue() + " × " + entry.getKey())
            .collect(Collectors.joining(" + "));
    return counts.size() == 1 ? sum : "(" + sum + ")";
  }
}
