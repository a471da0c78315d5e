package org.pourbook.outline;

import org.pourbook.job.Edge;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;

/** Makes figures of shapes. */
public final class Figures {

  private Figures() {}

  /** Returns the figure of a section's plan, its sides marked as the section says. */
  public static Figure of(Section section) {
    return of(
        section.shape(), section.formed(), section.edge().map(Edge::sides).orElse(Sides.NONE));
  }

  /** Returns the figure of a shape whose sides are formed and turned down where said. */
  static Figure of(Shape shape, Sides formed, Sides turnedDown) {
    if (shape instanceof Shape.Rectangle rectangle) {
      return RectangleFigure.of(rectangle, formed, turnedDown);
    }
    if (shape instanceof Shape.Round round) {
      return RoundFigure.of(round, formed, turnedDown);
    }
    throw new UnsupportedOperationException("outlines are not made yet");
  }
}
