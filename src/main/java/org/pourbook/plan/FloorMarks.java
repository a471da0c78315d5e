package org.pourbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.outline.FloorPlan;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.Drawing.Words;
import org.pourbook.plan.Places.Spot;
import org.pourbook.takeoff.FloorLines;

/** What lies within a section's sides: its name and place, joints, strips. */
final class FloorMarks {

  private static final double NAME_SIZE = 9;
  private static final double SIZE = 7;

  /** How far from the end of a joint or strip its words stand [pt]. */
  private static final double[] FROM_END = {24, 48, 72, 96};

  /** From the end of a joint to the middle of words beyond it [pt]. */
  private static final double BEYOND = 9;

  /** A line that leaves its direction by less runs along X or Y [m]. */
  private static final double STRAIGHT_M = 0.001;

  /** How far up and down a name may give way [pt]. */
  private static final double[] GIVES_WAY = {0, -14, 14, -28, 28, -42, 42};

  private final Job job;
  private final Page page;

  FloorMarks(Job job, Page page) {
    this.job = job;
    this.page = page;
  }

  void add(Spot spot) {
    double x = (spot.leastX() + spot.mostX()) / 2;
    double y = (spot.leastY() + spot.mostY()) / 2;
    if (spot.section().kind().isFloor()) {
      FloorLines lines = FloorLines.of(job, spot.section());
      lines.joints().forEach(line -> line(spot, line, Stroke.JOINT));
      lines.strips().forEach(line -> line(spot, line, Stroke.STRIP));
      if (spot.section().shape() instanceof Shape.Outline && lines.widest().isPresent()) {
        FloorPlan.Line widest = lines.widest().get();
        x = (widest.x1M() + widest.x2M()) / 2 + spot.dxM();
        y = widest.y1M() + spot.dyM();
      }
      name(spot, x, y);
      openings(spot);
      strips(spot, lines.middles());
      joints(spot, lines.joints());
    } else {
      name(spot, x, y);
    }
  }

  private void line(Spot spot, FloorPlan.Line line, Stroke stroke) {
    double dx = spot.dxM();
    double dy = spot.dyM();
    page.line(line.x1M() + dx, line.y1M() + dy, line.x2M() + dx, line.y2M() + dy, stroke);
  }

  private void name(Spot spot, double xM, double yM) {
    Section section = spot.section();
    int times = job.timesOf(section);
    String text =
        section.code()
            + (times == 1 ? "" : " × " + times)
            + ", "
            + LengthFormat.small(section.thickness(), job.units())
            + (section.drop().isPositive()
                ? ", drop " + LengthFormat.small(section.drop(), job.units())
                : "")
            + (job.pours().size() > 1 ? ", pour " + section.pour() : "");
    middle(xM, yM, text, NAME_SIZE);
    if (spot.known() && section.partOf().isPresent()) {
      Spot slab = page.spot(section.partOf().get());
      middle(xM, yM, at(spot.leastX() - slab.leastX(), spot.leastY() - slab.leastY()), SIZE);
    }
  }

  /** Words in the middle of something, further down or up where others stand there. */
  private void middle(double xM, double yM, String text, double size) {
    List<Words> choices = new ArrayList<>();
    for (double away : GIVES_WAY) {
      choices.add(new Words(page.x(xM), page.y(yM) + away, text, size, 0, Anchor.MIDDLE));
    }
    page.words(choices);
  }

  private String at(double xM, double yM) {
    return "X " + length(xM) + ", Y " + length(yM);
  }

  /** Where the openings lie, from the corner of the rectangle round the outline. */
  private void openings(Spot spot) {
    if (spot.section().shape() instanceof Shape.Outline outline) {
      for (Shape.Ring ring : outline.rings().subList(1, outline.rings().size())) {
        double[] x = ring.points().stream().mapToDouble(p -> p.x().metres()).sorted().toArray();
        double[] y = ring.points().stream().mapToDouble(p -> p.y().metres()).sorted().toArray();
        double middleX = (x[0] + x[x.length - 1]) / 2 + spot.dxM();
        double middleY = (y[0] + y[y.length - 1]) / 2 + spot.dyM();
        String place = at(x[0] + spot.dxM() - spot.leastX(), y[0] + spot.dyM() - spot.leastY());
        middle(middleX, middleY, "opening", SIZE);
        middle(middleX, middleY, place, SIZE);
      }
    }
  }

  /** The number of each strip at the start of the part that lies in the floor. */
  private void strips(Spot spot, List<FloorPlan.Line> middles) {
    for (int i = 0; i < middles.size() && middles.size() > 1; i++) {
      Words number = new Words(0, 0, "(" + (i + 1) + ")", 8, 0, Anchor.MIDDLE);
      page.words(fromStart(spot, middles.get(i), number));
    }
  }

  /**
   * The distance of each line of joints from the corner of the rectangle round the floor, on the
   * longest joint of the line, where it has room.
   */
  private void joints(Spot spot, List<FloorPlan.Line> joints) {
    Set<String> told = new HashSet<>();
    List<FloorPlan.Line> longestFirst = new ArrayList<>(joints);
    longestFirst.sort(Comparator.comparingDouble(FloorPlan.Line::lengthM).reversed());
    for (FloorPlan.Line line : longestFirst) {
      boolean upright = Math.abs(line.x1M() - line.x2M()) < STRAIGHT_M;
      boolean level = Math.abs(line.y1M() - line.y2M()) < STRAIGHT_M;
      String text =
          upright
              ? "X " + length(line.x1M() + spot.dxM() - spot.leastX())
              : "Y " + length(line.y1M() + spot.dyM() - spot.leastY());
      Words words = new Words(0, 0, text, SIZE, upright ? -90 : 0, Anchor.MIDDLE);
      boolean rising = line.x1M() < line.x2M() || line.y1M() < line.y2M();
      List<Words> choices = choices(spot, rising ? turned(line) : line, words);
      boolean straight = upright || level;
      if (straight && !told.contains(text) && !choices.isEmpty() && page.wordsIfClear(choices)) {
        told.add(text);
      }
    }
  }

  /** On a joint where it is long enough, else beyond its end where that lies on the outside. */
  private List<Words> choices(Spot spot, FloorPlan.Line line, Words words) {
    List<Words> choices = new ArrayList<>();
    if (page.points(line.lengthM()) > words.width() + 2 * SIZE) {
      choices.addAll(fromStart(spot, line, words));
    }
    double x = line.x1M() + spot.dxM();
    double y = line.y1M() + spot.dyM();
    if (words.degrees() != 0 && y > spot.mostY() - STRAIGHT_M) {
      choices.add(words.turned(0).at(page.x(x), page.y(y) - BEYOND));
    } else if (words.degrees() == 0 && x > spot.mostX() - STRAIGHT_M) {
      choices.add(words.turned(-90).at(page.x(x) + BEYOND, page.y(y)));
    }
    return choices;
  }

  private static FloorPlan.Line turned(FloorPlan.Line line) {
    return new FloorPlan.Line(line.x2M(), line.y2M(), line.x1M(), line.y1M());
  }

  /** Returns words on a line, some way from its start, and further where others stand there. */
  private List<Words> fromStart(Spot spot, FloorPlan.Line line, Words words) {
    double ux = (line.x2M() - line.x1M()) / line.lengthM();
    double uy = (line.y2M() - line.y1M()) / line.lengthM();
    double x = page.x(line.x1M() + spot.dxM());
    double y = page.y(line.y1M() + spot.dyM());
    double most = page.points(line.lengthM());
    List<Words> choices = new ArrayList<>();
    for (double from : FROM_END) {
      double away = Math.min(from, most / 2);
      choices.add(words.at(x + ux * away, y - uy * away));
    }
    return choices;
  }

  private String length(double metres) {
    return JobDrawing.length(Length.ofMetres(metres), job.units());
  }
}
