package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.job.DepthCheck;
import org.pourbook.job.Job;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

/** Depth checks in place of the thickness (CON-10). */
class DepthChecksTest {

  /** Relative; a few rounding errors of the triangulation. */
  private static final double ROUNDING = 1e-9;

  private static DepthCheck check(double xFt, double yFt, double depthInches) {
    return new DepthCheck(
        "A",
        Length.ofInches(xFt * 12),
        Length.ofInches(yFt * 12),
        Length.ofInches(depthInches),
        SiteJob.PLACE);
  }

  /** 36 x 24 ft, 4 in, the base tilted: 4 in at the corner, and 1/8 in deeper every 12 ft. */
  private static SiteJob tilted(SiteJob job) {
    for (double x : new double[] {2, 18, 34}) {
      for (double y : new double[] {2, 12, 22}) {
        job.with(check(x, y, 4 + x / 96 + y / 96));
      }
    }
    return job;
  }

  private static Quantity row(Part part, String what) {
    return part.quantities().stream()
        .filter(quantity -> quantity.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aTiltedBaseHasTheVolumeOfItsMiddle() {
    // All round the middle: 4 + 18/96 + 12/96 = 4.3125 in. 864 ft2 x 4.3125/12 / 27 = 11.5 yd3;
    // no scatter, so 3 % for spill alone: 11.845.
    Part part = ConcreteTakeoff.of(tilted(new SiteJob().with(slab("A"))).build());

    assertEquals(11.5, row(part, "measured slab").amount(), 11.5 * ROUNDING);
    assertEquals(11.845, row(part, "order by depth checks").amount(), 1e-6);
    assertEquals(3, row(part, "measured slab").allowancePercent().orElseThrow(), 1e-6);
    ConcreteNeed need = part.concrete().get(0);
    assertEquals(11.5, Unit.YD3.fromBase(need.planM3()), 11.5 * ROUNDING);
    assertEquals(11.845, Unit.YD3.fromBase(need.allowedM3()), 1e-6);
    assertTrue(
        row(part, "measured slab").working().contains("design 4\" = 10.67 yd3"),
        row(part, "measured slab").working());
    assertTrue(part.cautions().isEmpty(), () -> part.cautions().toString());
  }

  @Test
  void scatterIsOrderedForAtTheConfidence() {
    // Four corners and the middle: residuals about the plane +d, −d, +d, −d, 0: s = √(4d²/2).
    // Mean by the four triangles: a third of it is the middle's, a sixth each corner's, so that
    // se = s √(1/9 + 4/36). d = 1/4 in: se = 1/6 in; t(90 %, 2) = 1.8856.
    SiteJob job = new SiteJob().with(slab("A"));
    List.of(
            check(0, 0, 4.25),
            check(36, 0, 3.75),
            check(36, 24, 4.25),
            check(0, 24, 3.75),
            check(18, 12, 4))
        .forEach(job::with);
    Part part = ConcreteTakeoff.of(job.build());

    // The four triangles about the middle: corner values cancel, mean 4 in
    double net = 864 * 4 / 12.0 / 27;
    double margin = 1.885618 / 6 / 12 * 864 / 27;
    assertEquals(net, row(part, "measured slab").amount(), net * ROUNDING);
    assertEquals((net + margin) * 1.03, row(part, "order by depth checks").amount(), 1e-4);
    assertEquals(
        (net + margin) * 1.03, Unit.YD3.fromBase(part.concrete().get(0).allowedM3()), 1e-4);
  }

  @Test
  void fourChecksLeaveTheDesignThickness() {
    SiteJob job = new SiteJob().with(slab("A"));
    for (int i = 0; i < 4; i++) {
      job.with(check(2 + 8 * i, 2 + 5 * i * i % 20, 5));
    }
    Part part = ConcreteTakeoff.of(job.build());

    assertEquals(864 / 81.0, row(part, "plan slab").amount(), ROUNDING);
    assertTrue(part.cautions().get(0).says().startsWith("Only 4 depth checks count"));
  }

  @Test
  void checksInAnEdgeOrARecessAreLeftOut() {
    // Edge 16 in under a slab of 4 in, 12 in wide, bank 1 to 1: its top is 12 + 12 in wide.
    SiteJob job =
        tilted(new SiteJob().with(slab("A").edge("16", "12", Sides.ALL)))
            .with(recess("R", "A", inches("2")).size(feet(4), feet(4)).at(feet(4), feet(4)))
            .with(check(1.9, 10, 16))
            .with(check(6, 6, 7));
    Part part = ConcreteTakeoff.of(job.build());

    // The nine stand 2 ft from the sides: just clear of the edge.
    assertTrue(row(part, "measured slab").working().contains("mean of 9 depth checks"));
    assertTrue(part.cautions().get(0).says().startsWith("2 of 11 depth checks lie in an edge"));
    // the turned-down edge is a row of its own, and takes the spill
    assertEquals(3, row(part, "turned-down edge").allowancePercent().orElseThrow(), ROUNDING);
  }

  @Test
  void thinPointsAThinMeanAndAShortOrderAreCautioned() {
    SiteJob job = new SiteJob().with(slab("A"));
    for (double[] at : new double[][] {{2, 2}, {34, 2}, {34, 22}, {2, 22}, {18, 12}}) {
      job.with(check(at[0], at[1], 3.2));
    }
    List<Caution> cautions = ConcreteTakeoff.of(job.build()).cautions();

    assertEquals(3, cautions.size());
    assertTrue(cautions.get(0).says().contains("is under the net at the design thickness"));
    assertTrue(cautions.get(1).says().startsWith("5 of 5 depth checks are more than 3/4\" under"));
    assertTrue(cautions.get(2).says().startsWith("The mean depth of 3.20\" is more than 3/8\""));
    assertEquals("CON-10, ACI 117-10 § 4.5.4", cautions.get(1).rule());
  }

  @Test
  void theStripsAddUpToTheMeasuredVolume() {
    Job job = tilted(new SiteJob().with(slab("A"))).build();

    double yd3 =
        PourTakeoff.of(job, Offer.NOTHING).strips().stream()
            .mapToDouble(strip -> Unit.YD3.fromBase(strip.volumeM3()))
            .sum();
    assertEquals(11.5, yd3, 11.5 * ROUNDING);
  }

  /**
   * Rough bases of a known mean: the measured mean and its margin cover it as often as is said,
   * also where most of the checks stand close together. 4,000 trials: standard error 0.5 %.
   */
  @ParameterizedTest
  @ValueSource(strings = {"3 by 3", "4 by 4", "bunched"})
  void theStatedConfidenceIsKept(String places) {
    SplittableRandom random = new SplittableRandom(20261125);
    int covered = 0;
    int trials = 4000;
    for (int trial = 0; trial < trials; trial++) {
      SiteJob job = new SiteJob().with(slab("A"));
      for (double[] at : places(places, random)) {
        double depth = 4 + (at[0] - 18) / 96 + (at[1] - 12) / 60 + 0.3 * normal(random);
        job.with(check(at[0], at[1], depth));
      }
      Job built = job.build();
      MeasuredDepth depth = MeasuredDepth.of(built, built.section("A")).orElseThrow();
      double order = depth.volumeM3() + depth.marginM3(built.practice());
      covered += order >= 864 / 81.0 * Unit.YD3.toBase(1) ? 1 : 0;
    }
    assertEquals(90, 100.0 * covered / trials, 1.5, "seed 20261125");
  }

  /** One check somewhere in each of like parts; or one near each corner, and eight near one. */
  private static List<double[]> places(String places, SplittableRandom random) {
    List<double[]> at = new ArrayList<>();
    if (places.equals("bunched")) {
      for (int i = 0; i < 12; i++) {
        double x = random.nextDouble(0, 0.15);
        double y = random.nextDouble(0, 0.15);
        at.add(
            new double[] {
              36 * (i == 1 || i == 2 ? 1 - x : x), 24 * (i == 2 || i == 3 ? 1 - y : y)
            });
      }
      return at;
    }
    int perSide = places.equals("3 by 3") ? 3 : 4;
    for (int i = 0; i < perSide * perSide; i++) {
      double x = 36 * (i % perSide + random.nextDouble(0.2, 0.8)) / perSide;
      double y = 24 * (i / perSide + random.nextDouble(0.2, 0.8)) / perSide;
      at.add(new double[] {x, y});
    }
    return at;
  }

  /** Sum of twelve uniform numbers: mean 0, deviation 1. */
  private static double normal(SplittableRandom random) {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return sum;
  }
}
