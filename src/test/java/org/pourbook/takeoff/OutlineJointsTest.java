package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.job.Job;
import org.pourbook.job.JointSpacing;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.FloorPlan;
import org.pourbook.outline.FloorPlan.Line;

/** Joints of floors with re-entrant corners (JOINT-1). */
class OutlineJointsTest {

  private static final double FT = 0.3048;

  /** Feet; ends of joints are found to some nanometres. */
  private static final double ROUNDING = 1e-7;

  private static Part joints(SiteJob job) {
    return JointTakeoff.of(job.build());
  }

  private static Quantity row(Part part, String start) {
    return part.quantities().stream()
        .filter(quantity -> quantity.what().startsWith(start))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> notes(Part part) {
    return part.joints().stream().map(JointLine::note).toList();
  }

  @Test
  void anLIsCutFromItsCornerTheShortestWayThenIntoPanels() {
    // 36 x 24 ft less 12 x 10 at the upper right. From (24,14): down 14 ft, left 24 ft: down.
    // 4 in: panels to 10 ft. 24 x 24: 3 x 3 of 8 ft, 4 joints of 24 ft. 12 x 14: 2 x 2 of 6 x 7;
    // the joint at Y = 7 goes on from that at Y = 8, 1 ft off (1/4 panel is 1'-9"): panels 6 x 8
    // and 6 x 6. 14 + 96 + 14 + 12 ft.
    Part part =
        joints(
            new SiteJob()
                .with(
                    slab("A")
                        .shape(
                            Plan.outline(Plan.ring(0, 0, 36, 0, 36, 14, 24, 14, 24, 24, 0, 24)))));

    assertEquals(136, row(part, "control joints").amount(), ROUNDING);
    assertEquals(13, row(part, "panels").amount());
    assertTrue(row(part, "panels").working().contains("9 of 8'-0\" × 8'-0\" (1.00)"));
    assertTrue(row(part, "panels").working().contains("2 of 8'-0\" × 6'-0\" (1.33)"));
    assertTrue(row(part, "panels").working().contains("2 of 6'-0\" × 6'-0\" (1.00)"));
    assertEquals("control joint, from a re-entrant corner", part.joints().get(0).what());
    assertEquals("from X 24'-0\", Y 14'-0\" to X 24'-0\", Y 0'-0\"", part.joints().get(0).note());
    assertTrue(
        notes(part).contains("from X 0'-0\", Y 8'-0\" to X 36'-0\", Y 8'-0\""),
        () -> notes(part).toString());
    assertTrue(part.cautions().isEmpty(), () -> part.cautions().toString());
  }

  /**
   * A bay of 20 x 14 ft in the lower right corner of an L of 64 x 36: 44 ft + 20 ft are not 64 ft
   * in floating point, and a bay written 1/32 in short leaves a sliver. Neither is a corner from
   * which the floor's own edge is cut.
   */
  @ParameterizedTest
  @ValueSource(doubles = {240, 239.96875})
  void aRecessOnTheOutsideLeavesNoCornerThere(double lengthInches) {
    Part part =
        joints(
            new SiteJob()
                .with(
                    slab("A")
                        .shape(Plan.outline(Plan.ring(0, 0, 64, 0, 64, 30, 52, 30, 52, 36, 0, 36))))
                .with(
                    recess("R", "A", inches("4"))
                        .size(Length.ofInches(lengthInches), feet(14))
                        .at(feet(44), feet(0))
                        .joints(JointSpacing.NONE)));

    assertTrue(notes(part).stream().anyMatch(note -> note.startsWith("from X 44'-0\", Y 14'-0\"")));
    assertEquals(
        List.of(),
        notes(part).stream().filter(note -> note.matches("from X 6[34].* to X 6[34].*")).toList());
  }

  /** As on the plan, wherever the outline lies in the job's. */
  @Test
  void placesAreToldFromTheCornerOfTheRectangleRoundTheFloor() {
    double[] there = {100, -50, 136, -50, 136, -36, 124, -36, 124, -26, 100, -26};
    Part part = joints(new SiteJob().with(slab("A").shape(Plan.outline(Plan.ring(there)))));

    assertEquals("from X 24'-0\", Y 14'-0\" to X 24'-0\", Y 0'-0\"", part.joints().get(0).note());
  }

  @Test
  void anOpeningsCornersHaveJointsAndOneServesForTwo() {
    // 20 x 10 ft, 4 in; opening 2 x 2 at (9,2): its lower corners are 2 ft from the side at Y = 0,
    // 2 ft apart: one joint serves both (1/4 of 10 ft is 2.5 ft). The upper corners: up 6 ft each,
    // 2 ft apart: one. Which of the two: the first of equal length.
    Part part =
        joints(
            new SiteJob()
                .with(slab("A").shape(Plan.outline(Plan.box(0, 0, 20, 10), Plan.box(9, 2, 2, 2)))));

    List<JointLine> fromCorners =
        part.joints().stream().filter(joint -> joint.what().contains("re-entrant")).toList();
    assertEquals(2, fromCorners.size());
    assertEquals(List.of(2.0, 6.0), fromCorners.stream().map(j -> j.length().feet()).toList());
  }

  @Test
  void aRecessWithAPlaceCountsInARectangle() {
    // 20 x 10 ft; recess 8 x 4 at the upper right corner (12,6): what is left is an L. From (12,6):
    // down 6 ft, left 12 ft: down. 12 x 10: 2 x 1 of 6 x 10 is 1.67: 2 x 2 of 6 x 5, 10 + 12 ft.
    // 8 x 6: 1.33. 28 ft; the recess's own floor, 8 x 4, is cut in two: 4 ft.
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(20), feet(10)))
            .with(
                recess("R", "A", SiteJob.inches("2")).size(feet(8), feet(4)).at(feet(12), feet(6)));

    Part part = joints(job);

    assertEquals(28, row(part, "control joints").amount(), ROUNDING);
    assertEquals(
        4,
        part.quantities().stream()
            .filter(q -> q.section().equals("R") && q.what().startsWith("control"))
            .findFirst()
            .orElseThrow()
            .amount(),
        ROUNDING);
  }

  @Test
  void aRecessWithoutAPlaceIsCautioned() {
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(20), feet(10)))
            .with(recess("R", "A", SiteJob.inches("2")).size(feet(8), feet(4)));

    assertTrue(joints(job).cautions().get(0).says().contains("recess R: give its X and Y"));
  }

  @Test
  void aSlantedFloorIsCutSquareToItsSidesAndSaysWhatIsNoRectangle() {
    // A floor 30 x 10 ft with a chamfer of 5 ft: no re-entrant corner, one panel is no rectangle.
    Part part =
        joints(
            new SiteJob()
                .with(slab("A").shape(Plan.outline(Plan.ring(0, 0, 30, 0, 30, 5, 25, 10, 0, 10)))));

    assertEquals(20, row(part, "control joints").amount(), ROUNDING);
    assertEquals(3, row(part, "panels").amount());
    assertEquals(1, part.cautions().size());
    assertTrue(part.cautions().get(0).says().startsWith("1 of 3 panels are no rectangles"));
  }

  @Test
  void fromAnObtuseCornerTheJointRunsSquareToASide() {
    // At (10,8) the side turns by 45° into the concrete: going on along either side would leave a
    // corner of 45°, so the joint is square to one: 8 ft down to Y = 0.
    Part part =
        joints(
            new SiteJob()
                .with(slab("A").shape(Plan.outline(Plan.ring(0, 0, 16, 0, 16, 14, 10, 8, 0, 8)))));

    JointLine first = part.joints().get(0);
    assertEquals("control joint, from a re-entrant corner", first.what());
    assertEquals("from X 10'-0\", Y 8'-0\" to X 10'-0\", Y 0'-0\"", first.note());
  }

  @Test
  void aTurnedPlanHasTheSameJoints() {
    // The L above turned by the angle of 3-4-5.
    double[] straight = {0, 0, 35, 0, 35, 15, 25, 15, 25, 25, 0, 25};
    double[] turned = new double[straight.length];
    for (int i = 0; i < straight.length; i += 2) {
      turned[i] = 0.8 * straight[i] - 0.6 * straight[i + 1];
      turned[i + 1] = 0.6 * straight[i] + 0.8 * straight[i + 1];
    }
    Part one = joints(new SiteJob().with(slab("A").shape(Plan.outline(Plan.ring(straight)))));
    Part other = joints(new SiteJob().with(slab("A").shape(Plan.outline(Plan.ring(turned)))));

    assertEquals(row(one, "panels").working(), row(other, "panels").working());
    assertEquals(row(one, "control joints").amount(), row(other, "control joints").amount(), 1e-6);
  }

  @Test
  void ofRandomStaircasesNoCornerIsWithoutAJointAndNoConcreteIsLost() {
    for (long seed = 0; seed < 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Shape.Outline outline = staircase(random);
      Job job = new SiteJob().with(slab("A").shape(outline)).build();
      List<FloorPlan> floor = Floors.plan(job, job.section("A"));
      FloorPanels panels = FloorPanels.of(floor, feet(10));
      String told = "seed " + seed;

      double m2 =
          floor.stream()
              .flatMap(plan -> plan.cutAlong(all(panels)).stream())
              .mapToDouble(FloorPlan::areaM2)
              .sum();
      assertEquals(Floors.ownAreaM2(job, job.section("A")), m2, 1e-6 * m2, told);
      reentrant(outline).forEach(at -> assertTrue(distance(panels, at) < 2.5001 * FT, told));
      assertTrue(
          panels.panels().stream().allMatch(p -> p.longSide().feet() < 10.01),
          () -> told + panels.panels());
    }
  }

  private static List<Line> all(FloorPanels panels) {
    return Stream.concat(panels.cornerLines().stream(), panels.panelLines().stream()).toList();
  }

  /** Steps up to the middle and down again: rising X, floor at Y = 0. */
  private static Shape.Outline staircase(SplittableRandom random) {
    int steps = 2 + random.nextInt(4);
    double[] points = new double[4 * steps + 4];
    double x = 0;
    double last = -1;
    int i = 0;
    points[i++] = 0;
    points[i++] = 0;
    ArrayDeque<double[]> tops = new ArrayDeque<>();
    for (int step = 0; step < steps; step++) {
      double height = 3 + random.nextInt(20);
      height = height == last ? height + 1 : height;
      last = height;
      double to = x + 3 + random.nextInt(15);
      tops.push(new double[] {x, height});
      tops.push(new double[] {to, height});
      x = to;
    }
    points[i++] = x;
    points[i++] = 0;
    for (double[] top : tops) {
      points[i++] = top[0];
      points[i++] = top[1];
    }
    return Plan.outline(Plan.ring(points));
  }

  private static List<double[]> reentrant(Shape.Outline outline) {
    List<Shape.Point> points = outline.rings().get(0).points();
    List<double[]> corners = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Shape.Point a = points.get((i + points.size() - 1) % points.size());
      Shape.Point b = points.get(i);
      Shape.Point c = points.get((i + 1) % points.size());
      double cross =
          (b.x().feet() - a.x().feet()) * (c.y().feet() - b.y().feet())
              - (b.y().feet() - a.y().feet()) * (c.x().feet() - b.x().feet());
      if (cross < -1e-9) {
        corners.add(new double[] {b.x().metres(), b.y().metres()});
      }
    }
    return corners;
  }

  private static double distance(FloorPanels panels, double[] point) {
    return panels.cornerLines().stream()
        .mapToDouble(line -> distance(line, point[0], point[1]))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static double distance(Line line, double x, double y) {
    double ux = (line.x2M() - line.x1M()) / line.lengthM();
    double uy = (line.y2M() - line.y1M()) / line.lengthM();
    double along = ux * (x - line.x1M()) + uy * (y - line.y1M());
    double on = Math.max(0, Math.min(line.lengthM(), along));
    double dx = x - line.x1M() - on * ux;
    double dy = y - line.y1M() - on * uy;
    return Math.sqrt(dx * dx + dy * dy);
  }
}
