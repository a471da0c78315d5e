package org.pourbook.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Shape;
import org.pourbook.job.Shape.SideMark;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

class OutlineFigureTest {

  /** Square metres in a square foot. */
  private static final double FT2 = 0.3048 * 0.3048;

  private static final double FT = 0.3048;

  /** A few rounding errors of sums and products of metres. */
  private static final double ROUNDING = 1e-12;

  /**
   * An L of 20 ft by 16 ft with 12 ft by 10 ft left out at the upper right, and an opening of 3 ft
   * by 2 ft, both rings counter-clockwise as written:
   *
   * <pre>
   *   6---5                 (0,16) (8,16)
   *   |   |
   *   |   4--------3        (8,6) (20,6)
   *   |  [o]       |        opening (2,2) to (5,4)
   *   1------------2        (0,0) (20,0)
   * </pre>
   */
  private static final Figure L_SHAPE =
      Drawn.figure(
          Drawn.feet(0, 0, 20, 0, 20, 6, 8, 6, 8, 16, 0, 16), Drawn.feet(2, 2, 5, 2, 5, 4, 2, 4));

  private static Figure.SideChoice named(String... names) {
    return side -> side.ring() == 1 && Set.of(names).contains(side.name());
  }

  @Test
  void areaIsTheOuterRingLessTheOpening() {
    assertEquals((20 * 16 - 12 * 10 - 3 * 2) * FT2, L_SHAPE.areaM2(), ROUNDING);
  }

  @Test
  void perimeterHoldsTheOpening() {
    assertEquals((72 + 10) * FT, L_SHAPE.perimeterM(), ROUNDING);
    assertEquals(20 * FT, L_SHAPE.extentXM(), ROUNDING);
    assertEquals(16 * FT, L_SHAPE.extentYM(), ROUNDING);
  }

  @Test
  void cornersHaveTheirInsideAngles() {
    List<FigureSide> sides = L_SHAPE.sides();
    assertEquals(10, sides.size());
    assertEquals(
        List.of(90.0, 90.0, 90.0, 270.0, 90.0, 90.0),
        sides.subList(0, 6).stream().map(FigureSide::startAngleDeg).toList());
    assertTrue(sides.get(3).startsAtReentrantCorner());
    assertTrue(sides.get(2).endsAtReentrantCorner());
    assertFalse(sides.get(3).endsAtReentrantCorner());
    assertTrue(sides.get(3).endsAtOutsideCorner());
    assertTrue(
        sides.subList(6, 10).stream()
            .allMatch(s -> s.ring() == 2 && s.startAngleDeg() == 270 && s.endAngleDeg() == 270));
  }

  @Test
  void anOpeningIsTurnedClockwiseAndItsSidesKeepTheirWrittenNames() {
    FigureSide bottom =
        L_SHAPE.sides().stream()
            .filter(s -> s.ring() == 2 && s.name().equals("1"))
            .findFirst()
            .orElseThrow();
    // Written from (2,2) to (5,2); with the concrete on the left it runs the other way.
    assertEquals(5 * FT, bottom.x1M(), ROUNDING);
    assertEquals(2 * FT, bottom.x2M(), ROUNDING);
    assertEquals(Length.ofFeet(3), bottom.length());
  }

  @Test
  void anOutlineWrittenClockwiseIsTheSameFigureWithItsSidesNamedAsWritten() {
    Figure clockwise = Drawn.figure(Drawn.feet(0, 0, 0, 16, 8, 16, 8, 6, 20, 6, 20, 0));
    assertEquals(200 * FT2, clockwise.areaM2(), ROUNDING);
    FigureSide left =
        clockwise.sides().stream().filter(s -> s.name().equals("1")).findFirst().orElseThrow();
    assertEquals(Length.ofFeet(16), left.length());
    assertEquals(16 * FT, left.y1M(), ROUNDING);
    assertEquals(0, left.y2M());
  }

  @Test
  void allSidesMovedInOneFoot() {
    // 18 × 14 less 12 × 10 outside; the opening grows to 5 × 4.
    assertEquals((18 * 14 - 12 * 10 - 5 * 4) * FT2, L_SHAPE.movedInAreaM2(FT, s -> true), ROUNDING);
  }

  @Test
  void allSidesMovedOutHalfAFoot() {
    assertEquals(
        (21 * 17 - 12 * 10 - 2 * 1) * FT2, L_SHAPE.movedOutAreaM2(FT / 2, s -> true), ROUNDING);
  }

  @Test
  void anOpeningNarrowerThanTwiceTheDistanceClosesWhenMovedOut() {
    assertEquals((22 * 18 - 12 * 10) * FT2, L_SHAPE.movedOutAreaM2(FT, s -> true), ROUNDING);
  }

  @Test
  void sidesMovedIntoAnOpeningTakeNothingTwice() {
    // The bottom 3 ft less the half of the opening in them.
    assertEquals((194 - (20 * 3 - 3)) * FT2, L_SHAPE.movedInAreaM2(3 * FT, named("1")), ROUNDING);
  }

  @Test
  void oneSideOfAReentrantCornerMovesAlongTheOtherOnesLine() {
    assertEquals((194 - 12) * FT2, L_SHAPE.movedInAreaM2(FT, named("3")), ROUNDING);
    // Both: 12 × 1, 10 × 1 and the square between them.
    assertEquals((194 - 23) * FT2, L_SHAPE.movedInAreaM2(FT, named("3", "4")), ROUNDING);
    assertEquals((194 + 12 + 10 - 1) * FT2, L_SHAPE.movedOutAreaM2(FT, named("3", "4")), ROUNDING);
  }

  @Test
  void nothingIsLeftWhenSidesMoveFarIn() {
    assertEquals(0, L_SHAPE.movedInAreaM2(4 * FT, s -> true));
    assertEquals(
        0, Drawn.figure(Drawn.feet(0, 0, 6, 0, 6, 8, 0, 8)).movedInAreaM2(3 * FT, s -> true));
  }

  @Test
  void aMovedSideEndsAtTheLinesOfTheSidesThatStay() {
    // A trapezoid: 10 ft below, 4 ft above, 3 ft high, sides at 45°.
    Figure trapezoid = Drawn.figure(Drawn.feet(0, 0, 10, 0, 7, 3, 3, 3));
    assertEquals(21 * FT2, trapezoid.areaM2(), ROUNDING);
    // Top down 1 ft: it grows to 6 ft; below up 1 ft: it shrinks to 8 ft.
    assertEquals((21 - 5) * FT2, trapezoid.movedInAreaM2(FT, named("3")), ROUNDING);
    assertEquals((21 - 9) * FT2, trapezoid.movedInAreaM2(FT, named("1")), ROUNDING);
    // Out by 1 ft: the top shrinks to 2 ft, the bottom grows to 12 ft.
    assertEquals((21 + 3) * FT2, trapezoid.movedOutAreaM2(FT, named("3")), ROUNDING);
    assertEquals((21 + 11) * FT2, trapezoid.movedOutAreaM2(FT, named("1")), ROUNDING);
    // Out by 3 ft the top has vanished at 2 ft.
    assertEquals((21 + 4) * FT2, trapezoid.movedOutAreaM2(3 * FT, named("3")), ROUNDING);
  }

  @Test
  void aMovedSideEndsSquareWhereTheNextOneHardlyTurns() {
    // The bottom, 20 ft, and its neighbour that stays turn by 1 in 10 at point 2.
    Figure bay = Drawn.figure(Drawn.feet(0, 0, 20, 0, 30, 1, 30, 9, 0, 9));
    assertEquals(20 * FT2, bay.movedOutAreaM2(FT, named("1")) - bay.areaM2(), ROUNDING);
  }

  @Test
  void aSideMovesOnlyWhatHangsTogetherWithIt() {
    // Two legs 2 ft wide, 1 ft apart, joined below; the left leg stands out 1 ft over its foot.
    Figure u = Drawn.figure(Drawn.feet(1, 0, 5, 0, 5, 9, 3, 9, 3, 2, 2, 2, 2, 9, 0, 9, 0, 3, 1, 3));
    assertEquals(35 * FT2, u.areaM2(), ROUNDING);
    // Its left side moves in 4 ft, over the gap into the right leg: only the left leg goes.
    assertEquals((35 - 12) * FT2, u.movedInAreaM2(4 * FT, named("8")), ROUNDING);
    // The right side of the left leg moves out 4 ft over gap and right leg: only the gap is filled.
    assertEquals((35 + 7) * FT2, u.movedOutAreaM2(4 * FT, named("6")), ROUNDING);
  }

  @Test
  void pointsInOneLineMoveAsOneSide() {
    // A triangle with two points on its long side, which is no line of the grid.
    Figure split = Drawn.figure(Drawn.feet(0, 0, 7, 1, 21, 3, 3, 12));
    Figure whole = Drawn.figure(Drawn.feet(0, 0, 21, 3, 3, 12));
    assertEquals(180.0, split.sides().get(0).endAngleDeg());
    assertEquals(whole.movedInAreaM2(FT, s -> true), split.movedInAreaM2(FT, s -> true), 1e-8);
    assertEquals(whole.lines(true, FT, FT).size(), split.lines(true, FT, FT).size());
    assertEquals(
        whole.lines(true, FT, FT).get(0).offsetM(),
        split.lines(true, FT, FT).get(0).offsetM(),
        1e-8);
  }

  @Test
  void barsKeepTheCoverFromOpeningsAndReentrantCorners() {
    // Covers of 1 ft leave an L from (1,1) to (19,15) with its corner at (7,5); the opening grows
    // to (1,1)–(6,5). 14 ft at 1 ft are 15 lines.
    List<Figure.Chord> along = L_SHAPE.lines(true, FT, FT);
    assertEquals(
        List.of(13L, 13L, 13L, 13L, 18L, 6L, 6L, 6L, 6L, 6L, 6L, 6L, 6L, 6L, 6L),
        along.stream().map(c -> Math.round(c.lengthM() / FT)).toList());
    assertEquals(6 * FT, along.get(1).fromM(), ROUNDING);
    assertEquals(19 * FT, along.get(1).toM(), ROUNDING);
    assertEquals(2 * FT, along.get(1).offsetM(), ROUNDING);
    assertEquals(Length.ofFeet(18), Length.ofMetres(along.get(4).lengthM()));
  }

  @Test
  void openingsInterruptBars() {
    // Covers of 6 in: 19 ft in 7 spaces. The second line crosses the opening, 1.5 to 4.5 ft.
    List<Figure.Chord> across = L_SHAPE.lines(false, 3 * FT, FT / 2);
    assertEquals(9, across.size());
    double second = (0.5 + 19.0 / 7) * FT;
    assertChord(FT / 2, 1.5 * FT, second, across.get(1));
    assertChord(4.5 * FT, 15.5 * FT, second, across.get(2));
  }

  private static void assertChord(double from, double to, double offset, Figure.Chord chord) {
    assertEquals(from, chord.fromM(), ROUNDING);
    assertEquals(to, chord.toM(), ROUNDING);
    assertEquals(offset, chord.offsetM(), ROUNDING);
  }

  @Test
  void sidesAreMarkedByTheOutlineAndElseByTheSection() {
    List<Shape.Point> points =
        List.of(
            point("1", 0, 0, SideMark.BY_SECTION),
            point("2", 9, 0, SideMark.TURNED_DOWN),
            point("3", 9, 9, SideMark.EXISTING),
            point("4", 5, 9, SideMark.FORMED),
            point("5", 0, 9, SideMark.NONE));
    Figure figure =
        Figures.of(
            new Shape.Outline(List.of(new Shape.Ring(points))),
            Sides.of(List.of("1", "2", "5")),
            Sides.of(List.of("1", "4")));
    assertEquals(List.of("1", "2", "4"), names(figure, FigureSide::formed));
    assertEquals(List.of("1", "2"), names(figure, FigureSide::turnedDown));
    assertEquals(List.of("3"), names(figure, FigureSide::existing));
  }

  private static List<String> names(Figure figure, Figure.SideChoice which) {
    return figure.sides().stream().filter(which::test).map(FigureSide::name).toList();
  }

  private static Shape.Point point(String name, long xFt, long yFt, SideMark mark) {
    return new Shape.Point(name, Length.ofFeet(xFt), Length.ofFeet(yFt), mark);
  }

  @Test
  void aFaultyOutlineIsNoFigure() {
    assertThrows(
        IllegalArgumentException.class, () -> Drawn.figure(Drawn.feet(0, 0, 4, 4, 4, 0, 0, 4)));
  }
}
