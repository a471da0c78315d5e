package org.pourbook.takeoff;

import java.util.OptionalDouble;
import org.pourbook.job.Section;

/**
 * Concrete of one named part of a section, all of its count.
 *
 * @param section whose mix, pour and allowance it has
 * @param worked its volume [m3]
 * @param working without the figure at its end
 * @param allowancePercent by depth checks, in place of the section's (CON-10)
 */
record Poured(
    Section section,
    String what,
    Worked worked,
    String working,
    String rule,
    OptionalDouble allowancePercent) {

  Poured(Section section, String what, Worked worked, String working, String rule) {
    this(section, what, worked, working, rule, OptionalDouble.empty());
  }

  double m3() {
    return worked.value();
  }
}
