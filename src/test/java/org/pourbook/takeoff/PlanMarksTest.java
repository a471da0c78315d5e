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
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Kind;
import org.pourbook.job.Placing;
import org.pourbook.job.Plate;
import org.pourbook.job.Position;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;

/** What the marks of a plan stand for, and that they are in nobody's way. */
class PlanMarksTest {

  private static final SiteJob L =
      new SiteJob()
          .with(
              slab("A")
                  .shape(
                      Plan.outline(
                          Plan.ring(0, 0, 36, 0, 36, 14, 24, 14, 24, 24, 0, 24),
                          Plan.box(12, 10, 3, 3)))
                  .edge("16", "12", Sides.ALL));

  /** The bottom of the edge, 1 ft in: shorter at outside corners, longer at re-entrant ones. */
  @Test
  void theInnerLineOfAnEdgeIsMitred() {
    DrawnPlan drawing = DrawnPlan.of(L);
    double perFoot = DrawnPlan.length(drawing.lines(Stroke.FORMED).get(0)) / 36;
    double[] inner =
        drawing.lines(Stroke.TURNED_DOWN).stream()
            .mapToDouble(l -> DrawnPlan.length(l) / perFoot)
            .toArray();

    double[] expected = {34, 12, 12, 10, 22, 22, 5, 5, 5, 5};
    assertEquals(expected.length, inner.length);
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], inner[i], 1e-9, "side " + i);
    }
  }

  @Test
  void sidesAgainstConcreteAndPartsBelowAreTold() {
    Shape.Ring ring = Plan.ring(0, 0, 20, 0, 20, 12, 0, 12);
    Shape.Point first = ring.points().get(0);
    Shape.Point existing =
        new Shape.Point(first.name(), first.x(), first.y(), Shape.SideMark.EXISTING);
    List<Shape.Point> points = List.of(existing, ring.points().get(1), ring.points().get(2));
    SiteJob job =
        new SiteJob()
            .with(slab("A").shape(Plan.outline(new Shape.Ring(points))))
            .with(thickening("T", "A").size(feet(4), feet(1)).at(feet(12), feet(2)).thick("12"));
    DrawnPlan drawing = DrawnPlan.of(job);

    assertEquals(1, drawing.lines(Stroke.EXISTING).size());
    assertEquals(2, drawing.lines(Stroke.FORMED).size());
    assertEquals(4, drawing.lines(Stroke.BELOW).size());
    assertTrue(drawing.texts().contains("against existing concrete"));
    assertTrue(drawing.texts().contains("thickening, footing"));
    assertTrue(!drawing.texts().contains("plate with bolts"), "the legend tells what is drawn");
  }

  @Test
  void aPierIsARing() {
    DrawnPlan drawing =
        DrawnPlan.of(
            new SiteJob()
                .with(bare("P", Kind.PIER).shape(new Shape.Round(feet(2))).thick("36").count(3)));
    // the scale is of the same stroke
    List<Drawing.Line> ring = drawing.lines(Stroke.SIDE).subList(0, 48);

    double around = ring.stream().mapToDouble(DrawnPlan::length).sum();
    double across = ring.stream().mapToDouble(Drawing.Line::x1).max().orElseThrow();
    across -= ring.stream().mapToDouble(Drawing.Line::x1).min().orElseThrow();
    // 48 chords of a circle: 0.07 % short
    assertEquals(Math.PI, around / across, 0.003);
    assertTrue(drawing.texts().contains("P × 3, ø 2'-0\", 36\""), "" + drawing.texts());
  }

  /** A pier of 18 in beside a floor of 70 ft is a few points wide: its name would hide it. */
  @Test
  void theNameOfWhatIsSmallerStandsBesideIt() {
    SiteJob job = new SiteJob().with(slab("A").size(feet(70), feet(30)).bars("#4", "16"));
    job.with(bare("P", Kind.PIER).shape(new Shape.Round(inches("18"))).thick("36"));
    job.with(recess("R", "A", inches("6")).size(feet(4), feet(4)).at(feet(30), feet(6)));
    DrawnPlan drawing = DrawnPlan.of(job);
    double[] pier = box(drawing.words("P, ø 1'-6\", 36\""));
    double[] recess = box(drawing.words("R, 4\", drop 6\""));

    assertTrue(drawing.lines(Stroke.SIDE).stream().noneMatch(l -> meets(l, pier)), "the ring");
    assertTrue(drawing.lines(Stroke.BAR).size() > 4, "no step ties");
    assertTrue(drawing.lines(Stroke.BAR).stream().noneMatch(l -> meets(l, recess)), "the ties");
  }

  private static boolean meets(Drawing.Line line, double[] box) {
    return Math.min(line.x1(), line.x2()) < box[2]
        && Math.max(line.x1(), line.x2()) > box[0]
        && Math.min(line.y1(), line.y2()) < box[3]
        && Math.max(line.y1(), line.y2()) > box[1];
  }

  @Test
  void thePourIsToldWhereThereAreSeveral() {
    SiteJob job =
        new SiteJob()
            .with(SiteJob.pour(1, Placing.CHUTE))
            .with(SiteJob.pour(2, Placing.CHUTE))
            .with(slab("A").pour(2));

    assertTrue(
        DrawnPlan.of(job).texts().contains("A, 4\", pour 2"), "" + DrawnPlan.of(job).texts());
  }

  /** Words on a page with room for them all: none over another. */
  @Test
  void wordsStandClearOfEachOther() {
    SiteJob house = new SiteJob().with(slab("A").size(feet(40), feet(26)));
    house.with(recess("R", "A", inches("6")).size(feet(10), feet(8)).at(feet(24), feet(6)));
    List<SiteJob> jobs = new ArrayList<>(List.of(L, house));
    jobs.addAll(PlanWordsTest.crowded());
    for (SiteJob job : jobs) {
      List<Drawing.Words> all = DrawnPlan.of(job).words();
      for (int i = 0; i < all.size(); i++) {
        double[] box = box(all.get(i));
        for (int j = 0; j < i; j++) {
          double[] other = box(all.get(j));
          boolean clear =
              box[0] >= other[2] || other[0] >= box[2] || box[1] >= other[3] || other[1] >= box[3];
          assertTrue(clear, all.get(i) + " over " + all.get(j));
        }
      }
    }
  }

  /** Left, top, right, bottom of words that lie level or upright. */
  static double[] box(Drawing.Words words) {
    boolean level = Math.abs(words.degrees()) < 1;
    double across = (level ? words.width() : words.height()) / 2;
    double up = (level ? words.height() : words.width()) / 2;
    double middle =
        words.anchor() == Drawing.Anchor.START ? words.x() + words.width() / 2 : words.x();
    return new double[] {middle - across, words.y() - up, middle + across, words.y() + up};
  }

  @Test
  void oneJointOfALineTellsItsPlace() {
    // an opening cuts the joint along Y = 10 in two
    SiteJob job =
        new SiteJob()
            .with(
                slab("A")
                    .shape(
                        Plan.outline(
                            Plan.ring(0, 0, 40, 0, 40, 20, 0, 20), Plan.box(18, 8, 4, 4))));
    List<String> places =
        DrawnPlan.of(job).texts().stream().filter(text -> text.matches("\\d+: .*")).toList();

    assertEquals(
        places.stream().map(text -> text.replaceAll("^\\d+: ", "")).distinct().count(),
        places.size(),
        "" + places);
  }

  /** 24 ft in two pieces, up the sheet from X = 2 ft: the bolts of both lie on its line. */
  @Test
  void theBoltsOfALaterPieceGoOnWhereTheFirstEnds() {
    Plate plain = BoltTakeoffTest.plate("1/2 x 10", feet(24), Optional.of(feet(4)), 1);
    for (double degrees : new double[] {0, 90}) {
      SiteJob job = new SiteJob().with(slab("A").size(feet(30), feet(30)));
      DrawnPlan drawing = DrawnPlan.of(job.with(placed(plain, degrees)));
      double perFoot = DrawnPlan.length(drawing.lines(Stroke.FORMED).get(0)) / 30;
      double[] at =
          drawing.bolts().stream()
              .mapToDouble(dot -> degrees == 0 ? dot.x() : -dot.y())
              .map(where -> where / perFoot)
              .toArray();

      // pieces of 16 and 8 ft: 9 in from the ends of each
      assertEquals(8, at.length);
      assertEquals(24 - 1.5, at[7] - at[0], 1e-9);
      assertEquals(1.5, at[5] - at[4], 1e-9);
    }
  }

  private static Plate placed(Plate plate, double degrees) {
    return new Plate(
        plate.code(),
        plate.section(),
        plate.length(),
        plate.count(),
        plate.bolt(),
        plate.spacing(),
        plate.thickness(),
        plate.projection(),
        plate.pieceLength(),
        plate.width(),
        Optional.of(new Position(feet(2), feet(2))),
        OptionalDouble.of(degrees),
        plate.place());
  }
}
