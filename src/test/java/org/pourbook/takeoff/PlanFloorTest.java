package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Shape;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;

/** Joints and strips of floors, and their numbers. */
class PlanFloorTest {

  /** By rule 3 strips of 8'-8" and panels of 10'-0" by 8'-8". */
  private static final SiteJob HOUSE =
      new SiteJob().with(slab("A").size(feet(40), feet(26)).at(feet(0), feet(0)));

  /** As many joints as HOUSE has, and a second slab of which only the place differs. */
  private static final SiteJob TWO =
      new SiteJob()
          .with(slab("A").size(feet(30), feet(26)).at(feet(0), feet(0)))
          .with(slab("B").size(feet(30), feet(26)).at(feet(35), feet(4)));

  private static List<Double> numbers(DrawnPlan plan, Stroke stroke) {
    return plan.lines(stroke).stream().map(Drawing.Line::y1).sorted().toList();
  }

  @Test
  void stripsDivideTheFloorAndAreNumberedFromItsLowerSide() {
    DrawnPlan plan = DrawnPlan.of(HOUSE);
    Drawing.Line side = plan.lines(Stroke.FORMED).get(0);
    double strip = DrawnPlan.length(side) / 40 * 26 / 3;

    assertEquals(2, plan.lines(Stroke.STRIP).size());
    for (int i = 1; i < 3; i++) {
      Drawing.Line line = plan.lines(Stroke.STRIP).get(i - 1);
      assertEquals(side.y1() - i * strip, line.y1(), 0.01);
      assertEquals(line.y1(), line.y2(), 0.01);
      assertEquals(side.x1(), line.x1(), 0.01);
      assertEquals(side.x2(), line.x2(), 0.01);
    }
    for (int i = 1; i <= 3; i++) {
      Drawing.Words number = plan.words("(" + i + ")");
      assertEquals(side.y1() - (i - 0.5) * strip, number.y(), 0.01);
      assertEquals(side.x1() + 24, number.x(), 0.01, "at its start");
    }
  }

  @Test
  void aFloorPlacedInOneGoHasNoNumberedStrip() {
    DrawnPlan plan = DrawnPlan.of(new SiteJob().with(slab("A").size(feet(16), feet(8))));

    assertEquals(0, plan.lines(Stroke.STRIP).size());
    assertTrue(!plan.texts().contains("(1)"), "" + plan.texts());
  }

  /** Its number and place, near its upper or right end, along it. */
  @Test
  void aJointTellsItsPlaceOnItself() {
    DrawnPlan plan = DrawnPlan.of(HOUSE);
    Drawing.Line side = plan.lines(Stroke.FORMED).get(0);
    double perFoot = DrawnPlan.length(side) / 40;

    isAt(plan.words("1: X 10'-0\""), side.x1() + 10 * perFoot, 16 + 24, -90);
    isAt(plan.words("3: X 30'-0\""), side.x1() + 30 * perFoot, 16 + 24, -90);
    isAt(plan.words("4: Y 8'-8\""), side.x2() - 24, side.y1() - 26 * perFoot / 3, 0);
    isAt(plan.words("5: Y 17'-4\""), side.x2() - 24, side.y1() - 52 * perFoot / 3, 0);
  }

  private static void isAt(Drawing.Words words, double x, double y, double degrees) {
    assertEquals(x, words.x(), 0.01, "" + words);
    assertEquals(y, words.y(), 0.01, "" + words);
    assertEquals(degrees, words.degrees(), 1e-9, "" + words);
  }

  /** The same lines and words within each, so many points further. */
  @Test
  void aSecondFloorIsMeasuredFromItsOwnCorner() {
    DrawnPlan plan = DrawnPlan.of(TWO);
    List<Drawing.Line> sides = plan.lines(Stroke.FORMED);
    double dx = sides.get(4).x1() - sides.get(0).x1();
    double dy = sides.get(4).y1() - sides.get(0).y1();

    assertEquals(35.0 / 30, dx / DrawnPlan.length(sides.get(0)), 1e-9);
    for (Stroke stroke : List.of(Stroke.JOINT, Stroke.STRIP)) {
      List<Drawing.Line> lines = plan.lines(stroke);
      int half = lines.size() / 2;
      assertTrue(half > 1, stroke.label());
      for (int i = 0; i < half; i++) {
        assertEquals(lines.get(i).x1() + dx, lines.get(i + half).x1(), 0.01, stroke.label());
        assertEquals(lines.get(i).y2() + dy, lines.get(i + half).y2(), 0.01, stroke.label());
      }
    }
    List<Drawing.Words> places =
        plan.words().stream().filter(words -> words.text().matches("\\d+: .*")).toList();
    int half = places.size() / 2;
    assertEquals(numbers(plan, Stroke.JOINT).size(), places.size());
    for (int i = 0; i < half; i++) {
      assertEquals(places.get(i).text(), places.get(i + half).text());
      assertEquals(places.get(i).x() + dx, places.get(i + half).x(), 0.01);
    }
  }

  /** 4 ft wide: places of short joints stand beyond their upper ends, outside the floor. */
  @Test
  void thePlaceOfAShortJointStandsBeyondItsEnd() {
    DrawnPlan plan = DrawnPlan.of(new SiteJob().with(slab("A").size(feet(80), feet(4))));
    Drawing.Line joint = plan.lines(Stroke.JOINT).get(0);

    isAt(plan.words("1: X 5'-8 9/16\""), joint.x1(), 16 - 9, 0);
    isAt(plan.words("joint 2"), plan.lines(Stroke.JOINT).get(1).x1(), 33, 0);
    DrawnPlan upright = DrawnPlan.of(new SiteJob().with(slab("A").size(feet(4), feet(80))));
    Drawing.Words first =
        upright.words().stream()
            .filter(words -> words.text().startsWith("1: Y "))
            .findFirst()
            .orElseThrow();
    isAt(first, upright.lines(Stroke.FORMED).get(1).x1() + 9, first.y(), -90);
  }

  /** Beyond the ends of these joints lies what is drawn of the rest, or of the slab around. */
  @Test
  void noPlaceStandsBeyondAnEndThatIsNotOutermost() {
    Shape upright = Plan.outline(Plan.ring(0, 0, 80, 0, 80, 4, 8, 4, 8, 24, 0, 24));
    Shape level = Plan.outline(Plan.ring(0, 0, 24, 0, 24, 8, 4, 8, 4, 80, 0, 80));
    for (Shape shape : List.of(upright, level)) {
      DrawnPlan plan = DrawnPlan.of(new SiteJob().with(slab("A").shape(shape)));
      String place = shape == upright ? "\\d+: X .*" : "\\d+: Y .*";
      long numbers = plan.texts().stream().filter(text -> text.startsWith("joint ")).count();

      assertTrue(numbers > 5, "" + plan.texts());
      assertTrue(plan.texts().stream().noneMatch(text -> text.matches(place)), "" + plan.texts());
    }
    SiteJob job = new SiteJob().with(slab("A").size(feet(60), feet(40)).at(feet(0), feet(0)));
    job.with(recess("R", "A", inches("2")).size(feet(60), feet(3)).at(feet(0), feet(37)));
    for (Drawing.Words words : DrawnPlan.of(job).words()) {
      assertTrue(words.y() > 16 || !words.text().matches("\\d+: .*"), "" + words);
    }
  }

  /** The opening cuts the line along Y = 10 ft into 10 ft on its left and 26 ft on its right. */
  @Test
  void theLongestJointOfALineTellsThePlace() {
    DrawnPlan plan =
        DrawnPlan.of(
            new SiteJob()
                .with(
                    slab("A")
                        .shape(
                            Plan.outline(
                                Plan.ring(0, 0, 40, 0, 40, 20, 0, 20), Plan.box(10, 8, 4, 4)))));
    Drawing.Line side = plan.lines(Stroke.FORMED).get(0);
    List<Drawing.Words> places =
        plan.words().stream().filter(words -> words.text().matches("\\d+: Y 10'-0\"")).toList();

    assertEquals(1, places.size(), "" + plan.texts());
    assertEquals(side.x2() - 24, places.get(0).x(), 0.01);
  }

  @Test
  void aJointThatRunsAskewHasItsNumberAlone() {
    DrawnPlan plan =
        DrawnPlan.of(
            new SiteJob()
                .with(
                    slab("A")
                        .shape(Plan.outline(Plan.ring(0, 0, 30, 0, 40, 20, 20, 14, -10, 24)))));
    int joints = plan.takeOff().joints().size();

    assertTrue(joints > 5);
    for (int i = 1; i <= joints; i++) {
      Drawing.Words number = plan.words("joint " + i);
      Drawing.Line joint = plan.lines(Stroke.JOINT).get(i - 1);
      double across = joint.x2() - joint.x1();
      double down = joint.y2() - joint.y1();
      double away =
          Math.abs(across * (number.y() - joint.y1()) - down * (number.x() - joint.x1()))
              / DrawnPlan.length(joint);
      // on it or, where others stand there, as near as its letters let it
      assertTrue(away < (number.width() + number.height()) / 2, number + " " + away);
    }
  }

  /** 3 pt a foot: a joint every 19 pt, of whose numbers not all have room. */
  @Test
  void numbersWithoutRoomAreCounted() {
    DrawnPlan plan = DrawnPlan.of(new SiteJob().with(slab("A").size(feet(200), feet(4))));
    List<String> texts = plan.texts();
    long told =
        texts.stream().filter(text -> text.matches("joint \\d+|\\d+: .*")).distinct().count();
    long left = plan.takeOff().joints().size() - told;

    assertTrue(told > 5 && left > 5, told + " and " + left);
    String count = " Control joints by number: sheet Joints. " + left + " have no room here.";
    assertTrue(texts.stream().anyMatch(text -> text.endsWith(count)), "" + texts);
  }

  /** Of two bars, one over the other, in the middle of the longer one. */
  @Test
  void theNameOfAnOutlineStandsWhereItIsWidest() {
    Shape bars = Plan.outline(Plan.ring(0, 0, 24, 0, 24, 8, 40, 8, 40, 20, 12, 20, 12, 8, 0, 8));
    isNamedAt(bars, 24, 26, 10);
    Shape angle = Plan.outline(Plan.ring(0, 0, 36, 0, 36, 6, 6, 6, 6, 24, 0, 24));
    isNamedAt(angle, 36, 18, 4.8);
  }

  private static void isNamedAt(Shape shape, int feetOfFirstSide, double x, double y) {
    DrawnPlan plan = DrawnPlan.of(new SiteJob().with(slab("A").shape(shape)));
    Drawing.Line side = plan.lines(Stroke.FORMED).get(0);
    double perFoot = DrawnPlan.length(side) / feetOfFirstSide;
    Drawing.Words name = plan.words("A, 4\"");

    assertEquals(x, (name.x() - side.x1()) / perFoot, 0.01);
    assertEquals(y, (side.y1() - name.y()) / perFoot, 0.01);
  }
}
