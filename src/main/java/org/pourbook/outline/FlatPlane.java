package org.pourbook.outline;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A value that changes evenly over the plan: {@code value} at x, y and a rise along X and Y. */
record FlatPlane(double xM, double yM, double value, double riseX, double riseY) {

  /** Least squared ratio of the spreads across and along a line. */
  private static final double ONE_LINE = 1e-6;

  /**
   * Returns the plane with the least squared residuals, empty where the points spread across a line
   * by less than a thousandth of what they spread along it.
   */
  static Optional<FlatPlane> fitting(List<Surface.Point> points) {
    double x = mean(points, Surface.Point::xM);
    double y = mean(points, Surface.Point::yM);
    double v = mean(points, Surface.Point::value);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double xv = 0;
    double yv = 0;
    for (Surface.Point point : points) {
      double dx = point.xM() - x;
      double dy = point.yM() - y;
      double dv = point.value() - v;
      xx += dx * dx;
      xy += dx * dy;
      yy += dy * dy;
      xv += dx * dv;
      yv += dy * dv;
    }
    double det = xx * yy - xy * xy;
    if (det <= ONE_LINE * (xx + yy) * (xx + yy)) {
      return Optional.empty();
    }
    return Optional.of(
        new FlatPlane(x, y, v, (xv * yy - yv * xy) / det, (yv * xx - xv * xy) / det));
  }

  private static double mean(List<Surface.Point> points, ToDoubleFunction<Surface.Point> of) {
    return points.stream().mapToDouble(of).sum() / points.size();
  }

  double at(double atXM, double atYM) {
    return value + riseX * (atXM - xM) + riseY * (atYM - yM);
  }
}
