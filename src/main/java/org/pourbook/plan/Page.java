package org.pourbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Mark;
import org.pourbook.plan.Drawing.Stroke;

/** The page that marks are put on: plan metres in, points out. */
final class Page {

  static final double MARGIN = 40;

  /** Room for title, legend and notes below the drawing [pt]. */
  static final double FOOT = 96;

  private final List<Mark> marks = new ArrayList<>();
  private final double scale;
  private final double leftM;
  private final double topM;

  /** A page on which all spots have room. */
  Page(List<Places.Spot> spots) {
    double left = spots.stream().mapToDouble(Places.Spot::leastX).min().orElse(0);
    double right = spots.stream().mapToDouble(Places.Spot::mostX).max().orElse(1);
    double bottom = spots.stream().mapToDouble(Places.Spot::leastY).min().orElse(0);
    double top = spots.stream().mapToDouble(Places.Spot::mostY).max().orElse(1);
    double across = (Drawing.PAGE_WIDTH - 2 * MARGIN) / (right - left);
    double up = (Drawing.PAGE_HEIGHT - 2 * MARGIN - FOOT) / (top - bottom);
    this.scale = Math.min(across, up);
    this.leftM = left;
    this.topM = top;
  }

  List<Mark> marks() {
    return marks;
  }

  double x(double xM) {
    return MARGIN + (xM - leftM) * scale;
  }

  double y(double yM) {
    return MARGIN + (topM - yM) * scale;
  }

  /** Returns a length of the plan on the page [pt]. */
  double points(double metres) {
    return metres * scale;
  }

  void line(double x1M, double y1M, double x2M, double y2M, Stroke stroke) {
    marks.add(new Drawing.Line(x(x1M), y(y1M), x(x2M), y(y2M), stroke));
  }

  void words(double x, double y, String text, double size, Anchor anchor) {
    marks.add(new Drawing.Words(x, y, text, size, 0, anchor));
  }

  void dot(double xM, double yM) {
    marks.add(new Drawing.Dot(x(xM), y(yM), 2));
  }

  /**
   * Puts words beside a side, along it and on its right: outside the concrete.
   *
   * @param away from the line to the middle of the letters [pt]; below zero on its left
   */
  void along(
      double x1M, double y1M, double x2M, double y2M, String text, double size, double away) {
    double dx = x(x2M) - x(x1M);
    double dy = y(y2M) - y(y1M);
    double length = Math.sqrt(dx * dx + dy * dy);
    double degrees = StrictMath.toDegrees(StrictMath.atan2(dy, dx));
    double upright = degrees > 90.001 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees;
    marks.add(
        new Drawing.Words(
            (x(x1M) + x(x2M)) / 2 - dy / length * away,
            (y(y1M) + y(y2M)) / 2 + dx / length * away,
            text,
            size,
            upright > 89.999 ? upright - 180 : upright,
            Anchor.MIDDLE));
  }
}
