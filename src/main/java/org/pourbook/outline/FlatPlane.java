package org.pourbook.outline;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A value that changes evenly over the plan: {@code value} at x, y and a rise along X and Y. */
record FlatPlane(double xM, double yM, double value, double riseX, double riseY) {

  /** Least squared ratio of the spreads across and along a line. */
  private static final double ONE_LINE = 1e-6;

  static FlatPlane level(double value) {
    return new FlatPlane(0, 0, value, 0, 0);
  }

  /** Returns the plane through three points that do not lie in one line. */
  static FlatPlane through(Surface.Point a, Surface.Point b, Surface.Point c) {
    double bx = b.xM() - a.xM();
    double by = b.yM() - a.yM();
    double cx = c.xM() - a.xM();
    double cy = c.yM() - a.yM();
    double bv = b.value() - a.value();
    double cv = c.value() - a.value();
    double cross = bx * cy - by * cx;
    return new FlatPlane(
        a.xM(), a.yM(), a.value(), (bv * cy - cv * by) / cross, (bx * cv - cx * bv) / cross);
  }

  /** Returns the plane that changes from a to b and is level square to that. */
  static FlatPlane along(Surface.Point a, Surface.Point b) {
    double dx = b.xM() - a.xM();
    double dy = b.yM() - a.yM();
    double rise = (b.value() - a.value()) / (dx * dx + dy * dy);
    return new FlatPlane(a.xM(), a.yM(), a.value(), rise * dx, rise * dy);
  }

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
