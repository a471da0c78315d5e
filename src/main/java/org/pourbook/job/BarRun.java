package org.pourbook.job;

import org.pourbook.measure.BarSize;

/** A number of like bars along a run, or upright in a pier: {@code 2 #4}. */
public record BarRun(int count, BarSize size) {
  public BarRun {
    if (count <= 0) {
      throw new IllegalArgumentException("count must be above zero, was " + count);
    }
  }
}
