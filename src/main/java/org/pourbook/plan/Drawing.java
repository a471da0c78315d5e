package org.pourbook.plan;

import java.util.List;

/**
 * The plan of a job, for a page of letter or A4 size, lying, below a title: points from the upper
 * left corner, Y down.
 *
 * @param marks in the order of drawing, words last
 */
public record Drawing(String job, String description, List<Mark> marks) {

  /** Room that a page of letter or A4 size leaves within its margins, below a title [pt]. */
  public static final double WIDTH = 712;

  public static final double HEIGHT = 460;

  public Drawing {
    marks = List.copyOf(marks);
  }

  /** A line, words or a dot. */
  public sealed interface Mark {}

  /** A straight line. */
  public record Line(double x1, double y1, double x2, double y2, Stroke stroke) implements Mark {}

  /**
   * Words, their middle at x, y.
   *
   * @param size of the letters [pt]
   * @param degrees turned clockwise
   * @param anchor which part of them stands at x
   */
  public record Words(double x, double y, String text, double size, double degrees, Anchor anchor)
      implements Mark {

    /** Width of a letter and height of a line, as shares of the size; no font is measured. */
    private static final double LETTER = 0.56;

    private static final double TALL = 1.2;

    /** Returns the same at another place. */
    Words at(double otherX, double otherY) {
      return new Words(otherX, otherY, text, size, degrees, anchor);
    }

    /** Returns the same turned by so much. */
    Words turned(double otherDegrees) {
      return new Words(x, y, text, size, otherDegrees, anchor);
    }

    /** Returns about how long they are [pt]. */
    public double width() {
      return text.length() * size * LETTER;
    }

    public double height() {
      return size * TALL;
    }
  }

  /** A filled dot, such as a bolt. */
  public record Dot(double x, double y, double radius) implements Mark {}

  /** Which part of words stands at their place. */
  public enum Anchor {
    START,
    MIDDLE
  }

  /** How a line is drawn: told apart by width and dashes, without color. */
  public enum Stroke {
    FORMED("formed side", 2.2, ""),
    SIDE("side not formed", 0.7, ""),
    EXISTING("against existing concrete", 2.2, "1 2"),
    TURNED_DOWN("turned-down edge", 0.6, "6 2"),
    RECESS("recess, its formed sides heavy", 0.7, "3 1"),
    BELOW("thickening, footing", 0.6, "2 2"),
    JOINT("control joint", 0.9, "9 3 2 3"),
    STRIP("strips, in the order of placing", 0.6, "1 3"),
    BAR("dowel, tie, step tie", 1.0, ""),
    PLATE("plate with bolts", 0.5, "");

    private final String label;
    private final double width;
    private final String dashes;

    Stroke(String label, double width, String dashes) {
      this.label = label;
      this.width = width;
      this.dashes = dashes;
    }

    /** Returns its name in the legend. */
    public String label() {
      return label;
    }

    /** Returns its width [pt]. */
    public double width() {
      return width;
    }

    /** Returns lengths of dashes and gaps by turns [pt]; empty for a full line. */
    public String dashes() {
      return dashes;
    }
  }
}
