package org.pourbook.takeoff;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pourbook.measure.Length;
import org.pourbook.outline.FloorPlan.Line;

/**
 * One straight control joint of a section.
 *
 * @param what its kind as the Joints sheet names it
 * @param place where it lies
 * @param line the same in the section's own plan [m]
 */
record JointCut(String what, String place, Length length, Line line) {

  /**
   * Returns a joint across Length.
   *
   * @param at from the corner, along Length
   * @param from where it begins along Width
   */
  static JointCut across(Length at, Length from, Length length, Working working) {
    double x = at.metres();
    return new JointCut(
        "control joint, across Length",
        working.length(at) + " along Length",
        length,
        new Line(x, from.metres(), x, from.plus(length).metres()));
  }

  /** Returns a joint along Length: {@code at} from the corner along Width. */
  static JointCut along(Length at, Length from, Length length, Working working) {
    double y = at.metres();
    return new JointCut(
        "control joint, along Length",
        working.length(at) + " along Width",
        length,
        new Line(from.metres(), y, from.plus(length).metres(), y));
  }

  /** Returns a joint by its line; its place is told from where {@code corner} begins. */
  static JointCut of(String what, Line line, Line corner, Working working) {
    String place =
        "from "
            + point(line.x1M() - corner.x1M(), line.y1M() - corner.y1M(), working)
            + " to "
            + point(line.x2M() - corner.x1M(), line.y2M() - corner.y1M(), working);
    return new JointCut(what, place, Length.ofMetres(line.lengthM()), line);
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
