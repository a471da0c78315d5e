package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.thickening;
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

  /** The recess is as high as the slab and too low for two lengths along one side. */
  @Test
  void aLengthStandsInsideWhereTheOutsideIsTaken() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(40), feet(2)).at(feet(0), feet(0)));
    job.with(recess("R", "A", inches("2")).size(feet(6), feet(2)).at(feet(0), feet(0)));
    DrawnPlan plan = DrawnPlan.of(job);
    List<Drawing.Words> heights = all(plan, "2'-0\"");
    double left = plan.lines(Stroke.FORMED).get(0).x1();

    assertEquals(left - 9, heights.get(1).x(), 1e-6, "the slab's");
    assertEquals(left + 9, heights.get(3).x(), 1e-6, "the recess's");
  }

  /** The name of the thickening stands where the number would, 24 pt from the strip's start. */
  @Test
  void theNumberOfAStripGivesWay() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(40), feet(26)).at(feet(0), feet(0)));
    job.with(
        thickening("T", "A").size(feet(3), feet(3)).at(inches("1.5"), inches("34")).thick("12"));
    DrawnPlan plan = DrawnPlan.of(job);
    double left = plan.lines(Stroke.FORMED).get(0).x1();

    assertEquals(left + 24, plan.words("T, 12\"").x(), 2);
    assertEquals(left + 72, plan.words("(1)").x(), 0.01);
    assertEquals(left + 24, plan.words("(2)").x(), 0.01);
  }

  /** A stem of 1 ft, 16 pt wide. */
  @Test
  void theNumberOfAShortStripStandsWithinIt() {
    DrawnPlan plan = DrawnPlan.of(outline(0, 0, 36, 0, 36, 6, 1, 6, 1, 24, 0, 24));
    Drawing.Line first = plan.lines(Stroke.FORMED).get(0);
    double foot = DrawnPlan.length(first) / 36;

    assertEquals(first.x1() + foot / 2, plan.words("(3)").x(), 0.01);
    assertTrue(foot < 24, "narrower than the usual distance");
  }

  @Test
  void allWordsStandOnThePage() {
    for (SiteJob job : crowded()) {
      for (Drawing.Words words : DrawnPlan.of(job).words()) {
        double[] box = PlanMarksTest.box(words);
        assertTrue(box[0] >= 0 && box[1] >= 0, "" + words);
        assertTrue(box[2] <= Drawing.WIDTH && box[3] <= Drawing.HEIGHT, "" + words);
      }
    }
  }

  static List<SiteJob> crowded() {
    return List.of(
        new SiteJob().with(slab("A").size(feet(300), feet(4))),
        new SiteJob().with(slab("A").size(feet(4), feet(200))),
        new SiteJob().with(slab("A").size(feet(140), feet(60))));
  }
}
