package org.pourbook.outline;

import org.locationtech.jts.geom.Coordinate;
import org.pourbook.outline.FloorPlan.Line;

/**
 * A rectangle that may lie askew in the plan: its corner, the direction of its length, its sides
 * [m].
 */
public record Frame(
    double cornerXM, double cornerYM, double ux, double uy, double lengthM, double widthM) {

  /** Sides that differ by less are equally long; the first of them is taken [m]. */
  private static final double SAME_M = 1e-6;

  /** Returns the rectangle round a closed ring along the ring's longest side. */
  static Frame round(Coordinate[] ring) {
    double longest = 0;
    double ux = 1;
    double uy = 0;
    for (int i = 0; i + 1 < ring.length; i++) {
      double side = ring[i].distance(ring[i + 1]);
      if (side > longest + SAME_M) {
        longest = side;
        ux = (ring[i + 1].x - ring[i].x) / side;
        uy = (ring[i + 1].y - ring[i].y) / side;
      }
    }
    // Turned by right angles until it runs along X, or rises from it by less than that.
    while (ux <= Math.abs(uy) * SAME_M || uy < -SAME_M) {
      double turned = -uy;
      uy = ux;
      ux = turned;
    }
    return round(ring, ux, uy);
  }

  private static Frame round(Coordinate[] ring, double ux, double uy) {
    double leastU = Double.POSITIVE_INFINITY;
    double leastV = Double.POSITIVE_INFINITY;
    double mostU = Double.NEGATIVE_INFINITY;
    double mostV = Double.NEGATIVE_INFINITY;
    for (Coordinate point : ring) {
      double u = ux * point.x + uy * point.y;
      double v = ux * point.y - uy * point.x;
      leastU = Math.min(leastU, u);
      leastV = Math.min(leastV, v);
      mostU = Math.max(mostU, u);
      mostV = Math.max(mostV, v);
    }
    return new Frame(
        ux * leastU - uy * leastV,
        uy * leastU + ux * leastV,
        ux,
        uy,
        mostU - leastU,
        mostV - leastV);
  }

  /** Returns how far a point lies from the corner along the length. */
  public double alongM(double xM, double yM) {
    return ux * (xM - cornerXM) + uy * (yM - cornerYM);
  }

  /** Returns how far a point lies from the corner along the width. */
  public double acrossM(double xM, double yM) {
    return ux * (yM - cornerYM) - uy * (xM - cornerXM);
  }

  /** Returns the line across the length, or along it, at a distance from the corner. */
  public Line line(boolean acrossLength, double atM) {
    return acrossLength ? line(atM, 0, atM, widthM) : line(0, atM, lengthM, atM);
  }

  private Line line(double u1, double v1, double u2, double v2) {
    return new Line(x(u1, v1), y(u1, v1), x(u2, v2), y(u2, v2));
  }

  private double x(double u, double v) {
    return cornerXM + ux * u - uy * v;
  }

  private double y(double u, double v) {
    return cornerYM + uy * u + ux * v;
  }
}
