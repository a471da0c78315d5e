package org.pourbook.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

class ClosedFormFiguresTest {

  /** A few rounding errors of sums and products of metres. */
  private static final double ROUNDING = 1e-12;

  private static final Figure SLAB =
      Figures.of(
          new Shape.Rectangle(Length.ofFeet(36), Length.ofFeet(24)),
          Sides.ALL,
          Sides.of(List.of("L1", "W1")));

  private static final Figure PIER =
      Figures.of(new Shape.Round(Length.ofMillimetres(600)), Sides.NONE, Sides.NONE);

  @Test
  void sidesOfARectangleGoCounterClockwiseFromTheCornerAtZero() {
    assertEquals(
        List.of("L1", "W2", "L2", "W1"), SLAB.sides().stream().map(FigureSide::name).toList());
    double l = Length.ofFeet(36).metres();
    double w = Length.ofFeet(24).metres();
    assertEquals(
        new FigureSide("W2", 1, Length.ofFeet(24), l, 0, l, w, 90, 90, true, false, false),
        SLAB.sides().get(1));
    assertEquals(
        new FigureSide("W1", 1, Length.ofFeet(24), 0, w, 0, 0, 90, 90, true, true, false),
        SLAB.sides().get(3));
  }

  @Test
  void aTurnedDownSideIsFormedOnlyWhenItIsAmongTheFormedSides() {
    Figure figure =
        Figures.of(
            new Shape.Rectangle(Length.ofFeet(10), Length.ofFeet(8)),
            Sides.of(List.of("L2")),
            Sides.ALL);
    assertEquals(
        List.of("L2"),
        figure.sides().stream().filter(FigureSide::formed).map(FigureSide::name).toList());
    assertTrue(figure.sides().stream().allMatch(FigureSide::turnedDown));
  }

  @Test
  void rectangleAreaAndPerimeterAreLengthTimesWidthAndTwiceTheirSum() {
    assertEquals(864 * 0.3048 * 0.3048, SLAB.areaM2(), ROUNDING);
    assertEquals(120 * 0.3048, SLAB.perimeterM(), ROUNDING);
  }

  @Test
  void movedRectangleSidesTakeOffOnlyTheirOwnStrips() {
    double ft = 0.3048;
    assertEquals(34 * 22 * ft * ft, SLAB.movedInAreaM2(ft, s -> true), ROUNDING);
    assertEquals(35 * 23 * ft * ft, SLAB.movedInAreaM2(ft, FigureSide::turnedDown), ROUNDING);
    assertEquals(37 * 24 * ft * ft, SLAB.movedOutAreaM2(ft, s -> s.name().equals("W2")), ROUNDING);
    assertEquals(0, SLAB.movedInAreaM2(13 * ft, s -> true));
    assertEquals(0, SLAB.movedInAreaM2(20 * ft, s -> true));
  }

  @Test
  void barsOfARectangleAreOneMoreThanTheSpacesRoundedUp() {
    double cover = Length.ofInches(3).metres();
    double spacing = Length.ofInches(18).metres();
    // 24 ft less 6 in is 282 in: 15.7 spaces of 18 in.
    List<Figure.Chord> along = SLAB.lines(true, spacing, cover);
    assertEquals(17, along.size());
    assertEquals(cover, along.get(0).offsetM());
    assertEquals(Length.ofFeet(24).metres() - cover, along.get(16).offsetM());
    for (Figure.Chord chord : along) {
      assertEquals(Length.ofInches(36 * 12 - 6), Length.ofMetres(chord.lengthM()));
    }
    // 36 ft less 6 in is 426 in: 23.7 spaces.
    assertEquals(25, SLAB.lines(false, spacing, cover).size());
  }

  @Test
  void fortyFeetAtFourFeetAreTenSpaces() {
    Figure figure =
        Figures.of(
            new Shape.Rectangle(Length.ofFeet(8), Length.ofFeet(40).plus(Length.ofInches(6))),
            Sides.ALL,
            Sides.NONE);
    assertEquals(
        11, figure.lines(true, Length.ofFeet(4).metres(), Length.ofInches(3).metres()).size());
  }

  @Test
  void aStripNoWiderThanItsCoversHasOneBarInTheMiddleAndNoneAcross() {
    Figure strip =
        Figures.of(
            new Shape.Rectangle(Length.ofFeet(10), Length.ofInches(6)), Sides.ALL, Sides.NONE);
    double cover = Length.ofInches(3).metres();
    List<Figure.Chord> along = strip.lines(true, 0.3, cover);
    assertEquals(1, along.size());
    assertEquals(cover, along.get(0).offsetM());
    assertEquals(List.of(), strip.lines(false, 0.3, cover));
  }

  @Test
  void linesWithoutASpacingAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> SLAB.lines(true, 0, 0.1));
  }

  @Test
  void aRoundFigureHasOneSideWithoutCorners() {
    FigureSide side = PIER.sides().get(0);
    assertEquals(1, PIER.sides().size());
    assertEquals("round", side.name());
    assertEquals(new Length(1_884_955_592L), side.length()); // 600 mm × π
    assertEquals(180, side.startAngleDeg());
  }

  @Test
  void roundAreasFollowTheRadius() {
    assertEquals(Math.PI * 0.09, PIER.areaM2(), ROUNDING);
    assertEquals(Math.PI * 0.6, PIER.perimeterM(), ROUNDING);
    assertEquals(Math.PI * 0.04, PIER.movedInAreaM2(0.1, s -> true), ROUNDING);
    assertEquals(Math.PI * 0.16, PIER.movedOutAreaM2(0.1, s -> true), ROUNDING);
    assertEquals(PIER.areaM2(), PIER.movedInAreaM2(0.1, s -> false));
    assertEquals(0, PIER.movedInAreaM2(0.4, s -> true));
    assertEquals(0.6, PIER.extentXM(), ROUNDING);
    assertEquals(0.6, PIER.extentYM(), ROUNDING);
  }

  @Test
  void barsOfARoundFigureAreItsChords() {
    // Radius 250 mm inside the cover; five lines 125 mm apart, the outer two only touch.
    List<Figure.Chord> chords = PIER.lines(true, 0.125, 0.05);
    assertEquals(3, chords.size());
    double half = Math.sqrt(0.25 * 0.25 - 0.125 * 0.125);
    assertEquals(0.3 - half, chords.get(0).fromM(), ROUNDING);
    assertEquals(0.3 + half, chords.get(0).toM(), ROUNDING);
    assertEquals(0.175, chords.get(0).offsetM(), ROUNDING);
    assertEquals(0.5, chords.get(1).lengthM(), ROUNDING);
    assertEquals(List.of(), PIER.lines(true, 0.125, 0.3));
  }
}
