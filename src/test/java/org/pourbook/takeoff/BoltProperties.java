package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Length;

class BoltProperties {

  private static final int CASES = 2000;
  private static final Length NM = new Length(1);

  @Test
  void boltsAreEvenWithinTheSpacingAndNoMoreThanItTakes() {
    for (long seed = 0; seed < CASES; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Length spacing = Length.ofInches(12 + random.nextInt(61));
      for (BoltPiece piece : pieces(random, spacing)) {
        List<Length> at = piece.positions();
        Length first = at.get(0);
        Length last = at.get(at.size() - 1);
        String which = "seed " + seed + " " + piece;
        assertTrue(
            piece.length().minus(last).minus(first).nanometres() <= 1, "even ends: " + which);
        for (int i = 1; i < at.size(); i++) {
          assertTrue(at.get(i).isMoreThan(at.get(i - 1)), "apart: " + which);
          Length gap = at.get(i).minus(at.get(i - 1));
          assertTrue(!gap.isMoreThan(spacing.plus(NM)), "within the spacing: " + which);
        }
        boolean needed =
            at.size() == 2 || last.minus(first).isMoreThan(spacing.times(at.size() - 2L));
        assertTrue(needed, "none too many: " + which);
      }
    }
  }

  @Test
  void countsAreExactAtMultiplesOfTheSpacing() {
    for (int inches = 12; inches <= 72; inches++) {
      Length spacing = Length.ofInches(inches);
      for (int spaces = 1; spaces * inches + 18 <= 192; spaces++) {
        Length wall = spacing.times(spaces).plus(Length.ofInches(18));
        if (!wall.isLessThan(Length.ofInches(36))) {
          assertEquals(spaces + 1, bolts(wall, spacing), spaces + " × " + inches + " in");
          if (spaces * inches + 18 < 192) {
            assertEquals(spaces + 2, bolts(wall.plus(NM), spacing), "a nanometre over");
          }
        }
      }
    }
  }

  @Test
  void piecesAreTogetherExactlyAsLongAsTheWall() {
    for (long seed = 0; seed < CASES; seed++) {
      Length wall = new Length(new SplittableRandom(seed).nextLong(1, 30_000_000_000L));
      Length sum =
          of(wall, Length.ofFeet(4)).stream()
              .map(BoltPiece::length)
              .reduce(Length.ZERO, Length::plus);
      assertEquals(wall, sum, "seed " + seed);
    }
  }

  private static int bolts(Length wall, Length spacing) {
    return of(wall, spacing).stream().mapToInt(BoltPiece::bolts).sum();
  }

  private static List<BoltPiece> pieces(SplittableRandom random, Length spacing) {
    Length wall =
        random.nextBoolean()
            ? Length.ofInches(random.nextInt(24 * 16, 1200 * 16), 16)
            : Length.ofMillimetres(random.nextInt(610, 30_000));
    return of(wall, spacing);
  }

  private static List<BoltPiece> of(Length wall, Length spacing) {
    SiteJob job =
        new SiteJob().with(BoltTakeoffTest.plate("1/2 x 10", wall, Optional.of(spacing), 1));
    return BoltTakeoff.of(job.build(), Shelf.empty()).boltPieces();
  }
}
