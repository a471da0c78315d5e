package org.pourbook.takeoff;

import org.pourbook.job.Section;

/**
 * Concrete of one named part of a section, all of its count.
 *
 * @param section whose mix, pour and allowance it has
 * @param working without the figure at its end
 */
record Poured(Section section, String what, double m3, String working, String rule) {}
