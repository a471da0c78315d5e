package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.bare;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.thickening;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.job.JointKind;
import org.pourbook.job.Kind;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;

/** Where the lines of sides, edges and bars lie, in feet from the lower left corner of slab A. */
class PlanSidesTest {

  /** Ends of each line of a stroke, from the start of A's first side: x1, y1, x2, y2 [ft]. */
  private static List<List<Double>> ends(DrawnPlan plan, Stroke stroke, int feetOfFirstSide) {
    Drawing.Line first = plan.lines(Stroke.FORMED).get(0);
    double perFoot = DrawnPlan.length(first) / feetOfFirstSide;
    List<List<Double>> ends = new ArrayList<>();
    for (Drawing.Line line : plan.lines(stroke)) {
      ends.add(
          List.of(
              rounded((line.x1() - first.x1()) / perFoot),
              rounded((first.y1() - line.y1()) / perFoot),
              rounded((line.x2() - first.x1()) / perFoot),
              rounded((first.y1() - line.y2()) / perFoot)));
    }
    return ends;
  }

  private static double rounded(double feet) {
    return Math.round(feet * 1e6) / 1e6 + 0.0;
  }

  private static List<Double> line(double x1, double y1, double x2, double y2) {
    return List.of(x1, y1, x2, y2);
  }

  /** 1 ft in, and 1 ft short where the next side is turned down too. */
  @Test
  void theInnerLineOfAnEdgeLiesWithinTheSlab() {
    SiteJob all = new SiteJob().with(slab("A").edge("16", "12", Sides.ALL));
    SiteJob two = new SiteJob().with(slab("A").edge("16", "12", Sides.of(List.of("L1", "W2"))));

    assertEquals(
        List.of(line(1, 1, 35, 1), line(35, 1, 35, 23), line(35, 23, 1, 23), line(1, 23, 1, 1)),
        ends(DrawnPlan.of(all), Stroke.TURNED_DOWN, 36));
    assertEquals(
        List.of(line(0, 1, 35, 1), line(35, 1, 35, 24)),
        ends(DrawnPlan.of(two), Stroke.TURNED_DOWN, 36));
  }

  @Test
  void sidesThatAreNotFormedAreThinAndPartsBelowDashed() {
    SiteJob job =
        new SiteJob()
            .with(slab("A").formed(Sides.of(List.of("L1"))).at(feet(0), feet(0)))
            .with(
                recess("R", "A", inches("2"))
                    .size(feet(6), feet(4))
                    .at(feet(2), feet(3))
                    .formed(Sides.NONE))
            .with(thickening("T", "A").size(feet(4), feet(1)).at(feet(22), feet(4)).thick("12"))
            .with(bare("F", Kind.FOOTING).size(feet(9), feet(2)).at(feet(38), feet(5)).thick("9"));
    DrawnPlan plan = DrawnPlan.of(job);

    assertEquals(List.of(line(0, 0, 36, 0)), ends(plan, Stroke.FORMED, 36));
    // the scale's three lines come last
    assertEquals(
        List.of(line(36, 0, 36, 24), line(36, 24, 0, 24), line(0, 24, 0, 0)),
        ends(plan, Stroke.SIDE, 36).subList(0, 3));
    assertEquals(6, plan.lines(Stroke.SIDE).size());
    assertEquals(
        List.of(line(2, 3, 8, 3), line(8, 3, 8, 7), line(8, 7, 2, 7), line(2, 7, 2, 3)),
        ends(plan, Stroke.RECESS, 36));
    List<List<Double>> below = ends(plan, Stroke.BELOW, 36);
    assertEquals(8, below.size());
    assertTrue(below.contains(line(38, 5, 47, 5)), "the footing: " + below);
    assertTrue(below.contains(line(22, 4, 26, 4)), "the thickening: " + below);
  }

  /** 2 ft across, 2 ft right of the slab and 3 ft up. */
  @Test
  void aPierIsAsWideAsItIsWrittenAndStandsAtItsPlace() {
    Shape round = new Shape.Round(feet(2));
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(12), feet(12)).at(feet(0), feet(0)))
            .with(bare("P", Kind.PIER).shape(round).thick("36").at(feet(14), feet(3)));
    DrawnPlan plan = DrawnPlan.of(job);
    List<List<Double>> ring = ends(plan, Stroke.SIDE, 12).subList(0, 48);

    for (List<Double> chord : ring) {
      assertEquals(1, Math.hypot(chord.get(0) - 15, chord.get(1) - 4), 1e-5, "" + chord);
    }
    Drawing.Words name = plan.words("P, ø 2'-0\", 36\"");
    Drawing.Line side = plan.lines(Stroke.FORMED).get(0);
    double perFoot = DrawnPlan.length(side) / 12;
    assertEquals(side.x1() + 15 * perFoot, name.x(), 1e-6);
    double fromCentre = Math.abs(name.y() - (side.y1() - 4 * perFoot));
    assertTrue(fromCentre > perFoot, "clear of the ring: " + fromCentre / perFoot + " ft");
  }

  /** 8 pt long, square to their side, half of it on either hand. */
  @Test
  void barsCrossTheirSide() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(24), feet(20)).at(feet(0), feet(0)));
    job.with(PlanDrawingTest.joint("J1", JointKind.TIE, "A", "L1"));
    job.with(PlanDrawingTest.joint("J2", JointKind.TIE, "A", "W2"));
    DrawnPlan plan = DrawnPlan.of(job);
    Drawing.Line bottom = plan.lines(Stroke.FORMED).get(0);

    // 12'-0" at 18 in on each
    assertEquals(16, plan.lines(Stroke.BAR).size());
    for (Drawing.Line bar : plan.lines(Stroke.BAR).subList(0, 8)) {
      assertEquals(bar.x1(), bar.x2(), 1e-9);
      assertEquals(4, Math.abs(bar.y1() - bottom.y1()), 1e-9);
      assertEquals(8, Math.abs(bar.y1() - bar.y2()), 1e-9);
    }
    for (Drawing.Line bar : plan.lines(Stroke.BAR).subList(8, 16)) {
      assertEquals(bar.y1(), bar.y2(), 1e-9);
      assertEquals(4, Math.abs(bar.x1() - bottom.x2()), 1e-9);
      assertEquals(8, Math.abs(bar.x1() - bar.x2()), 1e-9);
    }
  }

  /** A joint on a recess's side that is no step joint leaves the ties of the step as they are. */
  @Test
  void stepTiesAreDrawnBesideAJointOfTheSameSide() {
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(40), feet(26)).bars("#4", "16"))
            .with(recess("R", "A", inches("6")).size(feet(10), feet(8)).at(feet(20), feet(6)))
            .with(PlanDrawingTest.joint("J1", JointKind.TIE, "R", "L1"));
    DrawnPlan plan = DrawnPlan.of(job);
    int listed =
        plan.takeOff().barMarks().stream()
            .filter(mark -> mark.shape() == BarMark.BarShape.STEP)
            .mapToInt(BarMark::count)
            .sum();

    assertEquals(32, listed);
    assertEquals(32 + 8, plan.lines(Stroke.BAR).size());
  }

  @Test
  void aPlanFillsThePageFromItsLeftmostAndHighestPoint() {
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(60), feet(20)).at(feet(100), feet(50)))
            .with(slab("B").size(feet(10), feet(10)).at(feet(160), feet(60)));
    List<Drawing.Line> sides = DrawnPlan.of(job).lines(Stroke.FORMED);

    // 16 pt round it for the lengths of sides; wider than high for the page
    assertEquals(16, sides.stream().mapToDouble(Drawing.Line::x1).min().orElseThrow(), 1e-6);
    assertEquals(
        Drawing.WIDTH - 16, sides.stream().mapToDouble(Drawing.Line::x1).max().orElseThrow(), 1e-6);
    assertEquals(16, sides.stream().mapToDouble(Drawing.Line::y1).min().orElseThrow(), 1e-6);
  }
}
