package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.measure.Length;
import org.pourbook.outline.FloorPlan;
import org.pourbook.outline.FloorPlan.Line;
import org.pourbook.outline.Frame;
import org.pourbook.takeoff.rule.ControlJoints;
import org.pourbook.takeoff.rule.ControlJoints.Panels;

/**
 * The control joints of a floor that is no plain rectangle (JOINT-1): first a line from each
 * re-entrant corner, then equal panels in each piece that those lines leave.
 *
 * @param cornerLines from the re-entrant corners
 * @param panelLines between the panels of the pieces; those in one line are one
 * @param panels what all the lines leave
 */
record FloorPanels(List<Line> cornerLines, List<Line> panelLines, List<Panel> panels) {

  /** Lines and points nearer than this meet [m]. */
  private static final double SAME_M = 1e-5;

  /** Directions of less sine between them are one. */
  private static final double PARALLEL = 1e-6;

  /** A panel by the sides of the rectangle round it. */
  record Panel(Length longSide, Length shortSide, boolean rectangle) {

    private static Panel of(FloorPlan plan) {
      Frame frame = plan.frame();
      Length a = Length.ofMetres(frame.lengthM());
      Length b = Length.ofMetres(frame.widthM());
      return new Panel(a.max(b), a.min(b), plan.isRectangle());
    }
  }

  /** Returns the joints of a floor's pieces that make panels no larger than {@code largest}. */
  static FloorPanels of(List<FloorPlan> floor, Length largest) {
    List<Line> corners = new ArrayList<>();
    List<Line> between = new ArrayList<>();
    for (FloorPlan plan : floor) {
      List<Line> fromCorners = plan.cornerLines(ControlJoints.nearM(largest));
      corners.addAll(fromCorners);
      List<Line> before = new ArrayList<>(fromCorners);
      for (FloorPlan piece : plan.cutAlong(fromCorners)) {
        List<Line> lines = lines(piece, largest, before);
        before.addAll(lines);
        lines.forEach(line -> join(between, line));
      }
    }
    List<Line> all = new ArrayList<>(corners);
    all.addAll(between);
    List<Panel> panels =
        floor.stream().flatMap(plan -> plan.cutAlong(all).stream()).map(Panel::of).toList();
    return new FloorPanels(List.copyOf(corners), List.copyOf(between), panels);
  }

  private static List<Line> lines(FloorPlan piece, Length largest, List<Line> before) {
    Frame frame = piece.frame();
    Length length = Length.ofMetres(frame.lengthM());
    Length width = Length.ofMetres(frame.widthM());
    Panels panels = ControlJoints.panels(length, width, largest);
    List<Double> across = equal(frame.lengthM(), panels.alongLength());
    List<Double> along = equal(frame.widthM(), panels.alongWidth());
    List<Double> acrossOn = moved(piece, across, before, true, panels.alongLength());
    List<Double> alongOn = moved(piece, along, before, false, panels.alongWidth());
    boolean keep = areSound(frame, acrossOn, alongOn, largest);
    List<Line> lines = new ArrayList<>();
    (keep ? acrossOn : across).forEach(at -> lines.addAll(piece.inside(frame.line(true, at))));
    (keep ? alongOn : along).forEach(at -> lines.addAll(piece.inside(frame.line(false, at))));
    return lines;
  }

  private static List<Double> equal(double runM, int count) {
    List<Double> at = new ArrayList<>();
    for (int i = 1; i < count; i++) {
      at.add(runM * i / count);
    }
    return at;
  }

  /**
   * Returns the places of lines, each moved to a joint that ends on the piece's side, or runs along
   * it, within a quarter panel: one serves for both, and a joint that goes on straight does not
   * start a crack in the next panel.
   */
  private static List<Double> moved(
      FloorPlan piece, List<Double> equal, List<Line> before, boolean acrossLength, int count) {
    Frame frame = piece.frame();
    double panelM = (acrossLength ? frame.lengthM() : frame.widthM()) / count;
    List<Double> moved = new ArrayList<>();
    for (double at : equal) {
      double best = at;
      double nearest = ControlJoints.nearM(Length.ofMetres(panelM));
      for (Line line : before) {
        double end = onSide(piece, line, acrossLength);
        if (Math.abs(end - at) < nearest) {
          nearest = Math.abs(end - at);
          best = end;
        }
      }
      moved.add(best);
    }
    return moved;
  }

  /** Where a line that is parallel to those asked for meets a piece's side; NaN elsewhere. */
  private static double onSide(FloorPlan piece, Line line, boolean acrossLength) {
    Frame frame = piece.frame();
    double du = frame.alongM(line.x2M(), line.y2M()) - frame.alongM(line.x1M(), line.y1M());
    double dv = frame.acrossM(line.x2M(), line.y2M()) - frame.acrossM(line.x1M(), line.y1M());
    if (Math.abs(acrossLength ? du : dv) > PARALLEL * line.lengthM()) {
      return Double.NaN;
    }
    boolean starts = piece.hasOnSide(line.x1M(), line.y1M());
    boolean ends = piece.hasOnSide(line.x2M(), line.y2M());
    if (!starts && !ends) {
      return Double.NaN;
    }
    double x = starts ? line.x1M() : line.x2M();
    double y = starts ? line.y1M() : line.y2M();
    return acrossLength ? frame.alongM(x, y) : frame.acrossM(x, y);
  }

  /** Whether all panels between the lines are within the limits. */
  private static boolean areSound(
      Frame frame, List<Double> across, List<Double> along, Length largest) {
    List<Length> lengths = gaps(across, frame.lengthM());
    List<Length> widths = gaps(along, frame.widthM());
    return lengths.stream()
        .allMatch(l -> widths.stream().allMatch(w -> ControlJoints.isSound(l, w, largest)));
  }

  private static List<Length> gaps(List<Double> at, double runM) {
    List<Length> gaps = new ArrayList<>();
    double from = 0;
    for (double to : at) {
      gaps.add(Length.ofMetres(to - from));
      from = to;
    }
    gaps.add(Length.ofMetres(runM - from));
    return gaps;
  }

  /** Adds a line to others, as one with that which it goes on from. */
  private static void join(List<Line> lines, Line line) {
    for (int i = 0; i < lines.size(); i++) {
      Line other = lines.get(i);
      double ux = (other.x2M() - other.x1M()) / other.lengthM();
      double uy = (other.y2M() - other.y1M()) / other.lengthM();
      double turn = ux * (line.y2M() - line.y1M()) - uy * (line.x2M() - line.x1M());
      if (Math.abs(turn) < PARALLEL * line.lengthM()) {
        if (near(other.x2M(), other.y2M(), line.x1M(), line.y1M())) {
          lines.set(i, new Line(other.x1M(), other.y1M(), line.x2M(), line.y2M()));
          return;
        }
        if (near(other.x1M(), other.y1M(), line.x2M(), line.y2M())) {
          lines.set(i, new Line(line.x1M(), line.y1M(), other.x2M(), other.y2M()));
          return;
        }
      }
    }
    lines.add(line);
  }

  private static boolean near(double x1, double y1, double x2, double y2) {
    return Math.abs(x1 - x2) < SAME_M && Math.abs(y1 - y2) < SAME_M;
  }
}
