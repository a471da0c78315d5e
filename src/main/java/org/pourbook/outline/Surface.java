package org.pourbook.outline;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A surface through measured points over a figure (CON-10).
 *
 * @param mean its mean over the figure: flat triangles between the points (Delaunay), outside their
 *     hull the value at the hull's nearest point
 * @param residualDeviation sample standard deviation of the points about the plane that fits them
 *     best (least squares), so that a tilt is no scatter; n − 3 degrees of freedom
 * @param points number of points n
 * @param squaredShares sum of the squares of the shares that the points have in the mean: 1/n where
 *     all count alike, more where some stand for a larger part of the figure than others
 */
public record Surface(double mean, double residualDeviation, int points, double squaredShares) {

  /** A measured point in the figure's plan; the value may be in any unit. */
  public record Point(double xM, double yM, double value) {}

  /**
   * Returns the surface, empty for fewer than four points and for points that lie, near enough, in
   * one line.
   */
  public static Optional<Surface> of(List<Point> points, Figure figure) {
    return of(points, FloorPlan.of(figure, List.of()));
  }

  /** Returns the same over the pieces of a floor. */
  public static Optional<Surface> of(List<Point> points, List<FloorPlan> floor) {
    if (points.size() < 4) {
      return Optional.empty();
    }
    return FlatPlane.fitting(points).map(plane -> through(points, plane, floor));
  }

  private static Surface through(List<Point> points, FlatPlane plane, List<FloorPlan> floor) {
    double mean = 0;
    double squares = 0;
    for (Map.Entry<Point, Double> share : shares(points, floor).entrySet()) {
      Point place = share.getKey();
      double taken =
          points.stream().filter(p -> p.xM() == place.xM() && p.yM() == place.yM()).count();
      mean += share.getValue() * place.value();
      squares += share.getValue() * share.getValue() / taken;
    }
    return new Surface(mean, deviation(points, plane), points.size(), squares);
  }

  /** Returns the shares of the places that were measured in the mean over a floor. */
  private static Map<Point, Double> shares(List<Point> points, List<FloorPlan> floor) {
    List<Patch> patches =
        floor.stream()
            .flatMap(piece -> Triangulation.patches(points, piece.polygon()).stream())
            .toList();
    double area = patches.stream().mapToDouble(Patch::areaM2).sum();
    Map<Point, Double> sums = new LinkedHashMap<>();
    for (Patch patch : patches) {
      double[] shares = patch.shares();
      for (int i = 0; i < shares.length; i++) {
        sums.merge(patch.held().get(i), shares[i] * patch.areaM2() / area, Double::sum);
      }
    }
    return sums;
  }

  private static double deviation(List<Point> points, FlatPlane plane) {
    double squares = 0;
    for (Point point : points) {
      double residual = point.value() - plane.at(point.xM(), point.yM());
      squares += residual * residual;
    }
    return Math.sqrt(squares / (points.size() - 3));
  }

  public int degreesOfFreedom() {
    return points - 3;
  }

  /**
   * Returns the standard error of the mean from the residuals about the best plane: each point's
   * error counts by its share in the mean.
   */
  public double standardError() {
    return residualDeviation * Math.sqrt(squaredShares);
  }
}
