package org.pourbook.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

/** Areas, moved sides and cut lines of random outlines, each worked out by another way too. */
class OutlineProperties {

  /** Square metres in a cell of a plan of cells. */
  private static final double CELL_M2 = CellPlan.CELL_MM * CellPlan.CELL_MM * 1e-6;

  private static final double CELL_M = CellPlan.CELL_MM * 1e-3;

  /** Outlines of tens of metres: some thousand rounding errors, far below a cm2 or a nanometre. */
  private static final double ROUNDING = 1e-9;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static Figure figure(Shape.Outline outline) {
    assertEquals(Optional.empty(), Outlines.check(outline));
    return Figures.of(outline, Sides.ALL, Sides.NONE);
  }

  /** Returns corners at growing angles round a middle, at random distances. */
  private static Shape.Ring star(SplittableRandom random) {
    int n = random.nextInt(3, 16);
    List<long[]> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + random.nextDouble(0.1, 0.9)) / n;
      double away = random.nextDouble(2000, 12_000);
      corners.add(
          new long[] {
            Math.round(15_000 + away * StrictMath.cos(angle)),
            Math.round(9_000 + away * StrictMath.sin(angle))
          });
    }
    return Drawn.millimetres(corners);
  }

  /** Returns twice the sum of trapezoids under the sides, exactly [mm2]. */
  private static Fraction shoelaceM2(Shape.Ring ring) {
    Fraction twice = Fraction.ZERO;
    List<Shape.Point> points = ring.points();
    for (int i = 0; i < points.size(); i++) {
      Shape.Point a = points.get(i);
      Shape.Point b = points.get((i + 1) % points.size());
      twice =
          twice.plus(metres(b.x()).plus(metres(a.x())).times(metres(b.y()).minus(metres(a.y()))));
    }
    Fraction area = twice.over(Fraction.of(2));
    return area.compareTo(Fraction.ZERO) < 0 ? Fraction.ZERO.minus(area) : area;
  }

  private static Fraction metres(Length length) {
    return Fraction.of(length.nanometres()).over(Fraction.of(1_000_000_000L));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void areaIsTheShoelaceOnExactFractions(long seed) {
    Shape.Ring ring = star(new SplittableRandom(seed));
    Figure figure = Drawn.figure(ring);
    double exact = shoelaceM2(ring).value();
    assertEquals(exact, figure.areaM2(), exact * 1e-15, () -> "seed " + seed);
    assertEquals(exact, figure.movedInAreaM2(0, s -> true), exact * 1e-13, () -> "seed " + seed);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void sidesOfCellPlansMoveByWholeCellsAsCounted(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    CellPlan plan = CellPlan.random(random, random.nextInt(5, 15), random.nextInt(20, 800));
    Figure figure = figure(plan.outline());
    assertEquals(plan.cells() * CELL_M2, figure.areaM2(), ROUNDING, () -> "seed " + seed);
    for (int d = 1; d <= 3; d++) {
      String message = "seed " + seed + ", " + d + " cells";
      assertEquals(
          plan.cellsMovedIn(d) * CELL_M2,
          figure.movedInAreaM2(d * CELL_M, s -> true),
          ROUNDING,
          message + " in");
      assertEquals(
          plan.cellsMovedOut(d) * CELL_M2,
          figure.movedOutAreaM2(d * CELL_M, s -> true),
          ROUNDING,
          message + " out");
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void chosenSidesOfCellPlansTakeOrAddTheCellsAlongThem(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    CellPlan plan = CellPlan.random(random, 10, random.nextInt(20, 500));
    Figure figure = figure(plan.outline());
    Set<FigureSide> chosen = new HashSet<>();
    figure.sides().stream().filter(s -> random.nextBoolean()).forEach(chosen::add);
    assertEquals(
        (plan.cells() - cellsAlong(chosen, 1).size()) * CELL_M2,
        figure.movedInAreaM2(CELL_M, chosen::contains),
        ROUNDING,
        () -> "seed " + seed + " in");
    assertEquals(
        (plan.cells() + cellsAlong(chosen, -1).size()) * CELL_M2,
        figure.movedOutAreaM2(CELL_M, chosen::contains),
        ROUNDING,
        () -> "seed " + seed + " out");
  }

  /**
   * Returns the cells left (1) or right (−1) of the chosen sides, and those between two of them.
   */
  private static Set<List<Long>> cellsAlong(Set<FigureSide> chosen, int left) {
    Set<List<Long>> cells = new HashSet<>();
    for (FigureSide side : chosen) {
      long n = Math.round(side.length().metres() / CELL_M);
      double stepX = (side.x2M() - side.x1M()) / n;
      double stepY = (side.y2M() - side.y1M()) / n;
      // The middle of the cell beside each step; one more where the next side turns away.
      boolean turnsAway = left > 0 ? side.endAngleDeg() == 270 : side.endAngleDeg() == 90;
      boolean nextToo =
          chosen.stream()
              .anyMatch(
                  s -> s.x1M() == side.x2M() && s.y1M() == side.y2M() && s.ring() == side.ring());
      for (long i = 0; i < n + (turnsAway && nextToo ? 1 : 0); i++) {
        double x = side.x1M() + (i + 0.5) * stepX - left * 0.5 * stepY;
        double y = side.y1M() + (i + 0.5) * stepY + left * 0.5 * stepX;
        cells.add(List.of((long) Math.floor(x / CELL_M), (long) Math.floor(y / CELL_M)));
      }
    }
    return cells;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void pointsOnASideLeaveNoCrackInTheMovedOutline(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    long dx = random.nextLong(300_000_000L, 1_500_000_000L);
    long dy = random.nextLong(300_000_000L, 1_500_000_000L);
    List<long[]> corners = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      // Exactly on the side, or a nanometre off it.
      corners.add(new long[] {i * dx, i * dy + (i % 7 == 0 ? 0 : random.nextInt(-1, 2))});
    }
    corners.add(new long[] {-5 * dy, 5 * dx});
    Figure split = Drawn.figure(Drawn.nanometres(corners));
    Figure whole =
        Drawn.figure(Drawn.nanometres(List.of(corners.get(0), corners.get(7), corners.get(8))));
    double inset = random.nextDouble(0.05, 0.3);
    assertEquals(
        whole.movedInAreaM2(inset, s -> true),
        split.movedInAreaM2(inset, s -> true),
        1e-8, // sides in one line overlap by nanometres
        () -> "seed " + seed);
    for (boolean along : new boolean[] {true, false}) {
      List<Figure.Chord> expected = whole.lines(along, 0.4, inset);
      List<Figure.Chord> found = split.lines(along, 0.4, inset);
      assertEquals(expected.size(), found.size(), () -> "seed " + seed);
      for (int i = 0; i < found.size(); i++) {
        assertEquals(expected.get(i).offsetM(), found.get(i).offsetM(), 1e-8, "seed " + seed);
        assertEquals(expected.get(i).lengthM(), found.get(i).lengthM(), 1e-7, "seed " + seed);
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void barsOfCellPlansAreTheCellsInARow(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    CellPlan plan = CellPlan.random(random, 12, 600);
    Figure figure = figure(plan.outline());
    double y0 = figure.sides().stream().mapToDouble(FigureSide::y1M).min().orElseThrow();
    // Lines a third of a cell apart; those between the rows' edges run through one row of cells.
    double totalM = 0;
    for (Figure.Chord chord : figure.lines(true, CELL_M / 3, 0)) {
      double inRow = (chord.offsetM() - y0) / CELL_M;
      if (Math.abs(inRow - Math.round(inRow)) > 0.1) {
        totalM += chord.lengthM();
      }
    }
    assertEquals(2 * plan.cells() * CELL_M, totalM, ROUNDING, () -> "seed " + seed);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void allSidesOfStarsMoveAsTheLibrarysMitredBuffer(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Figure figure = Drawn.figure(star(random));
    // Where two sides turn by less than about 3° the library's buffer leaves the mitre out.
    while (figure.sides().stream().anyMatch(s -> Math.abs(s.startAngleDeg() - 180) < 4)) {
      figure = Drawn.figure(star(random));
    }
    double distance = random.nextDouble(0.05, 1.5);
    String message = "seed " + seed + ", " + distance + " m";
    assertEquals(
        buffer(figure, -distance).getArea(),
        figure.movedInAreaM2(distance, s -> true),
        ROUNDING,
        message + " in");
    assertEquals(
        buffer(figure, distance).getArea(),
        figure.movedOutAreaM2(distance, s -> true),
        ROUNDING,
        message + " out");
  }

  private static Geometry buffer(Figure figure, double distance) {
    BufferParameters mitred = new BufferParameters();
    mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
    mitred.setMitreLimit(1000);
    mitred.setSimplifyFactor(0);
    return BufferOp.bufferOp(Region.of(figure), distance, mitred);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void chosenSidesOfAConvexOutlineCutOffHalfPlanes(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int n = random.nextInt(3, 9);
    List<long[]> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      // On a circle, so convex; no turn under 12°.
      double angle = 2 * Math.PI * (i + random.nextDouble(-0.3, 0.3)) / n;
      corners.add(
          new long[] {
            Math.round(8000 * StrictMath.cos(angle)), Math.round(8000 * StrictMath.sin(angle))
          });
    }
    Figure figure = Drawn.figure(Drawn.millimetres(corners));
    int chosen = random.nextInt(1 << n);
    Figure.SideChoice which = side -> (chosen >> Integer.parseInt(side.name()) & 1) == 1;
    double distance = random.nextDouble(0.05, 5);
    List<double[]> left =
        new ArrayList<>(figure.sides().stream().map(s -> new double[] {s.x1M(), s.y1M()}).toList());
    for (FigureSide side : figure.sides()) {
      if (which.test(side)) {
        left = cutOff(left, side, distance);
      }
    }
    assertEquals(
        area(left),
        figure.movedInAreaM2(distance, which),
        ROUNDING,
        "seed " + seed + ", sides " + Integer.toBinaryString(chosen) + ", " + distance + " m");
  }

  /** Returns the corners of what lies further than a distance left of a side's line. */
  private static List<double[]> cutOff(List<double[]> corners, FigureSide side, double distance) {
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      double[] a = corners.get(i);
      double[] b = corners.get((i + 1) % corners.size());
      double aIn = leftOf(side, a) - distance;
      double bIn = leftOf(side, b) - distance;
      if (aIn >= 0) {
        kept.add(a);
      }
      if (aIn * bIn < 0) {
        double t = aIn / (aIn - bIn);
        kept.add(new double[] {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])});
      }
    }
    return kept;
  }

  private static double leftOf(FigureSide side, double[] point) {
    double dx = side.x2M() - side.x1M();
    double dy = side.y2M() - side.y1M();
    double cross = dx * (point[1] - side.y1M()) - dy * (point[0] - side.x1M());
    return cross / Math.sqrt(dx * dx + dy * dy);
  }

  private static double area(List<double[]> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      double[] a = corners.get(i);
      double[] b = corners.get((i + 1) % corners.size());
      twice += a[0] * b[1] - a[1] * b[0];
    }
    return twice / 2;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void barsOfStarsAreCutWhereExactFractionsSay(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Shape.Ring ring = star(random);
    boolean along = random.nextBoolean();
    List<Figure.Chord> chords = Drawn.figure(ring).lines(along, 0.4, 0);
    List<Double> offsets = chords.stream().map(Figure.Chord::offsetM).distinct().toList();
    assertTrue(offsets.size() > 2, () -> "seed " + seed);
    for (double offset : offsets) {
      List<Fraction> cuts = cuts(ring, Fraction.of(offset), along);
      List<Figure.Chord> found = chords.stream().filter(c -> c.offsetM() == offset).toList();
      assertEquals(cuts.size(), 2 * found.size(), () -> "seed " + seed + ", line at " + offset);
      for (int i = 0; i < found.size(); i++) {
        assertEquals(cuts.get(2 * i).value(), found.get(i).fromM(), ROUNDING, "seed " + seed);
        assertEquals(cuts.get(2 * i + 1).value(), found.get(i).toM(), ROUNDING, "seed " + seed);
      }
    }
  }

  /** Returns where a line cuts the sides of a ring, in order. */
  private static List<Fraction> cuts(Shape.Ring ring, Fraction offset, boolean along) {
    List<Fraction> cuts = new ArrayList<>();
    List<Shape.Point> points = ring.points();
    for (int i = 0; i < points.size(); i++) {
      Shape.Point a = points.get(i);
      Shape.Point b = points.get((i + 1) % points.size());
      Fraction ua = metres(along ? a.x() : a.y());
      Fraction ub = metres(along ? b.x() : b.y());
      Fraction va = metres(along ? a.y() : a.x());
      Fraction vb = metres(along ? b.y() : b.x());
      if ((va.compareTo(offset) < 0) != (vb.compareTo(offset) < 0)) {
        Fraction t = offset.minus(va).over(vb.minus(va));
        cuts.add(ua.plus(t.times(ub.minus(ua))));
      }
    }
    cuts.sort(Comparator.naturalOrder());
    // A line through a corner only touches.
    for (int i = cuts.size() - 2; i >= 0; i -= 2) {
      if (cuts.get(i + 1).minus(cuts.get(i)).value() < ROUNDING) {
        cuts.subList(i, i + 2).clear();
      }
    }
    return cuts;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void trianglesAndWhatLiesBeyondThemCoverAnOutlineOnce(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Figure figure = Drawn.figure(star(random));
    List<Surface.Point> points = new ArrayList<>();
    int n = random.nextInt(4, 30);
    for (int i = 0; i < n; i++) {
      // Whole half metres, so that many lie in one line or on one circle.
      double x = random.nextInt(10, 50) / 2.0;
      double y = random.nextInt(5, 35) / 2.0;
      points.add(new Surface.Point(x, y, random.nextDouble(0.08, 0.12)));
    }
    List<Patch> patches = Triangulation.patches(points, Region.of(figure));
    assertEquals(
        figure.areaM2(),
        patches.stream().mapToDouble(Patch::areaM2).sum(),
        ROUNDING,
        () -> "seed " + seed);
    for (Patch patch : patches) {
      // Never outside what was measured: between the points by triangles, outside their nearest.
      double[] shares = patch.shares();
      assertEquals(1, Arrays.stream(shares).sum(), ROUNDING, () -> "seed " + seed);
      double value = 0;
      for (int i = 0; i < shares.length; i++) {
        value += shares[i] * patch.held().get(i).value();
      }
      double held = value;
      assertTrue(held >= 0.08 && held <= 0.12, () -> "seed " + seed + ", value " + held);
    }
  }
}
