package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.rule.ControlJoints;

/**
 * One straight control joint of a section.
 *
 * @param across true: it crosses Length, at a distance along it; false: it runs along Length
 * @param at distance from the section's corner (or its plan's origin) to the joint
 */
record JointCut(boolean across, Length at, Length length) {

  /** Returns the joints that make panels no larger than {@code largest}. */
  static List<JointCut> of(Section section, Length largest) {
    if (section.shape() instanceof Shape.Rectangle rectangle) {
      return ofRectangle(rectangle, largest);
    }
    if (section.shape() instanceof Shape.Round round) {
      return ofRound(round, largest);
    }
    return List.of();
  }

  private static List<JointCut> ofRectangle(Shape.Rectangle rectangle, Length largest) {
    ControlJoints.Panels panels =
        ControlJoints.panels(rectangle.length(), rectangle.width(), largest);
    List<JointCut> cuts = new ArrayList<>();
    for (int i = 1; i < panels.alongLength(); i++) {
      Length at = rectangle.length().times(i).dividedBy(panels.alongLength());
      cuts.add(new JointCut(true, at, rectangle.width()));
    }
    for (int i = 1; i < panels.alongWidth(); i++) {
      Length at = rectangle.width().times(i).dividedBy(panels.alongWidth());
      cuts.add(new JointCut(false, at, rectangle.length()));
    }
    return cuts;
  }

  /** The panels of the square about it; each joint is a chord. */
  private static List<JointCut> ofRound(Shape.Round round, Length largest) {
    Length d = round.diameter();
    ControlJoints.Panels panels = ControlJoints.panels(d, d, largest);
    List<JointCut> cuts = new ArrayList<>();
    for (boolean across : new boolean[] {true, false}) {
      int count = across ? panels.alongLength() : panels.alongWidth();
      for (int i = 1; i < count; i++) {
        Length at = d.times(i).dividedBy(count);
        double away = at.metres() - d.metres() / 2;
        double half = Math.sqrt(d.metres() * d.metres() / 4 - away * away);
        cuts.add(new JointCut(across, at, Length.ofMetres(2 * half)));
      }
    }
    return cuts;
  }

  /** Returns its kind as the Joints sheet names it. */
  String what() {
    return across ? "control joint, across Length" : "control joint, along Length";
  }

  /** Returns where it lies. */
  String place(Working working) {
    return working.length(at) + (across ? " along Length" : " along Width");
  }

  /** Returns the sum of their lengths, like ones together: {@code 2 × 24'-0" + 1 × 36'-0"}. */
  static String working(List<JointCut> cuts, Working working) {
    Map<Length, Integer> counts = new LinkedHashMap<>();
    cuts.forEach(cut -> counts.merge(cut.length(), 1, Integer::sum));
    String sum =
        counts.entrySet().stream()
            .map(entry -> entry.getValue() + " × " + working.length(entry.getKey()))
            .collect(Collectors.joining(" + "));
    return counts.size() == 1 ? sum : "(" + sum + ")";
  }
}
