package org.pourbook.plan;

import java.util.Optional;
import org.pourbook.job.Edge;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.FloorPlan;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.Places.Spot;
import org.pourbook.takeoff.FloorLines;
import org.pourbook.takeoff.JointLine;
import org.pourbook.takeoff.TakeOff;

/** What is drawn of one section. */
final class SectionMarks {

  /** Corners of a circle as it is drawn. */
  private static final int ROUND = 48;

  /** Half the length of a dowel or tie as it is drawn [pt]. */
  private static final double TICK = 4;

  /** A side shorter than this has no room for its length [pt]. */
  private static final double ROOMY = 26;

  private final TakeOff takeOff;
  private final Job job;
  private final Page page;

  SectionMarks(TakeOff takeOff, Page page) {
    this.takeOff = takeOff;
    this.job = takeOff.job();
    this.page = page;
  }

  void add(Spot spot) {
    if (spot.section().shape() instanceof Shape.Round round) {
      circle(spot, round);
    } else {
      spot.figure().sides().forEach(side -> side(spot, side));
    }
    if (spot.section().kind().isFloor()) {
      FloorLines lines = FloorLines.of(job, spot.section());
      lines.joints().forEach(line -> line(spot, line, Stroke.JOINT));
      lines.strips().forEach(line -> line(spot, line, Stroke.STRIP));
      strips(spot);
    }
    name(spot);
  }

  private void line(Spot spot, FloorPlan.Line line, Stroke stroke) {
    double dx = spot.dxM();
    double dy = spot.dyM();
    page.line(line.x1M() + dx, line.y1M() + dy, line.x2M() + dx, line.y2M() + dy, stroke);
  }

  private void circle(Spot spot, Shape.Round round) {
    double r = round.diameter().metres() / 2;
    double x = spot.dxM() + r;
    double y = spot.dyM() + r;
    for (int i = 0; i < ROUND; i++) {
      double a = 2 * Math.PI * i / ROUND;
      double b = 2 * Math.PI * (i + 1) / ROUND;
      page.line(
          x + r * StrictMath.cos(a),
          y + r * StrictMath.sin(a),
          x + r * StrictMath.cos(b),
          y + r * StrictMath.sin(b),
          stroke(spot.section(), spot.figure().sides().get(0)));
    }
  }

  private void side(Spot spot, FigureSide side) {
    double x1 = side.x1M() + spot.dxM();
    double y1 = side.y1M() + spot.dyM();
    double x2 = side.x2M() + spot.dxM();
    double y2 = side.y2M() + spot.dyM();
    page.line(x1, y1, x2, y2, stroke(spot.section(), side));
    spot.section()
        .edge()
        .filter(edge -> side.turnedDown())
        .ifPresent(edge -> edge(spot, side, edge));
    if (page.points(side.length().metres()) > ROOMY) {
      page.along(x1, y1, x2, y2, length(side.length()), 7, isRoomyPart(spot) ? -7 : 8);
    }
    bars(spot, side, x1, y1, x2, y2);
  }

  /** Sides of a part are named on its own side of the line, where there is room. */
  private boolean isRoomyPart(Spot spot) {
    double least = Math.min(spot.figure().extentXM(), spot.figure().extentYM());
    return spot.section().partOf().isPresent() && page.points(least) > 2 * ROOMY;
  }

  private static Stroke stroke(Section section, FigureSide side) {
    if (section.kind() == Kind.THICKENING || section.kind() == Kind.FOOTING) {
      return Stroke.BELOW;
    }
    if (side.existing()) {
      return Stroke.EXISTING;
    }
    if (section.kind() == Kind.RECESS && !side.formed()) {
      return Stroke.RECESS;
    }
    return side.formed() ? Stroke.FORMED : Stroke.SIDE;
  }

  /** The inner edge of the bottom of a turned-down edge. */
  private void edge(Spot spot, FigureSide side, Edge edge) {
    double lengthM = side.length().metres();
    double width = edge.width().metres();
    double ux = (side.x2M() - side.x1M()) / lengthM;
    double uy = (side.y2M() - side.y1M()) / lengthM;
    double from = isTurnedDownAt(spot, side.x1M(), side.y1M()) ? width : 0;
    double to = isTurnedDownAt(spot, side.x2M(), side.y2M()) ? width : 0;
    double x = side.x1M() + spot.dxM() - uy * width;
    double y = side.y1M() + spot.dyM() + ux * width;
    double start = side.startsAtReentrantCorner() ? -from : from;
    double end = lengthM - (side.endsAtReentrantCorner() ? -to : to);
    page.line(x + ux * start, y + uy * start, x + ux * end, y + uy * end, Stroke.TURNED_DOWN);
  }

  /** Whether both sides that meet at a corner are turned down. */
  private static boolean isTurnedDownAt(Spot spot, double x, double y) {
    return spot.figure().sides().stream()
        .filter(
            side -> (side.x1M() == x && side.y1M() == y) || (side.x2M() == x && side.y2M() == y))
        .allMatch(FigureSide::turnedDown);
  }

  /** Dowels, ties and step bars of a joint on the side, as many as there are. */
  private void bars(Spot spot, FigureSide side, double x1, double y1, double x2, double y2) {
    Optional<Joint> joint =
        job.joints().stream()
            .filter(j -> j.kind() != JointKind.ISOLATION)
            .filter(j -> j.section().equals(Optional.of(spot.section().code())))
            .filter(j -> j.side().equals(Optional.of(side.name())))
            .findFirst();
    joint.ifPresent(
        on -> {
          int bars =
              takeOff.joints().stream()
                  .filter(line -> line.joint().equals(on.code()))
                  .mapToInt(JointLine::bars)
                  .findFirst()
                  .orElse(0);
          double dx = page.x(x2) - page.x(x1);
          double dy = page.y(y2) - page.y(y1);
          double length = Math.sqrt(dx * dx + dy * dy);
          for (int i = 0; i < bars; i++) {
            double x = page.x(x1) + dx * (i + 0.5) / bars;
            double y = page.y(y1) + dy * (i + 0.5) / bars;
            double tickX = -dy / length * TICK;
            double tickY = dx / length * TICK;
            page.marks()
                .add(new Drawing.Line(x - tickX, y - tickY, x + tickX, y + tickY, Stroke.BAR));
          }
        });
  }

  private void strips(Spot spot) {
    int strips =
        (int)
                takeOff.strips().stream()
                    .filter(strip -> strip.section().equals(spot.section().code()))
                    .count()
            / job.timesOf(spot.section());
    boolean alongX = spot.figure().extentXM() >= spot.figure().extentYM();
    for (int i = 0; i < strips && strips > 1; i++) {
      double share = (i + 0.5) / strips;
      double x = alongX ? spot.leastX() : spot.leastX() + share * spot.figure().extentXM();
      double y = alongX ? spot.leastY() + share * spot.figure().extentYM() : spot.leastY();
      page.words(
          page.x(x) + (alongX ? 14 : 0),
          page.y(y) - (alongX ? 0 : 14),
          "(" + (i + 1) + ")",
          8,
          Anchor.MIDDLE);
    }
  }

  private void name(Spot spot) {
    Section section = spot.section();
    int times = job.timesOf(section);
    String text =
        section.code()
            + (times == 1 ? "" : " × " + times)
            + ", "
            + LengthFormat.small(section.thickness(), job.units())
            + (section.drop().isPositive()
                ? ", drop " + LengthFormat.small(section.drop(), job.units())
                : "");
    double x = page.x((spot.leastX() + spot.mostX()) / 2);
    double y = page.y((spot.leastY() + spot.mostY()) / 2);
    page.words(x, y, text, 9, Anchor.MIDDLE);
  }

  private String length(Length length) {
    return LengthFormat.of(length, job.units());
  }
}
