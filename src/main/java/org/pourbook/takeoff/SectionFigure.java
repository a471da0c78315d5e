package org.pourbook.takeoff;

import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.pourbook.job.Edge;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;

/** A figure that a cell of Sections gives, with the unit of a bare number there. */
public enum SectionFigure {
  LENGTH("Length", false, SectionFigure::length),
  WIDTH("Width", false, SectionFigure::width),
  DIAMETER("Diameter", false, SectionFigure::diameter),
  THICKNESS("Thickness", true, section -> section.thickness()),
  DROP("Drop", true, section -> section.drop()),
  EDGE_DEPTH("Edge depth", true, section -> section.edge().map(Edge::depth).orElse(null)),
  EDGE_WIDTH("Edge width", true, section -> section.edge().map(Edge::width).orElse(null)),
  BASE("Base", true, section -> section.base()),
  COUNT("Count", false, section -> null);

  private final String heading;
  private final boolean small;
  private final Function<Section, @Nullable Length> length;

  SectionFigure(String heading, boolean small, Function<Section, @Nullable Length> length) {
    this.heading = heading;
    this.small = small;
    this.length = length;
  }

  private static @Nullable Length length(Section section) {
    return section.shape() instanceof Shape.Rectangle plan ? plan.length() : null;
  }

  private static @Nullable Length width(Section section) {
    return section.shape() instanceof Shape.Rectangle plan ? plan.width() : null;
  }

  private static @Nullable Length diameter(Section section) {
    return section.shape() instanceof Shape.Round plan ? plan.diameter() : null;
  }

  /** Returns the heading of the column of Sections. */
  public String heading() {
    return heading;
  }

  /** Returns whether a bare number is feet in an {@code ft-in} job. */
  public boolean isInFeet() {
    return !small && this != COUNT;
  }

  /** Returns the figure of a section as a bare number of its cell; empty where it has none. */
  public OptionalDouble written(Section section, UnitSystem units) {
    if (this == COUNT) {
      return OptionalDouble.of(section.count());
    }
    Length of = length.apply(section);
    if (of == null) {
      return OptionalDouble.empty();
    }
    if (units.isMetric()) {
      return OptionalDouble.of(small ? of.millimetres() : of.metres());
    }
    return OptionalDouble.of(small ? of.inches() : of.feet());
  }

  /** Returns the figure of a section, which must have it. */
  Worked of(Section section, UnitSystem units) {
    double written = written(section, units).orElseThrow();
    if (this == COUNT) {
      return new Worked.Given(section, this, written, 1);
    }
    Unit us = small ? Unit.IN : Unit.FT;
    Unit metric = small ? Unit.MM : Unit.M;
    return new Worked.Given(section, this, written, (units.isMetric() ? metric : us).toBase(1));
  }
}
