package org.pourbook.takeoff;

import java.util.Optional;
import org.pourbook.job.Joint;
import org.pourbook.measure.Length;

/**
 * A control joint or a joint between sections: a row of the Joints sheet.
 *
 * @param joint code of a joint of the Joints sheet, or the number of a control joint of the section
 * @param what {@code control joint, across Length}, {@code tie}, …
 * @param depth of the cut or the filler
 * @param bars how many dowels or ties cross it
 */
public record JointLine(
    String section,
    String joint,
    String what,
    Length length,
    Optional<Length> depth,
    int bars,
    String barText,
    String note) {

  /** Returns whether it is the row of a written joint; a control joint may bear the same code. */
  public boolean isOf(Joint written) {
    return joint.equals(written.code()) && what.equals(written.kind().label());
  }
}
