package org.pourbook.job;

import java.util.Optional;
import org.pourbook.measure.Length;

/** Control joints of a section: none, a largest panel side, or (both empty) by rule JOINT-1. */
public record JointSpacing(boolean none, Optional<Length> largest) {
  public static final JointSpacing BY_RULE = new JointSpacing(false, Optional.empty());
  public static final JointSpacing NONE = new JointSpacing(true, Optional.empty());
}
