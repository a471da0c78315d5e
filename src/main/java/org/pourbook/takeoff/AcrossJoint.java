package org.pourbook.takeoff;

import java.util.Locale;
import java.util.Optional;
import org.pourbook.job.Joint;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.takeoff.rule.Dowels.Across;

/** What a joint says of the bars across it, filled up with a rule's. */
final class AcrossJoint {

  private AcrossJoint() {}

  /** Returns whether size, length and spacing are all written. */
  static boolean isWritten(Joint joint) {
    return joint.bar().isPresent() && joint.barLength().isPresent() && joint.spacing().isPresent();
  }

  /** Returns the dowels of a joint; what is not written, or not understood, from the rule. */
  static Across dowel(Joint joint, Across rule) {
    Length length = joint.barLength().orElse(rule.length());
    Length spacing = joint.spacing().orElse(rule.spacing());
    String bar = joint.bar().map(AcrossJoint::trimmed).orElse("");
    Optional<BarSize> asBar = BarSize.named(bar);
    if (asBar.isPresent()) {
      Length diameter = asBar.get().diameter();
      String name = asBar.get().isInchPound() ? inches(diameter) : asBar.get().designation();
      return new Across(name, diameter, length, spacing);
    }
    Optional<BoltSize> asRod = BoltSize.named(bar + " x 999");
    return asRod
        .map(rod -> new Across(rod.diameterName(), rod.diameter(), length, spacing))
        .orElse(new Across(rule.diameterName(), rule.diameter(), length, spacing));
  }

  /** Returns the size that dowels are bought in: {@code 3/4 x 16}, {@code 20 mm x 400}. */
  static String dowelSize(Across dowel) {
    boolean metric = dowel.diameterName().toLowerCase(Locale.ROOT).contains("m");
    String length =
        metric
            ? LengthFormat.millimetres(dowel.length()).replace(" mm", "")
            : inches(dowel.length());
    return dowel.diameterName() + " x " + length;
  }

  private static String inches(Length length) {
    return LengthFormat.inches(length).replace("\"", "");
  }

  private static String trimmed(String bar) {
    return bar.replaceAll("(?i)\\s*(\"|in|inch)\\s*$", "").strip();
  }
}
