package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Sides;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.JobDrawing;

/** The drawing of a job. */
class PlanDrawingTest {

  private static final SiteJob L =
      new SiteJob()
          .with(
              slab("A")
                  .shape(
                      Plan.outline(
                          Plan.ring(0, 0, 36, 0, 36, 14, 24, 14, 24, 24, 0, 24),
                          Plan.box(12, 10, 3, 3)))
                  .edge("16", "12", Sides.ALL))
          .with(recess("R", "A", inches("2")).size(feet(6), feet(4)).at(feet(2), feet(2)));

  private static Drawing drawn(SiteJob job) {
    return JobDrawing.of(TakeOffs.of(job.build(), Offer.NOTHING));
  }

  private static List<Drawing.Line> lines(Drawing drawing, Stroke stroke) {
    return drawing.marks().stream()
        .filter(Drawing.Line.class::isInstance)
        .map(Drawing.Line.class::cast)
        .filter(line -> line.stroke() == stroke && line.y1() < 500)
        .toList();
  }

  private static List<String> words(Drawing drawing) {
    return drawing.marks().stream()
        .filter(Drawing.Words.class::isInstance)
        .map(mark -> ((Drawing.Words) mark).text())
        .toList();
  }

  @Test
  void everySideIsDrawnWithItsLength() {
    Drawing drawing = drawn(L);

    // six sides, four of the opening, four of the recess
    assertEquals(14, lines(drawing, Stroke.FORMED).size());
    assertEquals(10, lines(drawing, Stroke.TURNED_DOWN).size());
    List.of("36'-0\"", "14'-0\"", "12'-0\"", "10'-0\"", "24'-0\"", "R, 4\", drop 2\"", "A, 4\"")
        .forEach(text -> assertTrue(words(drawing).contains(text), text));
  }

  @Test
  void everyJointOfTheJointsSheetIsDrawn() {
    TakeOff takeOff = TakeOffs.of(L.build(), Offer.NOTHING);

    assertEquals(takeOff.joints().size(), lines(JobDrawing.of(takeOff), Stroke.JOINT).size());
  }

  @Test
  void lengthsAreToOneScale() {
    Drawing drawing = drawn(L);
    Drawing.Line bottom = lines(drawing, Stroke.FORMED).get(0);
    double perFoot = (bottom.x2() - bottom.x1()) / 36;

    Drawing.Line right = lines(drawing, Stroke.FORMED).get(1);
    assertEquals(14 * perFoot, right.y1() - right.y2(), 1e-6);
  }

  @Test
  void everyMarkLiesOnThePage() {
    for (Drawing drawing :
        List.of(drawn(L), drawn(new SiteJob().with(slab("A")).with(slab("B"))))) {
      for (Drawing.Mark mark : drawing.marks()) {
        if (mark instanceof Drawing.Line line) {
          assertTrue(isOnPage(line.x1(), line.y1()) && isOnPage(line.x2(), line.y2()), "" + mark);
        } else if (mark instanceof Drawing.Words words) {
          assertTrue(isOnPage(words.x(), words.y()), "" + mark);
        }
      }
    }
  }

  private static boolean isOnPage(double x, double y) {
    return x > 0 && x < Drawing.PAGE_WIDTH && y > 0 && y < Drawing.PAGE_HEIGHT;
  }

  @Test
  void sectionsWithoutAPlaceStandBesideEachOther() {
    Drawing drawing = drawn(new SiteJob().with(slab("A")).with(slab("B")));

    double rightOfA = lines(drawing, Stroke.FORMED).get(1).x1();
    double leftOfB = lines(drawing, Stroke.FORMED).get(4).x1();
    assertTrue(leftOfB > rightOfA);
    assertTrue(words(drawing).contains("Sections without X and Y stand side by side."));
  }
}
