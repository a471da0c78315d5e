package org.pourbook.book.in;

import java.util.Optional;
import org.pourbook.job.Kind;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;

/** Reads the plan of a section: Length and Width, Diameter, or an outline. */
final class ShapeCells {

  private ShapeCells() {}

  /** Returns the shape; empty when its cells were refused. */
  static Optional<Shape> shape(
      Cells cells, String code, Kind kind, OutlineRows outlines, JobDraft job) {
    Optional<Length> length = cells.feet("Length");
    Optional<Length> width = cells.feet("Width");
    Optional<Length> diameter = cells.feet("Diameter");
    boolean sized = !cells.isBlank("Length") || !cells.isBlank("Width");
    if (outlines.has(code)) {
      return outline(cells, code, outlines, job, length, width);
    }
    if (!cells.isBlank("Diameter")) {
      if (sized) {
        cells.refuse("Diameter", "Length and Width, or Diameter, not both");
      } else if (kind == Kind.THICKENING) {
        cells.refuse("Diameter", "blank: a thickening has Length and Width");
      }
      return diameter.map(Shape.Round::new);
    }
    String needed = kind == Kind.PIER ? "; or a Diameter" : "; or an outline on sheet Outlines";
    if (cells.isBlank("Length")) {
      cells.refuse("Length", "a length above zero" + needed);
    }
    if (cells.isBlank("Width")) {
      cells.refuse("Width", "a width above zero" + needed);
    }
    return length.isPresent() && width.isPresent()
        ? Optional.of(new Shape.Rectangle(length.get(), width.get()))
        : Optional.empty();
  }

  private static Optional<Shape> outline(
      Cells cells,
      String code,
      OutlineRows outlines,
      JobDraft job,
      Optional<Length> length,
      Optional<Length> width) {
    if (!cells.isBlank("Diameter")) {
      cells.refuse("Diameter", "blank: the section has an outline");
    }
    Optional<Shape.Outline> outline = outlines.of(code, job);
    outline.ifPresent(
        shape -> {
          refuseOther(cells, "Length", length, extent(shape, true));
          refuseOther(cells, "Width", width, extent(shape, false));
        });
    return outline.map(shape -> shape);
  }

  /** Sizes that agree with the outline do no harm; others contradict it. */
  private static void refuseOther(
      Cells cells, String heading, Optional<Length> written, Length extent) {
    if (written.isPresent() && !written.get().equals(extent)) {
      cells.refuse(
          heading, "blank: the section has an outline, " + LengthFormat.of(extent, cells.units()));
    }
  }

  private static Length extent(Shape.Outline outline, boolean along) {
    Length least = new Length(Long.MAX_VALUE / 4);
    Length most = new Length(-Long.MAX_VALUE / 4);
    for (Shape.Point point : outline.rings().get(0).points()) {
      Length at = along ? point.x() : point.y();
      least = least.min(at);
      most = most.max(at);
    }
    return most.minus(least);
  }
}
