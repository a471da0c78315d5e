package org.pourbook.takeoff;

import java.util.List;
import java.util.stream.Collectors;
import org.pourbook.job.Edge;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;

/** Cautions where a turned-down edge is hardly what was meant (CON-3). */
final class EdgeCautions {

  private static final String RULE = "CON-3";

  private EdgeCautions() {}

  /** Adds what is told of a section's turned-down edge. */
  static void add(Part part, Job job, Section section) {
    if (section.edge().isEmpty()) {
      return;
    }
    if (EdgeBelow.of(section, job.practice()).isEmpty()) {
      String says = "The turned-down edge is no deeper than the slab: it adds nothing.";
      part.add(new Caution(section.code(), says, RULE));
    } else if (section.shape() instanceof Shape.Outline outline) {
      openings(part, section, section.edge().get(), outline);
    }
  }

  /** All sides are every side, those of openings too; few builders want them there. */
  private static void openings(Part part, Section section, Edge edge, Shape.Outline outline) {
    List<Shape.Ring> rings = outline.rings();
    long sides =
        rings.subList(1, rings.size()).stream()
            .flatMap(ring -> ring.points().stream())
            .filter(point -> point.mark() == Shape.SideMark.BY_SECTION)
            .count();
    if (edge.sides().all() && sides > 0) {
      String outside =
          rings.get(0).points().stream().map(Shape.Point::name).collect(Collectors.joining(", "));
      String says =
          "All sides are turned down, the "
              + sides
              + " of its openings too. If only the outside is meant, write under Edge sides: "
              + outside
              + ".";
      part.add(new Caution(section.code(), says, RULE));
    }
  }
}
