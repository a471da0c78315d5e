package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.List;
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
    if (position.isEmpty()
        || !(shape instanceof Shape.Rectangle part)
        || !(parent.map(Section::shape).orElse(shape) instanceof Shape.Rectangle whole)
        || parent.isEmpty()) {
      return Sides.ALL;
    }
    Length x = position.get().x();
    Length y = position.get().y();
    List<String> inside = new ArrayList<>();
    if (y.isPositive()) {
      inside.add("L1");
    }
    if (x.plus(part.length()).isLessThan(whole.length())) {
      inside.add("W2");
    }
    if (y.plus(part.width()).isLessThan(whole.width())) {
      inside.add("L2");
    }
    if (x.isPositive()) {
      inside.add("W1");
    }
    return inside.size() == 4 ? Sides.ALL : Sides.of(inside);
  }
}
