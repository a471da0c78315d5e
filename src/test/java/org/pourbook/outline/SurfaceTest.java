package org.pourbook.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.outline.Surface.Point;

class SurfaceTest {

  /** Relative; a few rounding errors of the overlay of triangles and outline. */
  private static final double ROUNDING = 1e-12;

  private static final Figure SLAB = rectangle(12_000, 8_000);

  private static Figure rectangle(long lengthMm, long widthMm) {
    return Figures.of(
        new Shape.Rectangle(Length.ofMillimetres(lengthMm), Length.ofMillimetres(widthMm)),
        Sides.ALL,
        Sides.NONE);
  }

  private static Surface surface(Figure figure, Point... points) {
    return Surface.of(List.of(points), figure).orElseThrow();
  }

  @Test
  void aTiltedBaseHasTheDepthOfItsMiddleAndNoScatter() {
    List<Point> points = new ArrayList<>();
    for (double x : new double[] {0, 3.1, 7.4, 12}) {
      for (double y : new double[] {0, 2.7, 8}) {
        points.add(new Point(x, y, 0.1 + 0.004 * x - 0.003 * y));
      }
    }
    Surface surface = Surface.of(points, SLAB).orElseThrow();
    double expected = 0.1 + 0.004 * 6 - 0.003 * 4;
    assertEquals(expected, surface.mean(), expected * ROUNDING);
    assertEquals(0, surface.residualDeviation(), 1e-15);
    assertEquals(9, surface.degreesOfFreedom());
  }

  @Test
  void aTiltedBaseUnderAnOutlineHasTheDepthAtTheOutlinesCentroid() {
    // 9 × 6 m less 6 × 3 m at the upper right: centroid from the two rectangles 9 × 3 and 3 × 3.
    Figure figure =
        Drawn.figure(
            Drawn.millimetres(
                List.of(
                    new long[] {0, 0},
                    new long[] {9000, 0},
                    new long[] {9000, 3000},
                    new long[] {3000, 3000},
                    new long[] {3000, 6000},
                    new long[] {0, 6000})));
    double x = (27 * 4.5 + 9 * 1.5) / 36;
    double y = (27 * 1.5 + 9 * 4.5) / 36;
    List<Point> points = new ArrayList<>();
    for (double[] place :
        new double[][] {{-1, -1}, {10, -1}, {10, 7}, {-1, 7}, {4, 2}, {2.5, 3.3}, {7, 1}}) {
      points.add(new Point(place[0], place[1], 4 + 0.2 * place[0] + 0.1 * place[1]));
    }
    double expected = 4 + 0.2 * x + 0.1 * y;
    assertEquals(expected, Surface.of(points, figure).orElseThrow().mean(), expected * ROUNDING);
  }

  @Test
  void outsideTheHullTheNearestValueHolds() {
    // Depth 1 + x/4 between X = 4 and 8; 2 left of it, 3 right of it: the mean is 2.5.
    Surface surface =
        surface(
            SLAB, new Point(4, 3, 2), new Point(8, 3, 3), new Point(8, 5, 3), new Point(4, 5, 2));
    assertEquals(2.5, surface.mean(), 2.5 * ROUNDING);
    // The same with the rise one way only: a third at 2, a third from 2 to 3, a third of 4 m at 3.
    Surface shifted =
        surface(
            SLAB, new Point(2, 3, 2), new Point(6, 3, 3), new Point(6, 5, 3), new Point(2, 5, 2));
    assertEquals((2 * 2 + 4 * 2.5 + 6 * 3) / 12, shifted.mean(), 3 * ROUNDING);
  }

  @Test
  void cornersBeyondTheHullHaveTheCornersValue() {
    // Pyramid-like: one point high at the corner of the hull; by hand over 4 × 4 m, hull 2 to 4.
    Surface surface =
        surface(
            rectangle(4000, 4000),
            new Point(2, 2, 8),
            new Point(4, 2, 0),
            new Point(4, 4, 0),
            new Point(2, 4, 0));
    // The wedge 2 × 2 at 8; two strips 2 × 2 falling from 8 to 0; over the hull one triangle of
    // 2 m2 with corners 8, 0, 0 and one of zeros, or (cut the other way) two with corners 8, 0, 0.
    double outside = 4 * 8 + 2 * 4 * 4;
    double oneCut = (outside + 2 * 8 / 3.0) / 16;
    double otherCut = (outside + 4 * 8 / 3.0) / 16;
    assertTrue(
        Math.abs(surface.mean() - oneCut) < 1e-12 || Math.abs(surface.mean() - otherCut) < 1e-12,
        () -> "mean " + surface.mean());
  }

  @Test
  void residualsAreTakenAboutTheBestPlane() {
    // On a plane, then +d and −d by turns at the corners and 0 in the middle: residuals ±d.
    double d = 0.006;
    Surface surface =
        surface(
            SLAB,
            new Point(1, 1, 0.10 + d),
            new Point(11, 1, 0.15 - d),
            new Point(11, 7, 0.18 + d),
            new Point(1, 7, 0.13 - d),
            new Point(6, 4, 0.14));
    assertEquals(Math.sqrt(4 * d * d / 2), surface.residualDeviation(), 1e-15);
    // Shares in the mean over 96 m2, by hand: the middle has a third of the hull's 60 m2, 20; the
    // corners the rest by symmetry, 19 each.
    double shares = Math.sqrt(4 * 19 * 19 + 20 * 20) / 96;
    assertEquals(Math.sqrt(4 * d * d / 2) * shares, surface.standardError(), 1e-15);
    assertEquals(2, surface.degreesOfFreedom());
  }

  /** Five checks in a corner tell less of a floor than five all over it. */
  @Test
  void checksCloseTogetherShareInTheMeanAsOne() {
    double near = 1e-6;
    Surface spread = surface(SLAB, corners(0.1, 0.11, 0.1, 0.11));
    List<Point> bunched = new ArrayList<>(List.of(corners(0.1, 0.11, 0.1, 0.11)));
    bunched.add(new Point(near, 0, 0.1));
    bunched.add(new Point(0, near, 0.1));
    Surface more = Surface.of(bunched, SLAB).orElseThrow();
    assertEquals(1.0 / 4, spread.squaredShares(), 1.0 / 16);
    assertTrue(more.squaredShares() > 3.0 / 16 + 1.0 / 16 / 3 - near, () -> "" + more);
    List<Point> twice = new ArrayList<>(List.of(corners(0.1, 0.11, 0.1, 0.11)));
    twice.add(new Point(0, 0, 0.1));
    // the corner's share is an average of two: its square counts half
    double corner = spread.squaredShares() - Surface.of(twice, SLAB).orElseThrow().squaredShares();
    assertTrue(corner > 0.5 / 36 - ROUNDING && corner < 0.5 / 9 + ROUNDING, () -> "" + corner);
  }

  private static Point[] corners(double a, double b, double c, double d) {
    return new Point[] {
      new Point(0, 0, a), new Point(12, 0, b), new Point(12, 8, c), new Point(0, 8, d)
    };
  }

  @Test
  void valuesAtOnePlaceAreAveraged() {
    Surface surface =
        surface(
            SLAB,
            new Point(0, 0, 1),
            new Point(0, 0, 3),
            new Point(12, 0, 2),
            new Point(12, 8, 2),
            new Point(0, 8, 2));
    assertEquals(2, surface.mean(), 2 * ROUNDING);
    assertTrue(surface.residualDeviation() > 0.5);
  }

  @Test
  void pointsInOneLineAndFewerThanFourMakeNoSurface() {
    List<Point> line = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      line.add(new Point(0.3 * i, 0.7 * i + 0.001 * (i % 2), 0.1));
    }
    assertEquals(Optional.empty(), Surface.of(line, SLAB));
    assertEquals(
        Optional.empty(),
        Surface.of(List.of(new Point(0, 0, 1), new Point(1, 0, 1), new Point(0, 1, 1)), SLAB));
  }

  @Test
  void aRoundSlabIsCoveredToo() {
    Figure round = Figures.of(new Shape.Round(Length.ofMillimetres(6000)), Sides.ALL, Sides.NONE);
    Surface surface =
        surface(
            round,
            new Point(0, 0, 1),
            new Point(6, 0, 4),
            new Point(6, 6, 4),
            new Point(0, 6, 1),
            new Point(3, 2, 2.5));
    assertEquals(2.5, surface.mean(), 2.5 * ROUNDING);
  }
}
