package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;

class BarCountingProperties {

  private static final long SEED = 20_260_317;
  private static final int CASES = 2000;

  private final SplittableRandom random = new SplittableRandom(SEED);

  @Test
  void anExactMultipleOfTheSpacingHasOneBarMoreThanSpaces() {
    for (int i = 0; i < CASES; i++) {
      Length spacing = spacing();
      Length cover = spacing();
      int spaces = random.nextInt(1, 500);
      Length width = spacing.times(spaces).plus(cover.times(2));
      assertEquals(spaces + 1, BarMats.barsAcross(width, cover, spacing), seed(i));
      assertEquals(spaces, Dowels.across(spacing.times(spaces), spacing), seed(i));
      assertEquals(spaces + 1, StepTieBars.along(spacing.times(spaces), spacing), seed(i));
      assertEquals(spaces + 1, BarSupports.inRow(spacing.times(spaces), spacing), seed(i));
      assertEquals(spaces, TieWire.alongEdgeBar(Length.ofFeet(4).times(spaces)), seed(i));
    }
  }

  @Test
  void aNanometreMoreThanAnExactMultipleTakesOneMore() {
    Length more = new Length(1);
    for (int i = 0; i < CASES; i++) {
      Length spacing = spacing();
      int spaces = random.nextInt(1, 500);
      Length width = spacing.times(spaces).plus(more);
      assertEquals(spaces + 2, BarMats.barsAcross(width, Length.ZERO, spacing), seed(i));
      assertEquals(spaces + 1, Dowels.across(width, spacing), seed(i));
      assertEquals(spaces + 2, BarSupports.inRow(width, spacing), seed(i));
    }
  }

  @Test
  void barsNeverLieFartherApartThanTheSpacingAndOneLessWould() {
    for (int i = 0; i < CASES; i++) {
      Length spacing = spacing();
      Length cover = Length.ofInches(3);
      Length width = Length.ofInches(random.nextInt(200, 60_000), 16).plus(cover.times(2));
      int bars = BarMats.barsAcross(width, cover, spacing);
      Length between = BarMats.between(width, cover);
      assertTrue(between.compareTo(spacing.times(bars - 1L)) <= 0, seed(i));
      assertTrue(between.isMoreThan(spacing.times(bars - 2L)), seed(i));
    }
  }

  @Test
  void fullBarsAndTheRestMakeTheRunWithItsLaps() {
    for (int i = 0; i < CASES; i++) {
      Length lap = BarLaps.roundedUp(spacing(), BarSize.named("#4").orElseThrow());
      Length stock = Length.ofFeet(random.nextInt(10, 61));
      Length run = Length.ofInches(random.nextInt(16, 16 * 12 * 300), 16);
      int laps = BarLaps.lapsIn(run, lap, stock);
      Length last = BarLaps.lastPiece(run, lap, stock);
      assertEquals(run.plus(lap.times(laps)), stock.times(laps).plus(last), seed(i));
      assertTrue(last.compareTo(stock) <= 0, seed(i));
      assertTrue(laps == 0 || last.isMoreThan(lap), seed(i));
    }
  }

  @Test
  void aRunOfWholeBarsHasOneLapLessThanBars() {
    for (int i = 0; i < CASES; i++) {
      Length lap = spacing();
      Length stock = lap.plus(spacing());
      int bars = random.nextInt(1, 40);
      Length run = stock.times(bars).minus(lap.times(bars - 1L));
      assertEquals(bars - 1, BarLaps.lapsIn(run, lap, stock), seed(i));
      assertEquals(stock, BarLaps.lastPiece(run, lap, stock), seed(i));
      assertEquals(bars, BarLaps.lapsIn(run.plus(new Length(1)), lap, stock), seed(i));
    }
  }

  @Test
  void lappedSheetsReachAcrossAndOneLessWouldNot() {
    for (int i = 0; i < CASES; i++) {
      Length lap = MeshSheets.lap(spacing());
      Length size = lap.plus(spacing());
      Length distance = Length.ofInches(random.nextInt(16, 50_000), 16);
      int sheets = MeshSheets.over(distance, size, lap);
      assertTrue(
          size.times(sheets).minus(lap.times(sheets - 1L)).compareTo(distance) >= 0, seed(i));
      assertTrue(
          sheets == 1 || size.times(sheets - 1L).minus(lap.times(sheets - 2L)).isLessThan(distance),
          seed(i));
    }
  }

  /** Sixteenths of an inch, or whole millimetres. */
  private Length spacing() {
    return random.nextBoolean()
        ? Length.ofInches(random.nextInt(1, 400), 16)
        : Length.ofMillimetres(random.nextInt(1, 600));
  }

  private static String seed(int i) {
    return "seed " + SEED + ", case " + i;
  }
}
