package org.pourbook.job;

import java.util.Optional;
import org.pourbook.measure.Length;

/**
 * A setting in force for a job.
 *
 * @param shown the value as the Basis sheet shows it, in {@code unit}; empty when a rule decides
 * @param number percent, days, minutes, ratio, count or money as they stand; m3 and m3/h; psi; 1
 *     and 0 for yes and no; NaN when a rule decides or the value is text
 * @param length of a setting that is a length
 * @param source {@code default (CON-6, published)}, or {@code Practice!C7}
 */
public record SettingValue(
    String shown, String unit, double number, Optional<Length> length, String source) {

  /** Returns whether nothing is written and a rule works the value out. */
  public boolean isByRule() {
    return shown.isEmpty();
  }
}
