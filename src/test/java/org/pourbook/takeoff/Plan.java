package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;

/** Outlines drawn in feet for the tests. */
final class Plan {

  private Plan() {}

  static Shape.Outline outline(Shape.Ring... rings) {
    return new Shape.Outline(List.of(rings));
  }

  /** Returns a ring of points in feet, named 1, 2…: x, y, x, y… */
  static Shape.Ring ring(double... coordinates) {
    List<Shape.Point> points = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(
          new Shape.Point(
              Integer.toString(i / 2 + 1),
              Length.ofInches(coordinates[i] * 12),
              Length.ofInches(coordinates[i + 1] * 12),
              Shape.SideMark.BY_SECTION));
    }
    return new Shape.Ring(points);
  }

  /** Returns a rectangular ring from x, y. */
  static Shape.Ring box(double x, double y, double length, double width) {
    return ring(x, y, x + length, y, x + length, y + width, x, y + width);
  }
}
