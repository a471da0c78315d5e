package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.bare;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.thickening;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import org.junit.jupiter.api.Test;
import org.pourbook.job.Kind;
import org.pourbook.job.Shape;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;

/** Where sections stand on the plan, with X and Y and without. */
class PlanPlacesTest {

  private static final String BESIDE = "Sections without X and Y stand side by side.";

  /** Start of a line from the start of A's first side, whose length is given [ft]. */
  private static void startsAt(
      DrawnPlan plan, Drawing.Line line, int feetOfFirstSide, double x, double y) {
    Drawing.Line first = plan.lines(Stroke.FORMED).get(0);
    double perFoot = DrawnPlan.length(first) / feetOfFirstSide;
    assertEquals(x, (line.x1() - first.x1()) / perFoot, 1e-6);
    assertEquals(y, (first.y1() - line.y1()) / perFoot, 1e-6);
  }

  @Test
  void sectionsWithXAndYStandWhereTheseSay() {
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(30), feet(20)).at(feet(10), feet(5)))
            .with(slab("B").size(feet(12), feet(8)).at(feet(45), feet(9)));
    DrawnPlan plan = DrawnPlan.of(job);

    startsAt(plan, plan.lines(Stroke.FORMED).get(4), 30, 35, 4);
    assertTrue(!plan.texts().contains(BESIDE));
  }

  @Test
  void aPartLiesInItsSlabWhereverThatStands() {
    for (boolean placed : new boolean[] {true, false}) {
      SiteJob job = new SiteJob().with(slab("O").size(feet(30), feet(20)).at(feet(0), feet(0)));
      var around = slab("A").size(feet(30), feet(20));
      job.with(placed ? around.at(feet(40), feet(5)) : around);
      job.with(recess("R", "A", inches("2")).size(feet(6), feet(4)).at(feet(2), feet(3)));
      DrawnPlan plan = DrawnPlan.of(job);
      double x = placed ? 40 : 34;
      double y = placed ? 5 : 0;

      startsAt(plan, plan.lines(Stroke.FORMED).get(4), 30, x, y);
      startsAt(plan, plan.lines(Stroke.FORMED).get(8), 30, x + 2, y + 3);
      assertTrue(plan.texts().contains("X 2'-0\", Y 3'-0\""), "from the slab's corner");
      assertEquals(!placed, plan.texts().contains(BESIDE));
    }
  }

  /** 4 ft apart, on the lower side of what has a place. */
  @Test
  void sectionsWithoutAPlaceStandOnTheRightOneAfterTheOther() {
    Shape round = new Shape.Round(feet(2));
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(30), feet(20)).at(feet(7), feet(5)))
            .with(slab("B").size(feet(10), feet(8)))
            .with(bare("P", Kind.PIER).shape(round).thick("36"))
            .with(thickening("T", "A").size(feet(4), feet(1)).thick("12"));
    DrawnPlan plan = DrawnPlan.of(job);

    startsAt(plan, plan.lines(Stroke.FORMED).get(4), 30, 34, 0);
    // its rightmost point: 30 + 4 + 10 + 4 + 2 ft
    startsAt(plan, plan.lines(Stroke.SIDE).get(0), 30, 50, 1);
    startsAt(plan, plan.lines(Stroke.BELOW).get(0), 30, 54, 0);
    assertTrue(plan.texts().contains(BESIDE));
    assertTrue(plan.texts().contains("T, 12\""));
    assertTrue(
        plan.texts().stream().noneMatch(text -> text.matches("X \\d.*, Y .*")),
        "nobody knows their places: " + plan.texts());
  }
}
