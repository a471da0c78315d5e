package org.pourbook.book.in;

import java.util.Optional;
import org.pourbook.job.Edge;
import org.pourbook.job.Kind;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;

/** Reads the turned-down edge of a section. */
final class EdgeCells {

  private EdgeCells() {}

  /** Returns the edge; empty when there is none, or its cells were refused. */
  static Optional<Edge> edge(Cells cells, Kind kind, Length thickness, Optional<Shape> plan) {
    Optional<Length> depth = cells.length("Edge depth");
    Optional<Length> width = cells.length("Edge width");
    Optional<Sides> which = SectionCells.sides(cells, "Edge sides", plan);
    boolean wide = width.filter(Length::isPositive).isPresent();
    if (depth.filter(Length::isPositive).isEmpty()) {
      if (wide && cells.isBlank("Edge depth")) {
        cells.refuse("Edge depth", "the total depth of the turned-down edge");
      }
      return Optional.empty();
    }
    if (kind != Kind.SLAB) {
      cells.refuse("Edge depth", "blank: only a slab has a turned-down edge");
    } else if (!depth.get().isMoreThan(thickness)) {
      String slab = LengthFormat.small(thickness, cells.units());
      cells.refuse("Edge depth", "total depth from the top, more than the slab's " + slab);
    }
    if (cells.isBlank("Edge width") || width.filter(Length::isZero).isPresent()) {
      cells.refuse("Edge width", "the width of the turned-down edge at its bottom, above zero");
    }
    return wide
        ? Optional.of(new Edge(depth.get(), width.get(), which.orElse(Sides.ALL)))
        : Optional.empty();
  }
}
