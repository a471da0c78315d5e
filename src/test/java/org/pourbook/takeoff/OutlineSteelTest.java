package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.takeoff.SteelTakeoffTest.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Kind;
import org.pourbook.job.Shape;
import org.pourbook.job.Shape.Point;
import org.pourbook.job.Shape.Ring;
import org.pourbook.job.Shape.SideMark;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.OnOffer.SheetSize;
import org.pourbook.takeoff.SteelFixture.SectionBuilder;

class OutlineSteelTest {

  private static final Length FOOT = Length.ofFeet(1);

  private final SteelFixture job = new SteelFixture();

  private SectionBuilder outline(Ring... rings) {
    SectionBuilder slab = job.slab("F1", FOOT, FOOT, Length.ofInches(6));
    slab.shape = new Shape.Outline(List.of(rings));
    return slab;
  }

  /** Corners in feet: x1, y1, x2, y2 … */
  private static Ring ring(long... feet) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < feet.length; i += 2) {
      points.add(
          new Point(
              Integer.toString(i / 2 + 1),
              Length.ofFeet(feet[i]),
              Length.ofFeet(feet[i + 1]),
              SideMark.BY_SECTION));
    }
    return new Ring(points);
  }

  private static Ring ell() {
    return ring(0, 0, 20, 0, 20, 10, 10, 10, 10, 20, 0, 20);
  }

  /** 21 lines 11.7" apart from 3": the ten up to 117" are 19'-6" long, the others 9'-6". */
  @Test
  void barsOfAnEllAreClippedToItsCover() {
    outline(ell()).bars("#4", FOOT);
    Part part = job.takeOff();
    assertEquals(10 * 19.5 + 11 * 9.5, amount(part, "bars along"), 1e-9);
    assertEquals(10 * 19.5 + 11 * 9.5, amount(part, "bars across"), 1e-9);
  }

  /** 7 of 21 lines meet the opening and its cover, 69" to 147": 5'-6" and 7'-6" are left. */
  @Test
  void anOpeningInterruptsTheBars() {
    outline(ring(0, 0, 20, 0, 20, 20, 0, 20), ring(6, 6, 12, 6, 12, 12, 6, 12)).bars("#4", FOOT);
    assertEquals(14 * 19.5 + 7 * 13, amount(job.takeOff(), "bars along"), 1e-9);
  }

  /** Sides 20', 10', 10', 10', 10', 20'; a cover off at outside corners, on at the inner one. */
  @Test
  void edgeBarsOfAnEllMeetAtEveryCorner() {
    outline(ell()).edge(Sides.ALL, SteelFixture.run(2, "#4"));
    Part part = job.takeOff();
    assertEquals(2 * (19.5 + 9.5 + 10 + 10 + 9.5 + 19.5), amount(part, "edge bars"), 1e-9);
    int corners =
        part.barMarks().stream()
            .filter(mark -> mark.shape() == BarMark.BarShape.CORNER)
            .mapToInt(BarMark::count)
            .sum();
    assertEquals(12, corners);
  }

  @Test
  void edgeBarsLapAtAPointOnAStraightSide() {
    outline(ring(0, 0, 10, 0, 20, 0, 20, 12, 0, 12)).edge(Sides.ALL, SteelFixture.run(1, "#4"));
    Part part = job.takeOff();
    // The side of 20' in two bars with a lap of 29" more.
    assertEquals(2 * (19.5 + 11.5) + 29 / 12.0, amount(part, "edge bars"), 1e-9);
    assertEquals(4 * (58 - 8 * 0.5 + 7 * Math.PI / 8) / 12, amount(part, "corner bars"), 1e-6);
  }

  @Test
  void aRectangleDrawnAsAnOutlineTakesTheSameSteel() {
    SteelFixture plain = new SteelFixture();
    plain.slab("F1", Length.ofFeet(20), Length.ofFeet(12), Length.ofInches(6)).bars("#4", FOOT);
    outline(ring(0, 0, 20, 0, 20, 12, 0, 12)).bars("#4", FOOT);
    for (SteelFixture one : List.of(plain, job)) {
      one.slab("B1", Length.ofFeet(6), Length.ofFeet(4), Length.ofInches(6))
          .recessIn("F1", Length.ofInches(6))
          .at(Length.ofFeet(4), Length.ofFeet(4))
          .bars("#4", FOOT);
    }
    Part drawn = job.takeOff();
    Part expected = plain.takeOff();
    for (String what : List.of("bars along", "bars across", "tie wire", "step ties")) {
      // Computed bars are held to the micrometre.
      assertEquals(amount(expected, what), amount(drawn, what), 1e-4, what);
    }
  }

  @Test
  void oneRunOfBlocksIsToldAsOne() {
    SectionBuilder footing = job.slab("W", Length.ofFeet(20), FOOT, Length.ofInches(12));
    footing.kind = Kind.FOOTING;
    footing.edgeBars = Optional.of(SteelFixture.run(2, "#4"));
    String working = SteelTakeoffTest.find(job.takeOff(), "edge blocks").working();
    // 19'-6" at 4', rounded up
    assertEquals("5 along 1 run, one every 4'-0\" = 5", working);
  }

  private SectionBuilder recess(Shape shape) {
    job.slab("F1", Length.ofFeet(20), Length.ofFeet(20), Length.ofInches(6)).bars("#4", FOOT);
    SectionBuilder recess =
        job.slab("B1", FOOT, FOOT, Length.ofInches(6)).recessIn("F1", Length.ofInches(6));
    recess.shape = shape;
    return recess;
  }

  /**
   * 21 lines 11.7" apart from 3". The recess and a cover round it take 69" to 147" from the lines
   * at 73.2" to 108.3", four, and 69" to 111" from those at 120" to 143.4", three.
   */
  @Test
  void aRecessDrawnAsAnEllInterruptsTheBarsThatMeetIt() {
    recess(new Shape.Outline(List.of(ring(6, 6, 12, 6, 12, 9, 9, 9, 9, 12, 6, 12))));
    Part part = job.takeOff();
    assertEquals(21 * 19.5 - 4 * 6.5 - 3 * 3.5, amount(part, "bars along"), 1e-9);
    assertEquals(21 * 19.5 - 4 * 6.5 - 3 * 3.5, amount(part, "bars across"), 1e-9);
  }

  /** Lines 0, 11.7", 23.4" and 35.1" from the middle cut chords of a circle 36" + 3" in radius. */
  @Test
  void aRoundRecessInterruptsTheBarsThatMeetIt() {
    recess(new Shape.Round(Length.ofFeet(6))).at(Length.ofFeet(7), Length.ofFeet(7));
    double inches = 78 + 2 * (2 * Math.sqrt(39 * 39 - 11.7 * 11.7) + 62.4 + 34);
    // sqrt(39² - 23.4²) = 31.2; sqrt(39² - 35.1²) = 17.0 to four figures, bars to the micrometre
    assertEquals(21 * 19.5 - inches / 12, amount(job.takeOff(), "bars along"), 1e-3);
  }

  /**
   * Sides at 42" and 102", cover 3": the bars at 39" and 105" run past, the five between do not.
   */
  @Test
  void aBarThatRunsACoverBesideADrawnRecessIsNotInterrupted() {
    SteelFixture plain = new SteelFixture();
    for (SteelFixture one : List.of(plain, job)) {
      one.slab("F1", Length.ofInches(234), Length.ofInches(234), Length.ofInches(6))
          .bars("#4", FOOT);
    }
    plain
        .slab("B1", Length.ofInches(60), Length.ofInches(60), Length.ofInches(6))
        .recessIn("F1", Length.ofInches(6))
        .at(Length.ofInches(42), Length.ofInches(42));
    SectionBuilder drawn =
        job.slab("B1", FOOT, FOOT, Length.ofInches(6)).recessIn("F1", Length.ofInches(6));
    drawn.shape = new Shape.Outline(List.of(square(42, 102)));
    // 20 lines 12" apart from 3", 228" long; the recess and its cover take 66".
    double expected = (20 * 228 - 5 * 66) / 12.0;
    assertEquals(expected, amount(plain.takeOff(), "bars along"), 1e-9);
    assertEquals(expected, amount(job.takeOff(), "bars along"), 1e-9);
  }

  private static Ring square(long from, long to) {
    List<Point> points = new ArrayList<>();
    for (long[] at : List.of(new long[] {from, from}, new long[] {to, from}, new long[] {to, to})) {
      points.add(corner(points.size() + 1, at[0], at[1]));
    }
    points.add(corner(4, from, to));
    return new Ring(points);
  }

  private static Point corner(int number, long xIn, long yIn) {
    return new Point(
        Integer.toString(number), Length.ofInches(xIn), Length.ofInches(yIn), SideMark.BY_SECTION);
  }

  /** Mat 19'-8": strips of 5' lapped 8" from 2": at 2", 54", 106" and so on; 4-1/2 ft on, 52". */
  @Test
  void meshStripsOfAnEllAreAsLongAsItIsUnderThem() {
    SectionBuilder slab = outline(ell());
    slab.mesh = Optional.of("6x6-W1.4xW1.4");
    job.sheets.put("6x6-W1.4xW1.4", List.of(new SheetSize(Length.ofFeet(150), Length.ofFeet(5))));
    // ⌈(236 − 8)/52⌉ = 5 strips; those from 2", 54" and 106" lie under the wide part (to 118").
    double feet2 = (3 * 236 + 2 * 116) / 12.0 * 5;
    assertEquals(feet2, amount(job.takeOff(), "mesh"), 1e-6);
  }
}
