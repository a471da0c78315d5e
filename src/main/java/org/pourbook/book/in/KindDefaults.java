package org.pourbook.book.in;

import java.util.Optional;
import org.pourbook.job.Edge;
import org.pourbook.job.Finish;
import org.pourbook.job.JointSpacing;
import org.pourbook.job.Kind;
import org.pourbook.job.Position;
import org.pourbook.job.Practice;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.job.Where;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.Figures;
import org.pourbook.outline.Placed;

/** What a section has where its cells are blank, by what it is and where it lies. */
final class KindDefaults {

  private KindDefaults() {}

  static Length base(Kind kind, Optional<Section> parent, Practice practice) {
    return switch (kind) {
      case SLAB -> practice.length(Setting.BASE);
      case RECESS -> parent.map(Section::base).orElse(practice.length(Setting.BASE));
      case THICKENING, FOOTING, PIER -> Length.ZERO;
    };
  }

  static boolean retarder(Kind kind, Where where, Optional<Section> parent, Practice practice) {
    boolean usual = where != Where.OUTSIDE && practice.isYes(Setting.VAPOR_RETARDER);
    return switch (kind) {
      case SLAB -> usual;
      case RECESS -> parent.map(Section::vaporRetarder).orElse(usual);
      case THICKENING, FOOTING, PIER -> false;
    };
  }

  static Finish finish(Kind kind, Where where) {
    if (!kind.isFloor()) {
      return Finish.NONE;
    }
    return where == Where.OUTSIDE ? Finish.BROOM : Finish.TROWEL;
  }

  static JointSpacing joints(Kind kind) {
    return kind.isFloor() ? JointSpacing.BY_RULE : JointSpacing.NONE;
  }

  static Length formHeight(Kind kind, Length drop, Optional<Edge> edge, Length thickness) {
    if (kind == Kind.RECESS && drop.isPositive()) {
      return drop;
    }
    return edge.map(Edge::depth).orElse(thickness);
  }

  /**
   * Returns the sides that are formed: of a recess those inside its parent, where it lies lower.
   */
  static Sides formed(
      Kind kind, Length drop, Shape shape, Optional<Position> position, Optional<Section> parent) {
    return switch (kind) {
      case SLAB -> Sides.ALL;
      case RECESS -> drop.isPositive() ? insideParent(shape, position, parent) : Sides.NONE;
      case THICKENING, FOOTING, PIER -> Sides.NONE;
    };
  }

  private static Sides insideParent(
      Shape shape, Optional<Position> position, Optional<Section> parent) {
    if (shape instanceof Shape.Round || parent.isEmpty()) {
      return Sides.ALL;
    }
    Section slab = parent.get();
    Figure figure = Figures.of(shape);
    return Placed.place(slab, shape, position)
        .map(at -> new Placed(figure, at.x().metres(), at.y().metres()))
        .map(part -> part.sidesInside(Figures.of(slab)))
        .filter(inside -> inside.size() < figure.sides().size())
        .map(Sides::of)
        .orElse(Sides.ALL);
  }
}
