package org.pourbook.outline;

import org.locationtech.jts.geom.Coordinate;
import org.pourbook.measure.Length;

/**
 * One side of a figure, from its first corner to the next, counter-clockwise round the outside.
 *
 * @param name {@code L1, W2, L2, W1} of a rectangle, the point's name of an outline, {@code round}
 * @param ring 1 outside, 2… openings
 * @param startAngleDeg inside angle at the first corner [degrees]: 90 at a rectangle's corner, 270
 *     at a re-entrant one; 180 where there is no corner (round)
 * @param endAngleDeg inside angle at the last corner
 * @param formed a board stands along it
 * @param turnedDown the slab's edge is turned down along it
 * @param existing it lies against existing concrete
 */
public record FigureSide(
    String name,
    int ring,
    Length length,
    double x1M,
    double y1M,
    double x2M,
    double y2M,
    double startAngleDeg,
    double endAngleDeg,
    boolean formed,
    boolean turnedDown,
    boolean existing) {

  /**
   * A turn of less than a degree is no corner: points are written to 1/16 in, so one on a straight
   * line seldom lies exactly on it.
   */
  private static final double NO_CORNER_DEG = 1;

  /** Returns how far a point lies from the side [m]. */
  public double distanceM(double xM, double yM) {
    return Region.segment(new Coordinate(x1M, y1M), new Coordinate(x2M, y2M))
        .distance(Region.point(xM, yM));
  }

  /** Returns whether the side's last corner is an outside corner. */
  public boolean endsAtOutsideCorner() {
    return endAngleDeg < 180 - NO_CORNER_DEG;
  }

  public boolean startsAtReentrantCorner() {
    return startAngleDeg > 180 + NO_CORNER_DEG;
  }

  public boolean endsAtReentrantCorner() {
    return endAngleDeg > 180 + NO_CORNER_DEG;
  }
}
