package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;

/** Where words of a plan stand, and which way they are read. */
class PlanWordsTest {

  private static List<Drawing.Words> all(DrawnPlan plan, String text) {
    return plan.words().stream().filter(words -> words.text().equals(text)).toList();
  }

  /** Lengths lie outside their sides, level or read from the right. */
  @Test
  void lengthsStandOutsideTheirSides() {
    DrawnPlan plan = DrawnPlan.of(new SiteJob().with(slab("A").size(feet(40), feet(26))));
    Drawing.Line bottom = plan.lines(Stroke.FORMED).get(0);
    Drawing.Line right = plan.lines(Stroke.FORMED).get(1);
    double middleX = (bottom.x1() + bottom.x2()) / 2;
    double middleY = (right.y1() + right.y2()) / 2;

    isAt(all(plan, "40'-0\"").get(0), middleX, bottom.y1() + 9, 0);
    isAt(all(plan, "26'-0\"").get(0), right.x1() + 9, middleY, -90);
    isAt(all(plan, "40'-0\"").get(1), middleX, right.y2() - 9, 0);
    isAt(all(plan, "26'-0\"").get(1), bottom.x1() - 9, middleY, -90);
  }

  private static void isAt(Drawing.Words words, double x, double y, double degrees) {
    assertEquals(x, words.x(), 1e-6, "" + words);
    assertEquals(y, words.y(), 1e-6, "" + words);
    assertEquals(degrees, words.degrees(), 1e-6, "" + words);
  }

  /** Outlines run either way round; words are never read from above or from the left. */
  @Test
  void noWordsAreUpsideDown() {
    for (SiteJob job :
        List.of(
            outline(0, 0, 30, 0, 40, 20, 20, 14, -10, 24),
            outline(0, 0, 0, 24, 24, 24, 24, 14, 36, 14, 36, 0),
            outline(0, 0, 20, 0, 20, 0.5, 40, 0.5, 40, 20, 0, 20))) {
      for (Drawing.Words words : DrawnPlan.of(job).words()) {
        assertTrue(words.degrees() > -90.01 && words.degrees() < 89.99, "" + words);
      }
    }
  }

  private static SiteJob outline(double... coordinates) {
    return new SiteJob().with(slab("A").shape(Plan.outline(Plan.ring(coordinates))));
  }

  /** A jog of 6 in, rising: its length is written level, and clear of the line. */
  @Test
  void theLengthOfAShortSideStandsAcrossIt() {
    DrawnPlan plan = DrawnPlan.of(outline(0, 0, 20, 0, 20, 0.5, 40, 0.5, 40, 20, 0, 20));
    Drawing.Line jog = plan.lines(Stroke.FORMED).get(1);
    Drawing.Words length = plan.words("0'-6\"");

    assertTrue(length.width() > DrawnPlan.length(jog) + 7, "too long to stand along it");
    assertEquals(0, length.degrees(), 1e-6);
    assertEquals(9 - 3.5, length.x() - length.width() / 2 - jog.x1(), 1e-6);
  }

  @Test
  void theLengthsOfARoomyPartStandWithinItAndOfASmallOneOutside() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(40), feet(26)).at(feet(0), feet(0)));
    job.with(recess("R", "A", inches("2")).size(feet(11), feet(9)).at(feet(20), feet(6)));
    job.with(recess("S", "A", inches("2")).size(feet(3), feet(2)).at(feet(4), feet(15)));
    DrawnPlan plan = DrawnPlan.of(job);
    List<Drawing.Line> sides = plan.lines(Stroke.FORMED);

    assertEquals(sides.get(4).y1() - 9, all(plan, "11'-0\"").get(0).y(), 1e-6);
    assertEquals(sides.get(8).y1() + 9, all(plan, "3'-0\"").get(0).y(), 1e-6);
  }

  /** The recess lies on the middle of the slab's side, where the slab's length stands already. */
  @Test
  void aLengthGivesWayAlongItsSideBeforeItLeavesIt() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(40), feet(26)).at(feet(0), feet(0)));
    job.with(recess("R", "A", inches("2")).size(feet(20), feet(3)).at(feet(10), feet(0)));
    DrawnPlan plan = DrawnPlan.of(job);
    Drawing.Line side = plan.lines(Stroke.FORMED).get(4);
    Drawing.Words length = all(plan, "20'-0\"").get(0);

    assertEquals(side.y1() + 9, length.y(), 1e-6, "outside");
    assertEquals(0.35, (length.x() - side.x1()) / (side.x2() - side.x1()), 1e-6);
  }

  @Test
  void theNameOfAPartGivesWayToTheSlabsName() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(40), feet(26)).at(feet(0), feet(0)));
    job.with(recess("R", "A", inches("2")).size(feet(20), feet(16)).at(feet(10), feet(5)));
    DrawnPlan plan = DrawnPlan.of(job);
    Drawing.Words slab = plan.words("A, 4\"");
    Drawing.Words part = plan.words("R, 4\", drop 2\"");

    assertEquals(slab.x(), part.x(), 1e-6, "both lie about the same point");
    assertEquals(14, slab.y() - part.y(), 1e-6);
    Drawing.Words place = plan.words("X 10'-0\", Y 5'-0\"");
    assertEquals(14, place.y() - slab.y(), 1e-6);
  }

  @Test
  void wordsStandAboveTheLines() {
    List<Drawing.Mark> marks =
        DrawnPlan.of(new SiteJob().with(slab("A").size(feet(40), feet(26)))).drawing().marks();
    int words = 0;
    while (!(marks.get(words) instanceof Drawing.Words)) {
      words++;
    }

    assertTrue(words > 4 && words < marks.size());
    assertTrue(
        marks.subList(words, marks.size()).stream().allMatch(Drawing.Words.class::isInstance));
  }
}
