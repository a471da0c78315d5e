package org.pourbook.outline;

import java.math.BigInteger;
import java.util.List;
import org.pourbook.job.Shape.Point;
import org.pourbook.measure.Length;

/** Tests and areas of written points, exact on their nanometres. */
final class ExactPlane {

  private ExactPlane() {}

  /** Returns the cross product of the ways from a to b and from c to d: above 0 for a left turn. */
  static BigInteger cross(Point a, Point b, Point c, Point d) {
    return product(along(a.x(), b.x()), along(c.y(), d.y()))
        .subtract(product(along(a.y(), b.y()), along(c.x(), d.x())));
  }

  /** Returns the scalar product of the ways from a to b and from c to d. */
  static BigInteger dot(Point a, Point b, Point c, Point d) {
    return product(along(a.x(), b.x()), along(c.x(), d.x()))
        .add(product(along(a.y(), b.y()), along(c.y(), d.y())));
  }

  /** Returns 1 where p lies left of the way from a to b, 0 on its line, −1 right of it. */
  static int sideOf(Point a, Point b, Point p) {
    return cross(a, b, a, p).signum();
  }

  static boolean same(Point a, Point b) {
    return a.x().equals(b.x()) && a.y().equals(b.y());
  }

  /** Returns whether the closed segments a–b and c–d have a point in common. */
  static boolean meet(Point a, Point b, Point c, Point d) {
    if (apart(a.x(), b.x(), c.x(), d.x()) || apart(a.y(), b.y(), c.y(), d.y())) {
      return false;
    }
    return sideOf(a, b, c) * sideOf(a, b, d) <= 0 && sideOf(c, d, a) * sideOf(c, d, b) <= 0;
  }

  /** Returns whether a point that lies on none of the ring's sides is inside the ring. */
  static boolean inside(Point p, List<Point> ring) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      boolean up = b.y().isMoreThan(p.y());
      if (a.y().isMoreThan(p.y()) != up && sideOf(a, b, p) == (up ? 1 : -1)) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Returns twice the area of a ring [nm2]: above 0 where it runs counter-clockwise. */
  static BigInteger twiceArea(List<Point> ring) {
    BigInteger sum = BigInteger.ZERO;
    Point first = ring.get(0);
    for (int i = 1; i + 1 < ring.size(); i++) {
      sum = sum.add(cross(first, ring.get(i), first, ring.get(i + 1)));
    }
    return sum;
  }

  private static boolean apart(Length a, Length b, Length c, Length d) {
    return a.max(b).isLessThan(c.min(d)) || c.max(d).isLessThan(a.min(b));
  }

  private static long along(Length from, Length to) {
    return to.minus(from).nanometres();
  }

  private static BigInteger product(long a, long b) {
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
  }
}
