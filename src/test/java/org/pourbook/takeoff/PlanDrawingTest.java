package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.recess;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;
import static org.pourbook.takeoff.SiteJob.inches;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.problem.Place;

/** The drawing of a job. */
class PlanDrawingTest {

  private static final SiteJob L =
      new SiteJob()
          .with(
              slab("A")
                  .shape(
                      Plan.outline(
                          Plan.ring(0, 0, 36, 0, 36, 14, 24, 14, 24, 24, 0, 24),
                          Plan.box(12, 10, 3, 3)))
                  .edge("16", "12", Sides.ALL))
          .with(recess("R", "A", inches("2")).size(feet(6), feet(4)).at(feet(2), feet(2)));

  @Test
  void everySideIsDrawnWithItsLength() {
    DrawnPlan plan = DrawnPlan.of(L);

    // six sides, four of the opening, four of the recess
    assertEquals(14, plan.lines(Stroke.FORMED).size());
    assertEquals(10, plan.lines(Stroke.TURNED_DOWN).size());
    List.of("36'-0\"", "14'-0\"", "12'-0\"", "10'-0\"", "24'-0\"", "R, 4\", drop 2\"", "A, 4\"")
        .forEach(text -> assertTrue(plan.texts().contains(text), text));
  }

  @Test
  void everyJointOfTheJointsSheetIsDrawn() {
    TakeOff takeOff = TakeOffs.of(L.build(), Offer.NOTHING);

    assertEquals(takeOff.joints().size(), DrawnPlan.of(takeOff).lines(Stroke.JOINT).size());
  }

  @Test
  void lengthsAreToOneScale() {
    DrawnPlan plan = DrawnPlan.of(L);
    Drawing.Line bottom = plan.lines(Stroke.FORMED).get(0);
    double perFoot = (bottom.x2() - bottom.x1()) / 36;

    Drawing.Line right = plan.lines(Stroke.FORMED).get(1);
    assertEquals(14 * perFoot, right.y1() - right.y2(), 1e-6);
  }

  @Test
  void everyMarkLiesOnThePage() {
    for (DrawnPlan plan :
        List.of(DrawnPlan.of(L), DrawnPlan.of(new SiteJob().with(slab("A")).with(slab("B"))))) {
      for (Drawing.Mark mark : plan.drawing().marks()) {
        if (mark instanceof Drawing.Line line) {
          assertTrue(isOnPage(line.x1(), line.y1()) && isOnPage(line.x2(), line.y2()), "" + mark);
        } else if (mark instanceof Drawing.Words words) {
          double half = words.height() / 2;
          assertTrue(isOnPage(words.x(), words.y() - half), "" + mark);
          assertTrue(isOnPage(words.x(), words.y() + half), "" + mark);
        }
      }
    }
  }

  private static boolean isOnPage(double x, double y) {
    return x >= 0 && x < Drawing.WIDTH && y >= 0 && y < Drawing.HEIGHT;
  }

  private static SiteJob tied() {
    return new SiteJob()
        .with(slab("A").size(feet(40), feet(26)).bars("#4", "16"))
        .with(recess("R", "A", inches("6")).size(feet(10), feet(8)).at(feet(20), feet(6)));
  }

  @Test
  void stepTiesStandAlongARecessAsManyAsTheBarListHas() {
    TakeOff takeOff = TakeOffs.of(tied().build(), Offer.NOTHING);
    int listed =
        takeOff.barMarks().stream()
            .filter(mark -> mark.shape() == BarMark.BarShape.STEP)
            .mapToInt(BarMark::count)
            .sum();

    // 10'-0" and 8'-0" at 16 in, twice: 2 x (9 + 7)
    assertEquals(32, listed);
    assertEquals(32, DrawnPlan.of(takeOff).lines(Stroke.BAR).size());
  }

  static Joint joint(String code, JointKind kind, String section, String side) {
    return new Joint(
        code,
        Optional.of(section).filter(text -> !text.isEmpty()),
        Optional.of(side).filter(text -> !text.isEmpty()),
        kind,
        feet(12),
        Optional.of("#4"),
        Optional.of(inches("18")),
        Optional.of(inches("18")),
        false,
        Optional.empty(),
        Length.ZERO,
        Optional.empty(),
        new Place("Joints", 1, -1));
  }

  /** Control joints of a section have the numbers 1, 2, …: a written joint may be called so too. */
  @Test
  void everyJointOnASideIsDrawnWithItsBars() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(24), feet(20)));
    job.with(joint("1", JointKind.TIE, "A", "L1")).with(joint("2", JointKind.TIE, "A", "L1"));

    // 12'-0" at 18 in, twice
    assertEquals(16, DrawnPlan.of(job).lines(Stroke.BAR).size());
  }

  /** By the Joints sheet: number and place; the plan has each number, and the place with some. */
  @Test
  void controlJointsHaveTheirNumbersOfTheJointsSheet() {
    for (SiteJob job : List.of(L, tied(), new SiteJob().with(slab("A").size(feet(60), feet(30))))) {
      TakeOff takeOff = TakeOffs.of(job.build(), Offer.NOTHING);
      List<String> words = DrawnPlan.of(takeOff).texts();
      assertTrue(takeOff.joints().size() > 1, "" + takeOff.joints());
      for (JointLine line : takeOff.joints()) {
        String alone = "joint " + line.joint();
        List<String> found =
            words.stream()
                .filter(text -> text.equals(alone) || text.startsWith(line.joint() + ": "))
                .toList();
        assertEquals(1, found.size(), line + " in " + words);
        String away = found.get(0).substring(found.get(0).lastIndexOf(' ') + 1);
        assertTrue(found.get(0).equals(alone) || line.note().contains(away), line + " " + found);
      }
    }
  }

  /** Two slabs that meet along 12 ft of the longer one's 40 ft side, from X = 20 on. */
  @Test
  void theBarsOfAShortJointStandWhereTheSlabsMeet() {
    SiteJob job =
        new SiteJob()
            .with(slab("A").size(feet(40), feet(20)).at(feet(0), feet(0)))
            .with(slab("B").size(feet(12), feet(10)).at(feet(20), feet(20)))
            .with(joint("J1", JointKind.TIE, "A", "L2"));
    DrawnPlan plan = DrawnPlan.of(job);
    double left = plan.lines(Stroke.FORMED).get(0).x1();
    double perFoot = (plan.lines(Stroke.FORMED).get(0).x2() - left) / 40;
    double[] bars = plan.lines(Stroke.BAR).stream().mapToDouble(l -> l.x1()).sorted().toArray();

    // 12'-0" at 18 in: 8, half a space in from the ends of where they meet
    assertEquals(8, bars.length);
    for (int i = 0; i < 8; i++) {
      assertEquals(left + (20 + 1.5 * (i + 0.5)) * perFoot, bars[i], 1e-6);
    }
    assertTrue(plan.texts().stream().noneMatch(text -> text.startsWith("Joint ")));
  }

  @Test
  void shortJointsOfASideFollowEachOtherAndThatIsTold() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(40), feet(20)));
    job.with(joint("J1", JointKind.TIE, "A", "L1")).with(joint("J2", JointKind.TIE, "A", "L1"));
    DrawnPlan plan = DrawnPlan.of(job);
    double left = plan.lines(Stroke.FORMED).get(0).x1();
    double perFoot = (plan.lines(Stroke.FORMED).get(0).x2() - left) / 40;
    double[] bars = plan.lines(Stroke.BAR).stream().mapToDouble(l -> l.x1()).sorted().toArray();

    assertEquals(16, bars.length);
    assertEquals(left + 0.75 * perFoot, bars[0], 1e-6);
    assertEquals(left + (12 + 11.25) * perFoot, bars[15], 1e-6);
    String told = "Joint J2, tie, A, L1, 12'-0\": 8 of #4 x 18\" @ 18\"";
    assertTrue(
        plan.texts().contains(told + ", drawn from the side's first corner"), "" + plan.texts());
  }

  @Test
  void aJointWhosePlaceIsNotWrittenIsToldBesideThePlan() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(24), feet(20)));
    job.with(joint("J1", JointKind.TIE, "A", "")).with(joint("J2", JointKind.TIE, "", ""));
    job.with(joint("J3", JointKind.ISOLATION, "A", "L1"));
    List<String> words = DrawnPlan.of(job).texts();

    assertTrue(words.contains("Joint J1, tie, A, 12'-0\": 8 of #4 x 18\" @ 18\""), "" + words);
    assertTrue(words.contains("Joint J2, tie, 12'-0\": 8 of #4 x 18\" @ 18\""), "" + words);
    assertTrue(words.contains("Joint J3, isolation, A, L1, 12'-0\""), "" + words);
    assertEquals(0, DrawnPlan.of(job).lines(Stroke.BAR).size());
  }

  @Test
  void aNoteThatCannotBeBrokenStandsOnOneLine() {
    String code = "J".repeat(200);
    SiteJob job = new SiteJob().with(slab("A").size(feet(8), feet(8)));
    job.with(joint(code, JointKind.TIE, "", ""));

    List<String> words =
        assertTimeoutPreemptively(Duration.ofSeconds(2), () -> DrawnPlan.of(job).texts());
    assertTrue(words.stream().anyMatch(text -> text.startsWith("Joint " + code)), "" + words);
  }

  @Test
  void whereControlJointsLieIsAlsoToldOnTheirSheet() {
    String told = "Control joints by number: sheet Joints.";

    assertTrue(DrawnPlan.of(L).texts().stream().anyMatch(text -> text.endsWith(told)));
    SiteJob small = new SiteJob().with(slab("A").size(feet(8), feet(8)));
    assertTrue(DrawnPlan.of(small).texts().stream().noneMatch(text -> text.endsWith(told)));
  }

  @Test
  void aFloorThatIsAllRecessIsDrawn() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(10), feet(8)).at(feet(0), feet(0)));
    job.with(recess("R", "A", inches("2")).size(feet(10), feet(8)).at(feet(0), feet(0)));

    assertTrue(DrawnPlan.of(job).texts().contains("R, 4\", drop 2\""));
  }

  @Test
  void partsAndOpeningsAreToldWithTheirPlaces() {
    List<String> words = DrawnPlan.of(L).texts();

    assertTrue(words.contains("X 2'-0\", Y 2'-0\""), "the recess: " + words);
    assertTrue(words.contains("X 12'-0\", Y 10'-0\""), "the opening: " + words);
    assertEquals(1, words.stream().filter(text -> text.equals("opening")).count());
  }

  @Test
  void stripNumbersLieInsideTheOutline() {
    DrawnPlan plan = DrawnPlan.of(L);
    Drawing.Line bottom = plan.lines(Stroke.FORMED).get(0);
    double perFoot = (bottom.x2() - bottom.x1()) / 36;
    List<Drawing.Words> numbers =
        plan.words().stream().filter(words -> words.text().matches("\\(\\d\\)")).toList();

    assertEquals(List.of("(1)", "(2)", "(3)"), numbers.stream().map(w -> w.text()).toList());
    for (Drawing.Words number : numbers) {
      double x = (number.x() - bottom.x1()) / perFoot;
      double y = (bottom.y1() - number.y()) / perFoot;
      assertTrue(x > 0 && x < 36 && y > 0 && y < (x < 24 ? 24 : 14), number + " at " + x + " " + y);
    }
  }

  @Test
  void aMetricPlanIsInMetres() {
    assertTrue(DrawnPlan.of(new SiteJob().metric().with(slab("A"))).texts().contains("10.973 m"));
  }

  @Test
  void sectionsWithoutAPlaceStandBesideEachOther() {
    DrawnPlan plan = DrawnPlan.of(new SiteJob().with(slab("A")).with(slab("B")));

    double rightOfA = plan.lines(Stroke.FORMED).get(1).x1();
    double leftOfB = plan.lines(Stroke.FORMED).get(4).x1();
    assertTrue(leftOfB > rightOfA);
    assertTrue(plan.texts().contains("Sections without X and Y stand side by side."));
  }
}
