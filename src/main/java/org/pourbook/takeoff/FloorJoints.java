package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.FloorPlan.Line;
import org.pourbook.takeoff.FloorPanels.Panel;
import org.pourbook.takeoff.rule.ControlJoints;

/**
 * The control joints of a floor, as they are listed, bought and drawn (JOINT-1).
 *
 * @param cuts in the order of their numbers
 * @param panels what they leave; none of a circle, whose panels have no sides
 * @param largest panel side
 */
record FloorJoints(List<JointCut> cuts, List<Panel> panels, Length largest) {

  FloorJoints {
    cuts = List.copyOf(cuts);
    panels = List.copyOf(panels);
  }

  /** Returns the joints of a floor; none where it says so. */
  static FloorJoints of(Job job, Section section) {
    Length largest =
        section
            .jointSpacing()
            .largest()
            .orElseGet(() -> ControlJoints.largestSide(section.thickness()));
    if (section.jointSpacing().none()) {
      return new FloorJoints(List.of(), List.of(), largest);
    }
    Working working = new Working(job.units());
    boolean whole = Floors.placedRecesses(job, section).isEmpty();
    if (whole && section.shape() instanceof Shape.Rectangle rectangle) {
      return ofRectangle(rectangle, largest, working);
    }
    if (whole && section.shape() instanceof Shape.Round round) {
      return ofRound(round, largest, working);
    }
    return ofPlan(job, section, largest, working);
  }

  /** The joints of a rectangle without re-entrant corners. */
  private static FloorJoints ofRectangle(
      Shape.Rectangle rectangle, Length largest, Working working) {
    Length length = rectangle.length();
    Length width = rectangle.width();
    ControlJoints.Panels panels = ControlJoints.panels(length, width, largest);
    List<JointCut> cuts = new ArrayList<>();
    for (int i = 1; i < panels.alongLength(); i++) {
      Length at = length.times(i).dividedBy(panels.alongLength());
      cuts.add(JointCut.across(at, Length.ZERO, width, working));
    }
    for (int i = 1; i < panels.alongWidth(); i++) {
      Length at = width.times(i).dividedBy(panels.alongWidth());
      cuts.add(JointCut.along(at, Length.ZERO, length, working));
    }
    Length a = length.dividedBy(panels.alongLength());
    Length b = width.dividedBy(panels.alongWidth());
    Panel panel = new Panel(a.max(b), a.min(b), true);
    return new FloorJoints(cuts, Collections.nCopies(panels.count(), panel), largest);
  }

  /** The joints of a circle: the panels of the square about it; each joint is a chord. */
  private static FloorJoints ofRound(Shape.Round round, Length largest, Working working) {
    Length d = round.diameter();
    ControlJoints.Panels panels = ControlJoints.panels(d, d, largest);
    List<JointCut> cuts = new ArrayList<>();
    for (int i = 1; i < panels.alongLength(); i++) {
      Length at = d.times(i).dividedBy(panels.alongLength());
      Length chord = chord(d, at);
      cuts.add(JointCut.across(at, d.minus(chord).dividedBy(2), chord, working));
    }
    for (int i = 1; i < panels.alongWidth(); i++) {
      Length at = d.times(i).dividedBy(panels.alongWidth());
      Length chord = chord(d, at);
      cuts.add(JointCut.along(at, d.minus(chord).dividedBy(2), chord, working));
    }
    return new FloorJoints(cuts, List.of(), largest);
  }

  private static Length chord(Length diameter, Length at) {
    double away = at.metres() - diameter.metres() / 2;
    return Length.ofMetres(2 * Math.sqrt(diameter.metres() * diameter.metres() / 4 - away * away));
  }

  /** The joints of any other floor, their places from the corner of the rectangle round it. */
  private static FloorJoints ofPlan(Job job, Section section, Length largest, Working working) {
    FloorPanels floor = FloorPanels.of(Floors.plan(job, section), largest);
    Line corner = Floors.roundIt(section);
    List<JointCut> cuts = new ArrayList<>();
    for (Line line : floor.cornerLines()) {
      cuts.add(JointCut.of("control joint, from a re-entrant corner", line, corner, working));
    }
    for (Line line : floor.panelLines()) {
      cuts.add(JointCut.of("control joint, of panels", line, corner, working));
    }
    return new FloorJoints(cuts, floor.panels(), largest);
  }
}
