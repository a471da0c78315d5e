package org.pourbook.plan;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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

/** What lies within a section's sides: its name and place, its joints and strips. */
final class FloorMarks {

  private static final double NAME_SIZE = 9;
  private static final double SIZE = 7;

  /** How far up and down a name may give way [pt]. */
  private static final List<Double> GIVES_WAY = List.of(0.0, -14.0, 14.0, -28.0, 28.0, -42.0, 42.0);

  /** How far beyond its section a name stands that does not go into it: clear of lengths [pt]. */
  private static final double[] BEYOND = {9, 20, 31};

  private final Job job;
  private final Page page;
  private final Map<Spot, FloorLines> lines = new IdentityHashMap<>();

  FloorMarks(Job job, Page page) {
    this.job = job;
    this.page = page;
  }

  void add(Spot spot) {
    double x = (spot.leastX() + spot.mostX()) / 2;
    double y = (spot.leastY() + spot.mostY()) / 2;
    if (spot.section().kind().isFloor()) {
      FloorLines lines = lines(spot);
      lines.joints().forEach(line -> line(spot, line, Stroke.JOINT));
      lines.strips().forEach(line -> line(spot, line, Stroke.STRIP));
      if (spot.section().shape() instanceof Shape.Outline && lines.widest().isPresent()) {
        FloorPlan.Line widest = lines.widest().get();
        x = (widest.x1M() + widest.x2M()) / 2 + spot.dxM();
        y = widest.y1M() + spot.dyM();
      }
      name(spot, x, y);
      openings(spot);
    } else {
      name(spot, x, y);
    }
  }

  /** Puts the numbers of strips and joints, which find room more easily than names do. */
  void numbers(Spot spot) {
    if (spot.section().kind().isFloor()) {
      FloorLines lines = lines(spot);
      strips(spot, lines.middles());
      new JointMarks(job, page).add(spot, lines.joints());
    }
  }

  private FloorLines lines(Spot spot) {
    return lines.computeIfAbsent(spot, at -> FloorLines.of(job, at.section()));
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
            + across(section)
            + ", "
            + LengthFormat.small(section.thickness(), job.units())
            + (section.drop().isPositive()
                ? ", drop " + LengthFormat.small(section.drop(), job.units())
                : "")
            + (job.pours().size() > 1 ? ", pour " + section.pour() : "");
    inOrBeside(spot, xM, yM, text, NAME_SIZE);
    if (spot.known() && section.partOf().isPresent()) {
      Spot slab = page.spot(section.partOf().get());
      String place = at(spot.leastX() - slab.leastX(), spot.leastY() - slab.leastY());
      inOrBeside(spot, xM, yM, place, SIZE);
    }
  }

  private String across(Section section) {
    return section.shape() instanceof Shape.Round round
        ? ", ø " + JobDrawing.length(round.diameter(), job.units())
        : "";
  }

  /** Words in the middle of a section; above or below it where they are wider than it is. */
  private void inOrBeside(Spot spot, double xM, double yM, String text, double size) {
    double width = new Words(0, 0, text, size, 0, Anchor.MIDDLE).width();
    double half = page.points(spot.figure().extentYM()) / 2;
    List<Double> ways = new ArrayList<>();
    if (page.points(spot.figure().extentXM()) < width) {
      for (double beyond : BEYOND) {
        ways.add(-half - beyond);
        ways.add(half + beyond);
      }
    }
    ways.addAll(GIVES_WAY);
    middle(xM, yM, text, size, ways);
  }

  /** Words in the middle of something, so far below it as they are clear of others [pt]. */
  private void middle(double xM, double yM, String text, double size, List<Double> ways) {
    List<Words> choices = new ArrayList<>();
    for (double away : ways) {
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
        middle(middleX, middleY, "opening", SIZE, GIVES_WAY);
        middle(middleX, middleY, place, SIZE, GIVES_WAY);
      }
    }
  }

  /** The number of each strip at the start of the part that lies in the floor. */
  private void strips(Spot spot, List<FloorPlan.Line> middles) {
    for (int i = 0; i < middles.size() && middles.size() > 1; i++) {
      Words number = new Words(0, 0, "(" + (i + 1) + ")", 8, 0, Anchor.MIDDLE);
      page.words(page.fromStart(spot, middles.get(i), number));
    }
  }

  private String length(double metres) {
    return JobDrawing.length(Length.ofMetres(metres), job.units());
  }
}
