package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Plate;
import org.pourbook.job.Position;
import org.pourbook.measure.Length;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;

/** Plates on the plan, with their bolts, and those that have no place there. */
class PlanPlatesTest {

  private static Plate plate(String code, Length length, int count) {
    Plate plain = BoltTakeoffTest.plate("1/2 x 10", length, Optional.of(feet(4)), count);
    return with(plain, code, plain.start(), plain.directionDegrees());
  }

  private static Plate at(Plate plain, long x, long y, double degrees) {
    Optional<Position> start = Optional.of(new Position(feet(x), feet(y)));
    return with(plain, plain.code(), start, OptionalDouble.of(degrees));
  }

  private static Plate with(
      Plate plain, String code, Optional<Position> start, OptionalDouble degrees) {
    return new Plate(
        code,
        plain.section(),
        plain.length(),
        plain.count(),
        plain.bolt(),
        plain.spacing(),
        plain.thickness(),
        plain.projection(),
        plain.pieceLength(),
        plain.width(),
        start,
        degrees,
        plain.place());
  }

  private static SiteJob floor() {
    return new SiteJob().with(slab("A").size(feet(30), feet(30)));
  }

  /** P along the bottom, 2 ft in, and Q up the right side from its lower end. */
  @Test
  void eachPlateIsALineWithItsNameAndItsOwnBolts() {
    SiteJob job = floor().with(at(plate("P", feet(12), 1), 2, 1, 0));
    DrawnPlan plan = DrawnPlan.of(job.with(at(plate("Q", feet(10), 1), 29, 3, 90)));
    Drawing.Line side = plan.lines(Stroke.FORMED).get(0);
    double perFoot = DrawnPlan.length(side) / 30;

    List<Drawing.Line> plates = plan.lines(Stroke.PLATE);
    assertEquals(2, plates.size());
    isAt(plates.get(0), side, perFoot, 2, 1, 14, 1);
    isAt(plates.get(1), side, perFoot, 29, 3, 29, 13);
    for (int i = 0; i < 2; i++) {
      String code = i == 0 ? "P" : "Q";
      Drawing.Line line = plates.get(i);
      Drawing.Words name = plan.words(code);
      double across = i == 0 ? name.y() - line.y1() : name.x() - line.x1();
      assertEquals(-9, across, 1e-6, code + " is told on the plate's left");
      List<Length> listed =
          plan.takeOff().boltPieces().stream()
              .filter(piece -> piece.plate().equals(code))
              .flatMap(piece -> piece.positions().stream())
              .toList();
      List<Drawing.Dot> on =
          plan.bolts().stream()
              .filter(dot -> near(line.x1(), dot.x(), line.x2()))
              .filter(dot -> near(line.y1(), dot.y(), line.y2()))
              .toList();
      assertEquals(listed.size(), on.size(), code);
      for (int k = 0; k < listed.size(); k++) {
        double away = Math.hypot(on.get(k).x() - line.x1(), on.get(k).y() - line.y1());
        assertEquals(listed.get(k).feet() * perFoot, away, 1e-6, code + k);
      }
    }
    assertEquals(
        plan.takeOff().boltPieces().stream().mapToInt(piece -> piece.positions().size()).sum(),
        plan.bolts().size());
    assertTrue(plan.texts().contains("anchor bolt"), "the legend");
    assertTrue(plan.texts().stream().noneMatch(text -> text.startsWith("Bolts of")));
  }

  private static boolean near(double from, double at, double to) {
    return at > Math.min(from, to) - 1e-6 && at < Math.max(from, to) + 1e-6;
  }

  private static void isAt(
      Drawing.Line line, Drawing.Line side, double perFoot, int x1, int y1, int x2, int y2) {
    assertEquals(side.x1() + x1 * perFoot, line.x1(), 1e-6);
    assertEquals(side.y1() - y1 * perFoot, line.y1(), 1e-6);
    assertEquals(side.x1() + x2 * perFoot, line.x2(), 1e-6);
    assertEquals(side.y1() - y2 * perFoot, line.y2(), 1e-6);
  }

  /** 24 ft in pieces of 16 and 8 ft: 9 in from the ends of each, in two rows of like plates. */
  @Test
  void boltsOfAPlateWithoutAPlaceAreTold() {
    DrawnPlan plan =
        DrawnPlan.of(floor().with(plate("P", feet(24), 2)).with(plate("Q", feet(8), 1)));

    assertEquals(
        List.of(
            "Bolts of plate P × 2, at 0'-9\", 4'-4 1/2\", 8'-0\", 11'-7 1/2\", 15'-3\";"
                + " next piece 0'-9\", 4'-0\", 7'-3\"",
            "Bolts of plate Q, at 0'-9\", 4'-0\", 7'-3\""),
        plan.texts().stream().filter(text -> text.startsWith("Bolts of")).toList());
    assertEquals(0, plan.bolts().size() + plan.lines(Stroke.PLATE).size());
    assertTrue(!plan.texts().contains("anchor bolt"), "the legend tells what is drawn");
  }

  @Test
  void aPlateOfWhichOnlyTheStartOrTheDirectionIsWrittenIsTold() {
    Plate plain = plate("P", feet(8), 1);
    Optional<Position> start = Optional.of(new Position(feet(2), feet(2)));
    for (Plate half :
        List.of(
            with(plain, "P", start, OptionalDouble.empty()),
            with(plain, "P", Optional.empty(), OptionalDouble.of(90)))) {
      DrawnPlan plan = DrawnPlan.of(floor().with(half));

      assertEquals(0, plan.lines(Stroke.PLATE).size());
      assertTrue(plan.texts().stream().anyMatch(text -> text.startsWith("Bolts of plate P, at")));
    }
  }
}
