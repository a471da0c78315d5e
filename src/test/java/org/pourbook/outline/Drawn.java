package org.pourbook.outline;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.job.Shape;
import org.pourbook.job.Shape.SideMark;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

/** Outlines drawn for the tests. */
final class Drawn {

  private Drawn() {}

  /** Returns a ring of points in whole feet, named 1, 2…: x, y, x, y… */
  static Shape.Ring feet(long... coordinates) {
    List<Shape.Point> points = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(
          point(i / 2 + 1, Length.ofFeet(coordinates[i]), Length.ofFeet(coordinates[i + 1])));
    }
    return new Shape.Ring(points);
  }

  static Shape.Ring millimetres(List<long[]> corners) {
    return nanometres(
        corners.stream().map(c -> new long[] {c[0] * Length.MM_NM, c[1] * Length.MM_NM}).toList());
  }

  static Shape.Ring nanometres(List<long[]> corners) {
    List<Shape.Point> points = new ArrayList<>();
    for (long[] corner : corners) {
      points.add(point(points.size() + 1, new Length(corner[0]), new Length(corner[1])));
    }
    return new Shape.Ring(points);
  }

  private static Shape.Point point(int name, Length x, Length y) {
    return new Shape.Point(Integer.toString(name), x, y, SideMark.BY_SECTION);
  }

  static Figure figure(Shape.Ring... rings) {
    return Figures.of(new Shape.Outline(List.of(rings)), Sides.ALL, Sides.NONE);
  }
}
