package org.pourbook.takeoff;

import java.util.Optional;
import org.pourbook.job.Edge;
import org.pourbook.job.Job;
import org.pourbook.job.Plate;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;

/** How deep the concrete is where a plate's bolts stand (BOLT-3). */
final class DepthUnderPlate {

  private DepthUnderPlate() {}

  /**
   * Returns the depth of the plate's section: its turned-down edge's where it has one, unless the
   * plate's place is written and lies beside the edge; empty for a plate without a section.
   */
  static Optional<Length> of(Job job, Plate plate) {
    return plate
        .section()
        .map(job::section)
        .map(
            section ->
                section
                    .edge()
                    .filter(edge -> isOnEdge(plate, section, edge))
                    .map(Edge::depth)
                    .orElse(section.thickness()));
  }

  private static boolean isOnEdge(Plate plate, Section section, Edge edge) {
    if (plate.start().isEmpty()
        || plate.directionDegrees().isEmpty()
        || section.position().isEmpty()
        || edge.sides().run().isPresent()) {
      return true;
    }
    Position at = section.position().get();
    double x = plate.start().get().x().minus(at.x()).metres();
    double y = plate.start().get().y().minus(at.y()).metres();
    double angle = StrictMath.toRadians(plate.directionDegrees().getAsDouble());
    double endX = x + plate.length().metres() * StrictMath.cos(angle);
    double endY = y + plate.length().metres() * StrictMath.sin(angle);
    double widthM = edge.width().metres();
    return Figures.of(section).sides().stream()
        .filter(FigureSide::turnedDown)
        .anyMatch(side -> distanceM(side, x, y) <= widthM && distanceM(side, endX, endY) <= widthM);
  }

  /** Returns the distance of a point from the line of a side [m]. */
  private static double distanceM(FigureSide side, double x, double y) {
    double dx = side.x2M() - side.x1M();
    double dy = side.y2M() - side.y1M();
    double lengthM = Math.sqrt(dx * dx + dy * dy);
    return lengthM == 0
        ? Double.MAX_VALUE
        : Math.abs(dx * (y - side.y1M()) - dy * (x - side.x1M())) / lengthM;
  }
}
