package org.pourbook.job;

import java.util.List;
import org.pourbook.measure.Length;

/** The plan of a section. X runs along Length, Y along Width. */
public sealed interface Shape {

  /** A rectangle; its sides are L1 (at Y = 0), W2 (at X = length), L2, W1 (at X = 0). */
  record Rectangle(Length length, Length width) implements Shape {
    public Rectangle {
      if (!length.isPositive() || !width.isPositive()) {
        throw new IllegalArgumentException("length and width must be above zero");
      }
    }
  }

  /** A circle, of a pier or a round slab. */
  record Round(Length diameter) implements Shape {
    public Round {
      if (!diameter.isPositive()) {
        throw new IllegalArgumentException("diameter must be above zero");
      }
    }
  }

  /** A polygon with openings; the first ring is the outside. */
  record Outline(List<Ring> rings) implements Shape {
    public Outline {
      rings = List.copyOf(rings);
    }
  }

  /** A closed ring; each point's side runs from it to the next, the last back to the first. */
  record Ring(List<Point> points) {
    public Ring {
      points = List.copyOf(points);
    }
  }

  /**
   * A corner and the side that starts from it.
   *
   * @param name what the workbook calls the point, its number; names the side too
   */
  record Point(String name, Length x, Length y, SideMark mark) {}

  /** What the Outlines sheet says of a side; {@code BY_SECTION} where it says nothing. */
  enum SideMark {
    FORMED("formed"),
    TURNED_DOWN("turned down"),
    EXISTING("existing"),
    NONE("none"),
    BY_SECTION("");

    private final String label;

    SideMark(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }
}
