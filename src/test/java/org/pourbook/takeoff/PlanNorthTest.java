package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.job.Setting;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;

/** The arrow to north, in degrees clockwise from Y: by 90 it points where X runs to. */
class PlanNorthTest {

  /** Wider than high for the page, so that the plan would reach its right end. */
  private static SiteJob wide() {
    return new SiteJob().with(slab("A").size(feet(60), feet(20)));
  }

  @Test
  void northIsDrawnOnlyWhereItIsWritten() {
    DrawnPlan plan = DrawnPlan.of(wide());

    assertFalse(plan.texts().contains("N"));
    assertEquals(3, plan.lines(Stroke.SIDE).size(), "the scale alone");
  }

  /** 28 pt long, with two strokes of 8 pt back from its head, beside the plan. */
  @ParameterizedTest
  @ValueSource(ints = {0, 30, 90, 200, 315})
  void theArrowPointsToNorth(int degrees) {
    DrawnPlan plan = DrawnPlan.of(wide().with(Setting.NORTH, Integer.toString(degrees)));
    List<Drawing.Line> thin = plan.lines(Stroke.SIDE);
    List<Drawing.Line> arrow = thin.subList(thin.size() - 3, thin.size());
    double right = Math.sin(Math.toRadians(degrees));
    double up = Math.cos(Math.toRadians(degrees));
    Drawing.Line shaft = arrow.get(0);
    double headX = shaft.x2();
    double headY = shaft.y2();

    assertEquals(28 * right, headX - shaft.x1(), 1e-9);
    assertEquals(28 * up, shaft.y1() - headY, 1e-9);
    double turned = 0;
    for (Drawing.Line stroke : arrow.subList(1, 3)) {
      assertEquals(headX, stroke.x1(), 1e-9);
      assertEquals(headY, stroke.y1(), 1e-9);
      double x = stroke.x2() - headX;
      double y = headY - stroke.y2();
      assertEquals(8, DrawnPlan.length(stroke), 1e-9);
      assertEquals(-8 * Math.cos(Math.toRadians(25)), x * right + y * up, 1e-9, "back from it");
      turned += x * up - y * right;
    }
    assertEquals(0, turned, 1e-9, "one on either hand");
    Drawing.Words north = plan.words("N");
    assertEquals(7 * right, north.x() - headX, 1e-9, "ahead of it");
    assertEquals(7 * up, headY - north.y(), 1e-9, "ahead of it");
    for (Drawing.Line line : plan.lines(Stroke.FORMED)) {
      assertTrue(Math.max(line.x1(), line.x2()) < Drawing.WIDTH - 52, "beside the plan");
    }
    for (Drawing.Line line : arrow) {
      assertTrue(Math.min(line.x1(), line.x2()) > Drawing.WIDTH - 52, "in its corner");
      assertTrue(Math.max(line.x1(), line.x2()) < Drawing.WIDTH, "on the page");
    }
  }
}
