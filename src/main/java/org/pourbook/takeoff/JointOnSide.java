package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Section;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;
import org.pourbook.takeoff.FormedSide.Span;

/**
 * Where a joint with bars lies on the side that it names [m from the side's first corner].
 *
 * @param known false where it is shorter than the side and nothing tells its place: it is drawn
 *     from the first corner on, or from where the joint before it ends
 */
public record JointOnSide(Joint joint, double fromM, double toM, boolean known) {

  /** Lengths are written to 1/16 in. */
  private static final double SAME_M = Length.ofInches(1, 16).metres();

  /** Returns the joints on a side, in the order in which they are written. */
  public static List<JointOnSide> of(Job job, Section section, FigureSide side) {
    List<Span> shared = new ArrayList<>(SharedSides.with(job, section, side));
    double sideM = side.length().metres();
    List<JointOnSide> found = new ArrayList<>();
    double next = 0;
    for (Joint joint : job.joints()) {
      if (isOn(joint, section, side)) {
        double lengthM = joint.length().metres();
        Optional<Span> place =
            shared.stream()
                .filter(span -> Math.abs(span.toM() - span.fromM() - lengthM) < SAME_M)
                .findFirst();
        place.ifPresent(shared::remove);
        if (place.isPresent()) {
          found.add(new JointOnSide(joint, place.get().fromM(), place.get().toM(), true));
        } else {
          boolean whole = lengthM > sideM - SAME_M;
          double from = next + lengthM < sideM + SAME_M ? next : 0;
          double to = Math.min(sideM, from + lengthM);
          found.add(new JointOnSide(joint, from, to, whole));
          next = to;
        }
      }
    }
    return List.copyOf(found);
  }

  private static boolean isOn(Joint joint, Section section, FigureSide side) {
    return joint.kind() != JointKind.ISOLATION
        && joint.section().equals(Optional.of(section.code()))
        && joint.side().equals(Optional.of(side.name()));
  }
}
