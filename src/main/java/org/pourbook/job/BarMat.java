package org.pourbook.job;

import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;

/**
 * A mat of bars: those that run along Length, and those across (along Width), each at a spacing.
 *
 * <p>{@code #4 @ 16 EW} has both alike; {@code #4 @ 12 x #3 @ 18} is along x across.
 */
public record BarMat(BarSize along, Length alongSpacing, BarSize across, Length acrossSpacing) {
  public BarMat {
    if (!alongSpacing.isPositive() || !acrossSpacing.isPositive()) {
      throw new IllegalArgumentException("bar spacing must be above zero");
    }
  }
}
