package org.pourbook.book.in;

import java.util.Optional;
import org.pourbook.job.Kind;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;

/** Checks that a recess or thickening can lie in its slab. */
final class PartChecks {

  private PartChecks() {}

  /** Reports what is wrong with a part at its cells. */
  static void check(Section part, Optional<Section> parent, Cells cells) {
    if (part.kind() == Kind.RECESS && part.drop().isZero() && cells.isSound()) {
      cells.note("Drop", "how far the recess lies below its slab; taken as level with it");
    }
    if (part.kind() == Kind.THICKENING) {
      parent
          .filter(slab -> !part.thickness().isMoreThan(slab.thickness()))
          .ifPresent(
              slab ->
                  cells.refuse(
                      "Thickness",
                      "total depth, more than the slab's " + slab.thickness().inches() + " in"));
    }
    parent.ifPresent(slab -> checkRoom(part, slab, cells));
  }

  private static void checkRoom(Section part, Section slab, Cells cells) {
    if (part.shape() instanceof Shape.Outline) {
      return;
    }
    if (part.position().isEmpty()) {
      if (cells.isBlank("X") && cells.isBlank("Y") && cells.isSound()) {
        cells.note("X", "its place in section " + slab.code() + "; its sizes are trusted");
      }
      return;
    }
    if (part.shape() instanceof Shape.Rectangle inner
        && slab.shape() instanceof Shape.Rectangle outer) {
      Position corner = part.position().get();
      checkRun(cells, "X", corner.x(), inner.length(), outer.length());
      checkRun(cells, "Y", corner.y(), inner.width(), outer.width());
    }
  }

  private static void checkRun(Cells cells, String heading, Length from, Length run, Length room) {
    if (from.nanometres() < 0 || from.plus(run).isMoreThan(room)) {
      cells.refuse(
          heading,
          "a place where the part lies inside its slab, which is "
              + LengthFormat.of(room, cells.units()));
    }
  }
}
