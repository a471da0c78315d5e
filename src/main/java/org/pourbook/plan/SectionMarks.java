package org.pourbook.plan;

import org.pourbook.job.Edge;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.outline.FigureSide;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.Places.Spot;
import org.pourbook.takeoff.JointLine;
import org.pourbook.takeoff.JointOnSide;
import org.pourbook.takeoff.StepTies;
import org.pourbook.takeoff.TakeOff;

/** The sides of a section, with their lengths and the bars that cross them. */
final class SectionMarks {

  /** Corners of a circle as it is drawn. */
  private static final int ROUND = 48;

  /** Half the length of a dowel or tie as it is drawn [pt]. */
  private static final double TICK = 4;

  /** A part wider than this has room for the lengths of its sides within them [pt]. */
  private static final double ROOMY = 52;

  private static final double SIZE = 7;

  private final TakeOff takeOff;
  private final Job job;
  private final Page page;
  private final FloorMarks floors;

  SectionMarks(TakeOff takeOff, Page page, FloorMarks floors) {
    this.takeOff = takeOff;
    this.job = takeOff.job();
    this.page = page;
    this.floors = floors;
  }

  void add(Spot spot) {
    if (spot.section().shape() instanceof Shape.Round round) {
      circle(spot, round);
    } else {
      spot.figure().sides().forEach(side -> side(spot, side));
    }
    floors.add(spot);
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
    String length = JobDrawing.length(side.length(), job.units());
    page.along(x1, y1, x2, y2, length, SIZE, isRoomyPart(spot) ? -9 : 9);
    bars(spot, side);
  }

  /** Sides of a part are named on its own side of the line, where there is room. */
  private boolean isRoomyPart(Spot spot) {
    double least = Math.min(spot.figure().extentXM(), spot.figure().extentYM());
    return spot.section().partOf().isPresent() && page.points(least) > ROOMY;
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

  /** Dowels and ties of the joints on the side, and step ties, as many as there are. */
  private void bars(Spot spot, FigureSide side) {
    for (JointOnSide on : JointOnSide.of(job, spot.section(), side)) {
      bars(spot, side, barsOf(on.joint()), on.fromM(), on.toM());
    }
    int ties = StepTies.along(job, spot.section(), side);
    bars(spot, side, ties, 0, side.length().metres());
  }

  private void bars(Spot spot, FigureSide side, int bars, double fromM, double toM) {
    double x1 = page.x(side.x1M() + spot.dxM());
    double y1 = page.y(side.y1M() + spot.dyM());
    double dx = page.x(side.x2M() + spot.dxM()) - x1;
    double dy = page.y(side.y2M() + spot.dyM()) - y1;
    double length = Math.sqrt(dx * dx + dy * dy);
    double tickX = -dy / length * TICK;
    double tickY = dx / length * TICK;
    for (int i = 0; i < bars; i++) {
      double share = (fromM + (toM - fromM) * (i + 0.5) / bars) / side.length().metres();
      double x = x1 + dx * share;
      double y = y1 + dy * share;
      page.put(new Drawing.Line(x - tickX, y - tickY, x + tickX, y + tickY, Stroke.BAR));
    }
  }

  private int barsOf(Joint joint) {
    return takeOff.joints().stream()
        .filter(line -> line.isOf(joint))
        .mapToInt(JointLine::bars)
        .findFirst()
        .orElse(0);
  }
}
