package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.measure.Length;

class FormProperties {

  private static final int CASES = 300;
  private static final LocalDate MONDAY = LocalDate.of(2026, 5, 4);

  /** Feet and inches of a sum of pieces, against the same sum made of its rows. */
  private static final double SUM = 1e-9;

  @Test
  void thePiecesOfEachBoardAreTogetherAsLongAsItsRows() {
    for (long seed = 0; seed < CASES; seed++) {
      Part part = FormTakeoff.of(job(seed, false), shelf(seed));
      Map<MaterialKey, Length> cut = new TreeMap<>();
      for (PieceNeed piece : part.pieces()) {
        cut.merge(piece.material(), piece.length().times(piece.count()), Length::plus);
      }
      Map<MaterialKey, Double> rows = totals(part);
      rows.keySet().removeIf(key -> !key.material().equals(Material.FORM_BOARD.label()));
      rows.values().removeIf(feet -> Math.abs(feet) < SUM);
      assertEquals(cut.keySet(), rows.keySet(), "seed " + seed);
      for (Map.Entry<MaterialKey, Length> board : cut.entrySet()) {
        assertEquals(
            board.getValue().feet(),
            rows.getOrDefault(board.getKey(), 0.0),
            SUM,
            seed + " " + board.getKey());
      }
    }
  }

  @Test
  void noPieceIsLongerThanTheLongestBoardOrNeedlesslyShort() {
    for (long seed = 0; seed < CASES; seed++) {
      Shelf shelf = shelf(seed);
      for (PieceNeed piece : FormTakeoff.of(job(seed, false), shelf).pieces()) {
        Length longest = shelf.longestStock(piece.material()).orElseThrow();
        assertTrue(!piece.length().isMoreThan(longest), "seed " + seed + " " + piece);
      }
    }
  }

  @Test
  void theOrderOfSectionsDoesNotMatter() {
    for (long seed = 0; seed < CASES; seed++) {
      Map<MaterialKey, Double> there = totals(FormTakeoff.of(job(seed, false), shelf(seed)));
      Map<MaterialKey, Double> back = totals(FormTakeoff.of(job(seed, true), shelf(seed)));
      assertEquals(there.keySet(), back.keySet(), "seed " + seed);
      for (Map.Entry<MaterialKey, Double> total : there.entrySet()) {
        assertEquals(
            total.getValue(),
            back.getOrDefault(total.getKey(), 0.0),
            SUM,
            "seed " + seed + " " + total.getKey());
      }
    }
  }

  @Test
  void nothingIsUsedAgainBeyondWhatWasBought() {
    for (long seed = 0; seed < CASES; seed++) {
      for (Map.Entry<MaterialKey, Double> total :
          totals(FormTakeoff.of(job(seed, false), shelf(seed))).entrySet()) {
        assertTrue(total.getValue() >= -SUM, "seed " + seed + " " + total);
      }
    }
  }

  private static Map<MaterialKey, Double> totals(Part part) {
    Map<MaterialKey, Double> totals = new TreeMap<>();
    for (Quantity row : part.quantities()) {
      row.material().ifPresent(key -> totals.merge(key, row.amount(), Double::sum));
    }
    return totals;
  }

  private static Shelf shelf(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Shelf shelf = Shelf.empty();
    for (String size : List.of("2x4", "2x6", "2x8", "2x10", "2x12")) {
      shelf.boards(size, Length.ofFeet(8 + 2 * random.nextInt(7)), "2." + random.nextInt(10));
    }
    return random.nextBoolean() ? shelf : shelf.each(Material.STAKE, "24 in", "1.10");
  }

  /** A job of three pours on three days, its slabs at random, some side by side. */
  private static Job job(long seed, boolean turned) {
    SplittableRandom random = new SplittableRandom(seed);
    List<SiteJob.SectionBuilder> sections = new ArrayList<>();
    Length x = Length.ZERO;
    for (int i = 0; i < 4; i++) {
      Length length = sixteenths(random, 3, 50);
      SiteJob.SectionBuilder section =
          slab("S" + i)
              .size(length, sixteenths(random, 3, 40))
              .thick(Length.ofInches(3 + random.nextInt(16)))
              .pour(1 + random.nextInt(3));
      boolean placed = random.nextBoolean();
      sections.add(placed ? section.at(x, Length.ZERO) : section.count(1 + random.nextInt(3)));
      x = placed ? x.plus(length) : x;
    }
    if (turned) {
      Collections.reverse(sections);
    }
    SiteJob job = new SiteJob();
    sections.forEach(job::with);
    for (int pour = 1; pour <= 3; pour++) {
      job.with(SiteJob.pour(pour, MONDAY.plusDays(pour == 3 ? 1 : 2L * pour)));
    }
    return job.build();
  }

  private static Length sixteenths(SplittableRandom random, int fromFeet, int toFeet) {
    return Length.ofInches(random.nextInt(fromFeet * 192, toFeet * 192), 16);
  }
}
