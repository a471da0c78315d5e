package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.FormTakeoffTest.amount;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.Placing;
import org.pourbook.job.Pour;
import org.pourbook.job.Setting;

class FormReuseTakeoffTest {

  private static final LocalDate MONDAY = LocalDate.of(2026, 5, 4);
  private static final MaterialKey BOARD = Material.FORM_BOARD.of("2x4");
  private static final MaterialKey STAKE = Material.STAKE.of("24 in");

  @Test
  void twoPoursOnOneDayShareNoForms() {
    Part part = of(SiteJob.pour(1, MONDAY), SiteJob.pour(2, MONDAY));
    assertEquals(161, amount(part, BOARD));
    assertEquals(72, amount(part, STAKE));
  }

  @Test
  void poursWithoutDatesShareNoForms() {
    Part part = of(SiteJob.pour(1, MONDAY), SiteJob.pour(2, Placing.CHUTE));
    assertEquals(161, amount(part, BOARD));
  }

  @Test
  void poursTwoDaysApartShareFormsLessTheLoss() {
    Part part = of(SiteJob.pour(1, MONDAY), SiteJob.pour(2, MONDAY.plusDays(2)));

    // Of 8 boards ⌈0.8⌉ = 1 is lost, a 16 ft one; of 36 stakes ⌈3.6⌉ = 4.
    assertEquals(80.5 + 16, amount(part, BOARD), 1e-9);
    assertEquals(36 + 4, amount(part, STAKE));
    Quantity again =
        part.quantities().stream()
            .filter(q -> q.what().equals("form boards 2x4 used again"))
            .findFirst()
            .orElseThrow();
    assertEquals(2, again.pour());
    assertEquals(-64.5, again.amount(), 1e-9);
    assertEquals(
        "−(1 × 16'-0\" + 2 × 12'-1 1/2\" + 2 × 8'-1 1/2\" + 2 × 4'-0\") = −64.50 ft",
        again.working());
  }

  @Test
  void boardsThatServeAgainAreCutAsListed() {
    Part apart = of(SiteJob.pour(1, MONDAY), SiteJob.pour(2, MONDAY));
    assertTrue(apart.pieces().stream().anyMatch(piece -> piece.joined().isPresent()));
    Part again = of(SiteJob.pour(1, MONDAY), SiteJob.pour(2, MONDAY.plusDays(2)));
    assertTrue(again.pieces().stream().noneMatch(piece -> piece.joined().isPresent()));
  }

  /** 17 in high is a 2x10 and a 2x8; only the 2x10s serve again, at a face of 9 in. */
  @Test
  void boardsOfAnotherSizeThatAreButtedAtTheSamePlacesFollow() {
    SiteJob job =
        new SiteJob().with(SiteJob.pour(1, MONDAY)).with(SiteJob.pour(2, MONDAY.plusDays(2)));
    job.with(slab("F").size(feet(24), feet(16)).thick("17"));
    job.with(slab("G").size(feet(24), feet(16)).thick("9").pour(2));
    Part part = FormTakeoff.of(job.build(), Shelf.empty());
    assertTrue(part.pieces().stream().anyMatch(piece -> piece.goesTo().startsWith("F ")));
    assertTrue(part.pieces().stream().noneMatch(piece -> piece.joined().isPresent()));
  }

  @Test
  void screwsReleaseAndSplicesAreNew() {
    Part part = of(SiteJob.pour(1, MONDAY), SiteJob.pour(2, MONDAY.plusDays(2)));
    assertEquals(208, amount(part, Material.FORM_SCREW.of("2-1/2 in")));
    assertEquals(8, amount(part, Material.SPLICE.of("2x4")));
    assertEquals(2 * 80.0 / 3 / 400, amount(part, Material.FORM_RELEASE.of("")), 1e-9);
  }

  @Test
  void formsServeTheLaterPourWhateverItsNumber() {
    Part part = of(SiteJob.pour(1, MONDAY.plusDays(2)), SiteJob.pour(2, MONDAY));
    assertEquals(96.5, amount(part, BOARD), 1e-9);
    assertTrue(part.pieces().stream().anyMatch(piece -> piece.pour() == 2));
  }

  @Test
  void formsThatAreStrippedLaterDoNotServe() {
    SiteJob job = job(SiteJob.pour(1, MONDAY), SiteJob.pour(2, MONDAY.plusDays(2)));
    Job slow = job.with(Setting.STRIP_AFTER, "3").build();
    assertEquals(161, amount(FormTakeoff.of(slow, Shelf.empty()), BOARD));
  }

  private static Part of(Pour first, Pour second) {
    return FormTakeoff.of(job(first, second).build(), Shelf.empty());
  }

  /** Two slabs alike, each of 80.5 ft of 2x4 in 8 pieces (16, 8'-1 1/2", 12'-1 1/2", 4 ft). */
  private static SiteJob job(Pour first, Pour second) {
    return new SiteJob()
        .with(slab("A").size(feet(24), feet(16)).pour(1))
        .with(slab("B").size(feet(24), feet(16)).pour(2))
        .with(first)
        .with(second);
  }
}
