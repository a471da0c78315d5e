package org.pourbook.outline;

import java.util.List;
import java.util.Optional;

/**
 * A surface through measured points over a figure (CON-10).
 *
 * @param mean its mean over the figure: flat triangles between the points (Delaunay), outside their
 *     hull the value at the hull's nearest point
 * @param residualDeviation sample standard deviation of the points about the plane that fits them
 *     best (least squares), so that a tilt is no scatter; n − 3 degrees of freedom
 * @param points number of points n
 */
public record Surface(double mean, double residualDeviation, int points) {

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
    return FlatPlane.fitting(points)
        .map(plane -> new Surface(mean(points, floor), deviation(points, plane), points.size()));
  }

  private static double mean(List<Point> points, List<FloorPlan> floor) {
    List<Patch> patches =
        floor.stream()
            .flatMap(piece -> Triangulation.patches(points, piece.polygon()).stream())
            .toList();
    double area = patches.stream().mapToDouble(Patch::areaM2).sum();
    return patches.stream().mapToDouble(Patch::integral).sum() / area;
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

  /** Returns the standard error of the mean from the residuals about the best plane. */
  public double standardError() {
    return residualDeviation / Math.sqrt(points);
  }
}
