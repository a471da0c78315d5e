package org.pourbook.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.outline.FloorPlan.Line;

/** Lines across a floor, worked by hand in feet. */
class FloorPlanTest {

  private static final double FOOT_M = 0.3048;

  /** Two tips, at 20 ft and at 24 ft, and a hollow between them down to 14 ft. */
  private static final FloorPlan TIPS =
      FloorPlan.of(Drawn.figure(Drawn.feet(0, 0, 30, 0, 40, 20, 20, 14, -10, 24)), List.of())
          .get(0);

  private static void isInside(double yFt, double... fromTo) {
    List<Line> parts = TIPS.inside(new Line(-10 * FOOT_M, yFt * FOOT_M, 40 * FOOT_M, yFt * FOOT_M));
    assertEquals(fromTo.length / 2, parts.size(), parts.toString());
    for (int i = 0; i < parts.size(); i++) {
      assertEquals(fromTo[2 * i] * FOOT_M, parts.get(i).x1M(), 1e-5);
      assertEquals(fromTo[2 * i + 1] * FOOT_M, parts.get(i).x2M(), 1e-5);
    }
  }

  @Test
  void aLineIsCutWhereItLeavesTheFloor() {
    isInside(10, -10 * 10 / 24.0, 35);
    isInside(17, -10 * 17 / 24.0, 20 - 30 * 0.3, 30, 38.5);
  }

  /** At the lower tip's height the line meets the floor in a point besides. */
  @Test
  void aTipThatALineTouchesIsNoPartOfIt() {
    isInside(20, -10 * 20 / 24.0, 2);
  }

  @Test
  void aLineAlongASideLiesNotInside() {
    isInside(0);
  }
}
