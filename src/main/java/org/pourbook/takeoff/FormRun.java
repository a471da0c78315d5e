package org.pourbook.takeoff;

import org.pourbook.job.Section;
import org.pourbook.measure.Length;

/**
 * A straight line of formwork of a section (FORM-1).
 *
 * @param times how many of the section there are in the job
 * @param side name of the side, e.g. {@code side L1}
 * @param length of the side, or of the part of it that is formed here
 * @param face height of the face to be formed
 * @param end what the boards do at the run's last corner
 * @param bend how the run lies
 */
record FormRun(
    Section section, int times, String side, Length length, Length face, BoardEnd end, Bend bend) {

  /** Returns the run without the name of its side: equal for sides that are formed alike. */
  FormRun ofAnySide() {
    return new FormRun(section, times, "", length, face, end, bend);
  }

  /** How a run lies. */
  enum Bend {
    /** On the ground, around the concrete. */
    STRAIGHT,
    /** Hung at the step of a recess, above its concrete. */
    HUNG,
    /** Bent round, closed in itself. */
    ROUND,
    /** Bent round and hung. */
    ROUND_HUNG;

    boolean isRound() {
      return this == ROUND || this == ROUND_HUNG;
    }

    boolean isHung() {
      return this == HUNG || this == ROUND_HUNG;
    }
  }
}
