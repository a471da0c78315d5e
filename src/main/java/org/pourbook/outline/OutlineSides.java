package org.pourbook.outline;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.pourbook.job.Shape;
import org.pourbook.job.Shape.Point;
import org.pourbook.job.Shape.SideMark;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

/** Reads the sides of an outline, turned so that the concrete lies on their left. */
final class OutlineSides {

  private final Sides formed;
  private final Sides turnedDown;

  private OutlineSides(Sides formed, Sides turnedDown) {
    this.formed = formed;
    this.turnedDown = turnedDown;
  }

  /** Returns the sides of a sound outline, each named by the point that it is written from. */
  static List<FigureSide> of(Shape.Outline outline, Sides formed, Sides turnedDown) {
    OutlineSides reading = new OutlineSides(formed, turnedDown);
    List<FigureSide> sides = new ArrayList<>();
    for (int ring = 0; ring < outline.rings().size(); ring++) {
      reading.addRing(sides, outline.rings().get(ring).points(), ring + 1);
    }
    return List.copyOf(sides);
  }

  private void addRing(List<FigureSide> sides, List<Point> written, int ring) {
    List<Point> points = new ArrayList<>(written);
    boolean counterClockwise = ExactPlane.twiceArea(points).signum() > 0;
    boolean turned = counterClockwise != (ring == 1);
    if (turned) {
      Collections.reverse(points);
    }
    int n = points.size();
    for (int i = 0; i < n; i++) {
      Point from = points.get(i);
      Point to = points.get((i + 1) % n);
      double start = insideAngleDeg(points.get((i + n - 1) % n), from, to);
      double end = insideAngleDeg(from, to, points.get((i + 2) % n));
      sides.add(side(turned ? to : from, ring, from, to, start, end));
    }
  }

  private FigureSide side(
      Point writtenFrom, int ring, Point from, Point to, double startDeg, double endDeg) {
    String name = writtenFrom.name();
    SideMark mark = writtenFrom.mark();
    boolean bySection = mark == SideMark.BY_SECTION;
    boolean isFormed =
        mark == SideMark.FORMED
            || ((bySection || mark == SideMark.TURNED_DOWN) && formed.has(name));
    boolean isTurnedDown = mark == SideMark.TURNED_DOWN || (bySection && turnedDown.has(name));
    return new FigureSide(
        name,
        ring,
        length(from, to),
        from.x().metres(),
        from.y().metres(),
        to.x().metres(),
        to.y().metres(),
        startDeg,
        endDeg,
        isFormed,
        isTurnedDown,
        mark == SideMark.EXISTING);
  }

  private static Length length(Point from, Point to) {
    BigInteger square = ExactPlane.dot(from, to, from, to);
    return new Length(Math.round(Math.sqrt(square.doubleValue())));
  }

  /** Returns the angle on the left at a corner; a right angle gives 90 or 270 exactly. */
  private static double insideAngleDeg(Point before, Point corner, Point after) {
    double cross = ExactPlane.cross(before, corner, corner, after).doubleValue();
    double dot = ExactPlane.dot(before, corner, corner, after).doubleValue();
    return 180 - StrictMath.toDegrees(StrictMath.atan2(cross, dot));
  }
}
