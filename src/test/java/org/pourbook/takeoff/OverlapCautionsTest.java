package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.takeoff.SiteJob.feet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Kind;
import org.pourbook.job.Shape;
import org.pourbook.takeoff.SiteJob.SectionBuilder;

/** Areas in common reckoned by hand. */
class OverlapCautionsTest {

  private static List<String> told(SectionBuilder... sections) {
    SiteJob job = new SiteJob();
    for (SectionBuilder section : sections) {
      job.with(section);
    }
    return CodeCautions.of(job.build()).cautions().stream()
        .filter(caution -> caution.rule().equals("CON-1"))
        .map(caution -> caution.section() + ": " + caution.says())
        .toList();
  }

  private static SectionBuilder slab(String code, int x, int y, int length, int width) {
    return SectionBuilder.slab(code).size(feet(length), feet(width)).at(feet(x), feet(y));
  }

  @Test
  void slabsOnTheSameGroundAreTold() {
    // The ramp reaches 6 ft of its 12 into the floor: 6 x 5 = 30 ft2.
    assertEquals(
        List.of(
            "RAMP: RAMP and FLOOR cover the same 30 ft2 of the plan, and both are counted."
                + " Unless one is poured on the other, look at X, Y and the sizes."),
        told(slab("FLOOR", 0, 0, 30, 20), slab("RAMP", -6, 4, 12, 5)));
  }

  @Test
  void anOutlineLiesWhereItIsDrawn() {
    SectionBuilder floor =
        SectionBuilder.slab("FLOOR").shape(Plan.outline(Plan.ring(0, 0, 20, 0, 20, 20)));
    assertEquals(1, told(floor, slab("PAD", 15, 2, 5, 5)).size());
    assertEquals(List.of(), told(floor, slab("PAD", 0, 12, 5, 5)), "beside the slanted side");
  }

  @Test
  void slabsThatTouchOrHaveNoPlaceAreNotTold() {
    assertEquals(List.of(), told(slab("A", 0, 0, 10, 10), slab("B", 10, 0, 10, 10)));
    assertEquals(List.of(), told(slab("A", 0, 0, 10, 10), slab("B", 0, -5, 10, 5)));
    SectionBuilder nowhere = SectionBuilder.slab("B").size(feet(10), feet(10));
    assertEquals(List.of(), told(slab("A", 0, 0, 10, 10), nowhere));
  }

  @Test
  void aFootingUnderASlabIsNotTold() {
    assertEquals(
        List.of(),
        told(
            slab("A", 0, 0, 10, 10),
            SectionBuilder.bare("F", Kind.FOOTING).size(feet(10), feet(2)).at(feet(0), feet(0))));
  }

  @Test
  void aRoundSlabIsMeasuredRound() {
    // A circle of 10 ft from 0, 0 leaves the corner of its square free: 5 (1 - √½) = 1.46 ft.
    SectionBuilder round =
        SectionBuilder.slab("ROUND").shape(new Shape.Round(feet(10))).at(feet(0), feet(0));
    assertEquals(List.of(), told(round, slab("A", 0, 0, 1, 1)));
    assertEquals(1, told(round, slab("A", 0, 0, 2, 2)).size());
  }

  @Test
  void ofManyOnOneSpotEachTellsOne() {
    assertEquals(
        2, told(slab("A", 0, 0, 9, 9), slab("B", 0, 0, 9, 9), slab("C", 0, 0, 9, 9)).size());
  }
}
