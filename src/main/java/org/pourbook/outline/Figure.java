package org.pourbook.outline;

import java.util.List;

/**
 * The plan of a section as geometry: areas, sides, moved outlines, clipped lines. All in metres, in
 * the section's own plan (a rectangle's corner at 0, 0). Made by {@code Figures.of(section)}.
 */
public interface Figure {

  /** Returns the plan area, openings taken out [m2]. */
  double areaM2();

  /** Returns the length of all sides, openings' too [m]. */
  double perimeterM();

  /**
   * Returns the sides, the outer ring first (counter-clockwise), then the openings; a round figure
   * has one side {@code round} without corners.
   */
  List<FigureSide> sides();

  /**
   * Returns the area of the outline with the given sides moved in (mitred) by a distance, all other
   * sides left where they are; 0 when nothing is left [m2]. A moved side ends at the line of a
   * neighbour that stays; square where the two turn by less than about 11°.
   */
  double movedInAreaM2(double distanceM, SideChoice which);

  /** Returns the area of the outline with the given sides moved out (mitred) by a distance [m2]. */
  double movedOutAreaM2(double distanceM, SideChoice which);

  /**
   * Returns the pieces that the figure, moved in all round by {@code insetM}, cuts from parallel
   * lines: the lines of a bar mat or of strips. Empty where the inset leaves nothing.
   *
   * @param along true: lines parallel to X, spaced along Y; false: parallel to Y, spaced along X
   * @param spacingM largest spacing; the lines are equally spaced between the first and the last
   *     possible line, {@code ⌈extent/spacing⌉ + 1} of them (BAR-1); one in the middle where the
   *     extent is not above zero
   */
  List<Chord> lines(boolean along, double spacingM, double insetM);

  /** Returns the extent along X, then along Y [m]. */
  double extentXM();

  double extentYM();

  /** Which sides a move applies to. */
  @FunctionalInterface
  interface SideChoice {
    boolean test(FigureSide side);
  }

  /** A straight cut through the figure, from a to b along the line's direction [m]. */
  record Chord(double fromM, double toM, double offsetM) {
    public double lengthM() {
      return toM - fromM;
    }
  }
}
