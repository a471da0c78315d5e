package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.thickening;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;

/** What stands below a plan: legend, scale, notes. */
class PlanFootTest {

  /** With a side of nearly each kind. */
  private static SiteJob manifold() {
    return new SiteJob()
        .with(
            slab("A")
                .size(feet(40), feet(30))
                .formed(Sides.of(List.of("L1", "W1")))
                .edge("16", "12", Sides.of(List.of("L1"))))
        .with(recess("R", "A", inches("2")).size(feet(6), feet(4)).at(feet(9), feet(9)))
        .with(thickening("T", "A").size(feet(4), feet(1)).at(feet(22), feet(4)).thick("12"));
  }

  private static final SiteJob SMALL = new SiteJob().with(slab("A").size(feet(8), feet(8)));

  @Test
  void theLegendHasEachStrokeThatIsDrawnAndNoOther() {
    for (SiteJob job : List.of(manifold(), SMALL)) {
      DrawnPlan plan = DrawnPlan.of(job);
      List<Drawing.Line> swatches = plan.swatches();
      // the scale's three lines are like sides that are not formed
      List<Stroke> drawn =
          Arrays.stream(Stroke.values())
              .filter(stroke -> plan.lines(stroke).size() > (stroke == Stroke.SIDE ? 3 : 0))
              .toList();

      assertEquals(drawn, swatches.stream().map(Drawing.Line::stroke).toList());
      for (Drawing.Line swatch : swatches) {
        Drawing.Words label = plan.words(swatch.stroke().label());
        assertEquals(swatch.y1(), label.y());
        assertTrue(label.x() > swatch.x2() && label.x() < swatch.x2() + 12, label.text());
      }
    }
  }

  @Test
  void theLegendsEntriesStandApart() {
    List<Drawing.Line> swatches = DrawnPlan.of(manifold()).swatches();

    assertTrue(swatches.size() > 4, "more than one line of it");
    assertEquals(
        swatches.size(), swatches.stream().map(s -> List.of(s.x1(), s.y1())).distinct().count());
  }

  /** The longest of 50, 20, 10, 5, 2 and 1 ft, or half metres, that is at most 150 pt long. */
  @Test
  void theScaleIsAsLongAsItSays() {
    SiteJob metric = new SiteJob().metric().with(slab("A").size(feet(100), feet(40)));
    SiteJob wide = new SiteJob().with(slab("A").size(feet(100), feet(40)));
    isScale(SMALL, "2'-0\"", feet(2), 8);
    isScale(wide, "20'-0\"", feet(20), 100);
    isScale(metric, "5 m", Length.ofMillimetres(5000), 100);
  }

  private static void isScale(SiteJob job, String says, Length length, int feetOfFirstSide) {
    DrawnPlan plan = DrawnPlan.of(job);
    double perFoot = DrawnPlan.length(plan.lines(Stroke.FORMED).get(0)) / feetOfFirstSide;
    List<Drawing.Line> scale = plan.lines(Stroke.SIDE);
    Drawing.Words words = plan.words(says);

    assertEquals(3, scale.size());
    assertEquals(length.feet() * perFoot, DrawnPlan.length(scale.get(0)), 1e-6, says);
    assertTrue(DrawnPlan.length(scale.get(0)) <= 150, says);
    assertEquals((scale.get(0).x1() + scale.get(0).x2()) / 2, words.x(), 1e-6, says);
    for (Drawing.Line line : scale) {
      assertTrue(line.y1() > lowest(plan) && line.y2() < Drawing.HEIGHT, "below the plan");
    }
  }

  private static double lowest(DrawnPlan plan) {
    return plan.lines(Stroke.FORMED).stream()
        .mapToDouble(line -> Math.max(line.y1(), line.y2()))
        .max()
        .orElseThrow();
  }

  /** A long row of bolts goes on in the next line: no place is lost, none stands twice. */
  @Test
  void aLongNoteGoesOnInTheNextLine() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(8), feet(8)));
    job.with(BoltTakeoffTest.plate("1/2 x 10", feet(96), Optional.of(feet(2)), 1));
    DrawnPlan plan = DrawnPlan.of(job);
    List<String> texts = plan.texts();
    int first = 0;
    while (!texts.get(first).startsWith("Bolts of plate P, at ")) {
      first++;
    }
    StringBuilder whole = new StringBuilder(texts.get(first));
    for (int i = first + 1; i < texts.size() && texts.get(i).startsWith("    "); i++) {
      assertTrue(texts.get(i).length() <= 170, "on the page");
      whole.append(' ').append(texts.get(i).strip());
    }
    String expected =
        String.join(
            "; next piece ",
            plan.takeOff().boltPieces().stream()
                .map(
                    piece ->
                        String.join(
                            ", ", piece.positions().stream().map(Length::toString).toList()))
                .toList());

    assertTrue(whole.length() > 170, "long enough to be broken");
    assertTrue(texts.get(first).length() <= 170, "on the page");
    assertEquals("Bolts of plate P, at " + expected, whole.toString());
    assertTrue(plan.words(texts.get(first)).y() > lowest(plan) + 12, "below the plan");
  }

  @Test
  void notesStandBelowEachOtherOnThePage() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(8), feet(20)));
    for (int i = 0; i < 20; i++) {
      job.with(BoltTakeoffTest.plate("1/2 x 10", feet(8), Optional.empty(), 1));
    }
    DrawnPlan plan = DrawnPlan.of(job);
    List<Drawing.Words> notes =
        plan.words().stream()
            .filter(words -> words.anchor() == Drawing.Anchor.START && words.x() == 0)
            .toList();

    assertEquals(14, notes.size());
    assertEquals("More bolts and joints are on sheets Bolts and Joints.", notes.get(13).text());
    for (int i = 1; i < notes.size(); i++) {
      assertEquals(9, notes.get(i).y() - notes.get(i - 1).y(), 1e-9);
    }
    assertTrue(notes.get(0).y() - 9 > lowest(plan));
    assertTrue(notes.get(13).y() + 5 < Drawing.HEIGHT);
  }
}
