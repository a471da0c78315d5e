package org.pourbook.outline;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

/** Parts lie inside their parent and do not overlap. */
class FiguresFitTest {

  private static final double FT = 0.3048;
  private static final double IN = 0.0254;

  private static final Figure SLAB = rectangle(20, 10);
  private static final Figure SHOWER = rectangle(4, 3);
  private static final Figure PIER = round(2);

  /** An L: the upper right of 20 by 10 is left out from (8,4) on. */
  private static final Figure L_SHAPE =
      Drawn.figure(Drawn.feet(0, 0, 20, 0, 20, 4, 8, 4, 8, 10, 0, 10));

  private static Figure rectangle(long lengthFt, long widthFt) {
    return Figures.of(
        new Shape.Rectangle(Length.ofFeet(lengthFt), Length.ofFeet(widthFt)),
        Sides.ALL,
        Sides.NONE);
  }

  private static Figure round(long diameterFt) {
    return Figures.of(new Shape.Round(Length.ofFeet(diameterFt)), Sides.ALL, Sides.NONE);
  }

  @Test
  void aPartMayReachItsParentsEdgeButNotOverIt() {
    assertTrue(Figures.contains(SLAB, SHOWER, 16 * FT, 7 * FT));
    assertTrue(Figures.contains(SLAB, SHOWER, 16 * FT + IN / 32, 7 * FT));
    assertFalse(Figures.contains(SLAB, SHOWER, 16 * FT + IN / 4, 7 * FT));
    assertFalse(Figures.contains(SLAB, SHOWER, 3 * FT, -IN));
    assertFalse(Figures.contains(SHOWER, SLAB, 0, 0));
  }

  @Test
  void aPartMustNotReachIntoTheLeftOutCornerOfAnOutline() {
    assertTrue(Figures.contains(L_SHAPE, SHOWER, 4 * FT, 7 * FT));
    assertTrue(Figures.contains(L_SHAPE, SHOWER, 12 * FT, FT));
    assertFalse(Figures.contains(L_SHAPE, SHOWER, 6 * FT, 2 * FT));
    assertFalse(Figures.contains(L_SHAPE, SHOWER, 12 * FT, 6 * FT));
  }

  @Test
  void aPartMustNotCoverAnOpening() {
    Figure opened =
        Drawn.figure(Drawn.feet(0, 0, 20, 0, 20, 10, 0, 10), Drawn.feet(5, 5, 6, 5, 6, 6, 5, 6));
    assertFalse(Figures.contains(opened, SHOWER, 4 * FT, 4 * FT));
    assertTrue(Figures.contains(opened, SHOWER, 6 * FT, 4 * FT));
    assertFalse(Figures.contains(opened, PIER, 4.5 * FT, 4.5 * FT));
  }

  @Test
  void roundPartsAreJudgedByTheirRadius() {
    assertTrue(Figures.contains(L_SHAPE, PIER, 6 * FT, 8 * FT));
    assertFalse(Figures.contains(L_SHAPE, PIER, 6.1 * FT, 8 * FT));
    // By its centre alone it would lie inside; the corner at (8,4) is 0.9 ft off.
    assertFalse(Figures.contains(L_SHAPE, PIER, 7 * FT, 3 * FT - 0.9 * FT));
    assertTrue(Figures.contains(L_SHAPE, PIER, 7 * FT, 2 * FT));
    assertTrue(Figures.contains(round(10), PIER, 4 * FT, 0));
    assertFalse(Figures.contains(round(10), PIER, 0, 0));
    assertTrue(Figures.contains(round(10), SHOWER, 3 * FT, 3.5 * FT));
    assertFalse(Figures.contains(round(10), SHOWER, 0.5 * FT, 0.5 * FT));
  }

  @Test
  void partsThatTouchDoNotOverlap() {
    assertFalse(Figures.overlap(SHOWER, SHOWER, 4 * FT, 0));
    assertFalse(Figures.overlap(SHOWER, SHOWER, 4 * FT - IN / 32, 0));
    assertTrue(Figures.overlap(SHOWER, SHOWER, 4 * FT - IN / 4, 0));
    assertFalse(Figures.overlap(L_SHAPE, SHOWER, 8 * FT, 4 * FT));
    assertTrue(Figures.overlap(L_SHAPE, SHOWER, 7 * FT, 4 * FT));
  }

  @Test
  void roundPartsOverlapByTheirRadius() {
    assertFalse(Figures.overlap(PIER, PIER, 2 * FT, 0));
    assertFalse(Figures.overlap(PIER, PIER, 1.5 * FT, 1.5 * FT));
    assertTrue(Figures.overlap(PIER, PIER, 1.4 * FT, 1.4 * FT));
    assertFalse(Figures.overlap(SHOWER, PIER, 4 * FT, 0));
    assertTrue(Figures.overlap(SHOWER, PIER, 3.9 * FT, 0));
    assertTrue(Figures.overlap(PIER, SHOWER, 1.9 * FT, 0));
    assertFalse(Figures.overlap(PIER, SHOWER, 2 * FT, 0));
  }
}
