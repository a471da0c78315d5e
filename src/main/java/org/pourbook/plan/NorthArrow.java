package org.pourbook.plan;

import java.util.Optional;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Stroke;

/** The arrow to north, in the upper right corner of the page. */
record NorthArrow(double degrees) {

  /** Room that it takes on the right of the plan [pt]. */
  static final double ROOM = 52;

  /** From its middle to its head, and to the middle of its letter [pt]. */
  private static final double HALF = 14;

  private static final double LETTER = 21;

  /** Length of a stroke of its head, and its angle to the arrow [pt, degrees]. */
  private static final double HEAD = 8;

  private static final double HEAD_DEGREES = 155;

  /** Returns the arrow of a job's setting; none where it is blank. */
  static Optional<NorthArrow> of(Practice practice) {
    double degrees = practice.number(Setting.NORTH);
    return Double.isNaN(degrees) ? Optional.empty() : Optional.of(new NorthArrow(degrees));
  }

  void add(Page page) {
    double x = Drawing.WIDTH - ROOM / 2;
    double y = ROOM / 2;
    double headX = x + right(degrees, HALF);
    double headY = y - up(degrees, HALF);
    line(page, x - right(degrees, HALF), y + up(degrees, HALF), headX, headY);
    for (double turn : new double[] {HEAD_DEGREES, -HEAD_DEGREES}) {
      double toX = headX + right(degrees + turn, HEAD);
      line(page, headX, headY, toX, headY - up(degrees + turn, HEAD));
    }
    page.words(x + right(degrees, LETTER), y - up(degrees, LETTER), "N", 9, Anchor.MIDDLE);
  }

  private static void line(Page page, double x1, double y1, double x2, double y2) {
    page.put(new Drawing.Line(x1, y1, x2, y2, Stroke.SIDE));
  }

  private static double right(double degrees, double length) {
    return length * StrictMath.sin(StrictMath.toRadians(degrees));
  }

  private static double up(double degrees, double length) {
    return length * StrictMath.cos(StrictMath.toRadians(degrees));
  }
}
