package org.pourbook.outline;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.measure.Length;

/** Equally spaced parallel lines (BAR-1). */
final class SpacedLines {

  private SpacedLines() {}

  /**
   * Returns the offsets of the fewest equally spaced lines, no further apart than {@code spacingM},
   * with one at each end: ⌈extent/spacing⌉ + 1, counted on whole nanometres; one line in the middle
   * where the extent is not above zero [m].
   */
  static List<Double> between(double firstM, double lastM, double spacingM) {
    Length extent = Length.ofMetres(lastM - firstM);
    Length spacing = Length.ofMetres(spacingM);
    if (!spacing.isPositive()) {
      throw new IllegalArgumentException("spacing must be above zero, was " + spacingM + " m");
    }
    if (!extent.isPositive()) {
      return List.of((firstM + lastM) / 2);
    }
    int spaces = extent.ceilDiv(spacing);
    List<Double> offsets = new ArrayList<>();
    for (int i = 0; i < spaces; i++) {
      offsets.add(firstM + (lastM - firstM) * i / spaces);
    }
    offsets.add(lastM);
    return List.copyOf(offsets);
  }
}
