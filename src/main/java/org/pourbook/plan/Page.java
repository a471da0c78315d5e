package org.pourbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.outline.FloorPlan;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Mark;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.Drawing.Words;

/** The page that marks are put on: plan metres in, points out. */
final class Page {

  /** Room round the plan for the lengths of sides [pt]. */
  private static final double ROUND = 16;

  /** Where along a side its length may stand, as shares. */
  private static final double[] SHARES = {0.5, 0.35, 0.65, 0.2, 0.8};

  /** How far from the end of a joint or strip its words stand [pt]. */
  private static final double[] FROM_END = {24, 48, 72, 96};

  private final List<Mark> marks = new ArrayList<>();
  private final Labels labels = new Labels();
  private final List<Places.Spot> spots;
  private final double scale;
  private final double leftM;
  private final double topM;
  private int leftOut;

  /**
   * A page on which all spots have room.
   *
   * @param foot room for legend and notes below the plan [pt]
   * @param beside room on its right [pt]
   */
  Page(List<Places.Spot> spots, double foot, double beside) {
    this.spots = spots;
    double left = spots.stream().mapToDouble(Places.Spot::leastX).min().orElse(0);
    double right = spots.stream().mapToDouble(Places.Spot::mostX).max().orElse(1);
    double bottom = spots.stream().mapToDouble(Places.Spot::leastY).min().orElse(0);
    double top = spots.stream().mapToDouble(Places.Spot::mostY).max().orElse(1);
    double across = (Drawing.WIDTH - beside - 2 * ROUND) / (right - left);
    double up = (Drawing.HEIGHT - 2 * ROUND - foot) / (top - bottom);
    this.scale = Math.min(across, up);
    this.leftM = left;
    this.topM = top;
  }

  /** Returns what was put, words last: they stand on white above the lines. */
  List<Mark> marks() {
    List<Mark> all = new ArrayList<>(marks);
    all.addAll(labels.words());
    return all;
  }

  /** Returns where the section of a code is drawn. */
  Places.Spot spot(String code) {
    return spots.stream().filter(s -> s.section().code().equals(code)).findFirst().orElseThrow();
  }

  double x(double xM) {
    return ROUND + (xM - leftM) * scale;
  }

  double y(double yM) {
    return ROUND + (topM - yM) * scale;
  }

  /** Returns a length of the plan on the page [pt]. */
  double points(double metres) {
    return metres * scale;
  }

  void line(double x1M, double y1M, double x2M, double y2M, Stroke stroke) {
    put(new Drawing.Line(x(x1M), y(y1M), x(x2M), y(y2M), stroke));
  }

  void put(Mark mark) {
    marks.add(mark);
  }

  void words(double x, double y, String text, double size, Anchor anchor) {
    words(List.of(new Words(x, y, text, size, 0, anchor)));
  }

  /** Puts words at the first of several places where they are clear of others. */
  void words(List<Words> choices) {
    labels.put(choices);
  }

  /** Puts words only where they are clear of others; false where they are nowhere. */
  boolean wordsIfClear(List<Words> choices) {
    return labels.putIfClear(choices);
  }

  /** Puts words only where they are clear of others; nowhere else, and counts them. */
  void wordsOrNone(List<Words> choices) {
    leftOut += labels.putIfClear(choices) ? 0 : 1;
  }

  /** Returns how many words had no room. */
  int leftOut() {
    return leftOut;
  }

  void dot(double xM, double yM) {
    put(new Drawing.Dot(x(xM), y(yM), 2));
  }

  /**
   * Puts words beside a side, along it and on its right: outside the concrete. Where the side is
   * too short they stand across.
   *
   * @param away from the line to the middle of the letters [pt]; below zero on its left
   */
  void along(
      double x1M, double y1M, double x2M, double y2M, String text, double size, double away) {
    double dx = x(x2M) - x(x1M);
    double dy = y(y2M) - y(y1M);
    double length = Math.sqrt(dx * dx + dy * dy);
    double degrees = upright(StrictMath.toDegrees(StrictMath.atan2(dy, dx)));
    double width = new Words(0, 0, text, size, 0, Anchor.MIDDLE).width();
    boolean across = width > length + size;
    double off = across ? Math.signum(away) * (Math.abs(away) + width / 2 - size / 2) : away;
    double turned = across ? upright(degrees + 90) : degrees;
    List<Words> choices = new ArrayList<>();
    for (double from : new double[] {off, -off}) {
      for (double share : SHARES) {
        double x = x(x1M) + dx * share - dy / length * from;
        double y = y(y1M) + dy * share + dx / length * from;
        choices.add(new Words(x, y, text, size, turned, Anchor.MIDDLE));
      }
    }
    labels.put(choices);
  }

  /** Returns words on a line, some way from its start, and further where others stand there. */
  List<Words> fromStart(Places.Spot spot, FloorPlan.Line line, Words words) {
    double ux = (line.x2M() - line.x1M()) / line.lengthM();
    double uy = (line.y2M() - line.y1M()) / line.lengthM();
    double x = x(line.x1M() + spot.dxM());
    double y = y(line.y1M() + spot.dyM());
    double most = points(line.lengthM());
    List<Words> choices = new ArrayList<>();
    for (double from : FROM_END) {
      double away = Math.min(from, most / 2);
      choices.add(words.at(x + ux * away, y - uy * away));
    }
    return choices;
  }

  /** Words along a line are read from below or from the right. */
  private static double upright(double degrees) {
    return degrees > 89.999 ? degrees - 180 : degrees < -90.001 ? degrees + 180 : degrees;
  }
}
