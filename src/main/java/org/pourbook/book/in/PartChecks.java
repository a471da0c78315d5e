package org.pourbook.book.in;

import java.util.List;
import java.util.Optional;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.UnitSystem;
import org.pourbook.outline.Figures;
import org.pourbook.outline.Placed;

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
    parent
        .filter(slab -> part.position().isEmpty() && !(part.shape() instanceof Shape.Outline))
        .filter(slab -> cells.isBlank("X") && cells.isBlank("Y") && cells.isSound())
        .ifPresent(
            slab ->
                cells.note("X", "its place in section " + slab.code() + "; its sizes are trusted"));
  }

  /**
   * Reports a part that does not lie inside its slab, or that overlaps one before it.
   *
   * @param before the parts of the same slab that stand before it
   * @param row that gives its place: its own, or the first of its outline
   */
  static void checkPlace(
      Section part, Section slab, List<Section> before, TableRow row, JobDraft job) {
    Optional<Placed> placed = Placed.in(slab, part);
    if (placed.isEmpty()) {
      return;
    }
    if (!placed.get().isInside(Figures.of(slab))) {
      String expected = "a place where the part lies inside its slab" + sizes(slab, job.units());
      refuse(row, fitsAlongX(part, slab) ? "Y" : "X", expected, job);
      return;
    }
    before.stream()
        .filter(other -> Placed.in(slab, other).filter(placed.get()::overlaps).isPresent())
        .findFirst()
        .ifPresent(
            other ->
                refuse(row, "X", "a place where the part does not overlap " + other.code(), job));
  }

  private static void refuse(TableRow row, String heading, String expected, JobDraft job) {
    job.refuse(row.place(heading), CellWords.found(row.cell(heading)), expected);
  }

  private static boolean fitsAlongX(Section part, Section slab) {
    return part.shape() instanceof Shape.Rectangle inner
        && slab.shape() instanceof Shape.Rectangle outer
        && part.position().isPresent()
        && part.position().get().x().nanometres() >= 0
        && !part.position().get().x().plus(inner.length()).isMoreThan(outer.length());
  }

  private static String sizes(Section slab, UnitSystem units) {
    return slab.shape() instanceof Shape.Rectangle size
        ? ", which is "
            + LengthFormat.of(size.length(), units)
            + " x "
            + LengthFormat.of(size.width(), units)
        : "";
  }
}
