package org.pourbook.takeoff;

import java.util.Optional;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;

/**
 * Bars of one mark: a row of the Bar list.
 *
 * @param cutLength of one bar
 * @param a first leg, outside (straight bars: the length)
 * @param b second leg or riser
 * @param c third leg
 * @param laps of one bar, within its run
 */
public record BarMark(
    String section,
    String mark,
    BarSize size,
    BarShape shape,
    int count,
    Length cutLength,
    Length a,
    Optional<Length> b,
    Optional<Length> c,
    int laps) {

  /** How a bar is bent. */
  public enum BarShape {
    STRAIGHT("straight"),
    CORNER("corner"),
    STEP("step");

    private final String label;

    BarShape(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }
}
