package org.pourbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.pourbook.job.Job;
import org.pourbook.measure.Length;
import org.pourbook.outline.FloorPlan;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Words;
import org.pourbook.plan.Places.Spot;

/** The numbers of a floor's control joints, and where they lie. */
final class JointMarks {

  private static final double SIZE = 7;

  /** Where along a joint its number may stand, as shares. */
  private static final double[] SHARES = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};

  /** From the end of a joint to the middle of words beyond it [pt]. */
  private static final double BEYOND = 9;

  /** A line that leaves its direction by less runs along X or Y [m]. */
  private static final double STRAIGHT_M = 0.001;

  private final Job job;
  private final Page page;

  JointMarks(Job job, Page page) {
    this.job = job;
    this.page = page;
  }

  /**
   * The number of each control joint, with its distance from the corner of the rectangle round the
   * floor on the longest joint of a line, where that has room.
   */
  void add(Spot spot, List<FloorPlan.Line> joints) {
    Set<String> told = new HashSet<>();
    List<FloorPlan.Line> longestFirst = new ArrayList<>(joints);
    longestFirst.sort(Comparator.comparingDouble(FloorPlan.Line::lengthM).reversed());
    List<FloorPlan.Line> bare = new ArrayList<>();
    for (FloorPlan.Line line : longestFirst) {
      String away = away(spot, line);
      String text = joints.indexOf(line) + 1 + ": " + away;
      Words words = new Words(0, 0, text, SIZE, isUpright(line) ? -90 : 0, Anchor.MIDDLE);
      boolean rising = line.x1M() < line.x2M() || line.y1M() < line.y2M();
      List<Words> choices = choices(spot, rising ? turned(line) : line, words);
      boolean put =
          !away.isEmpty()
              && !told.contains(away)
              && !choices.isEmpty()
              && page.wordsIfClear(choices);
      if (put) {
        told.add(away);
      } else {
        bare.add(line);
      }
    }
    bare.forEach(line -> number(spot, line, joints.indexOf(line) + 1));
  }

  /** How far a joint lies from the corner; nothing of one that runs askew. */
  private String away(Spot spot, FloorPlan.Line line) {
    boolean level = Math.abs(line.y1M() - line.y2M()) < STRAIGHT_M;
    return isUpright(line)
        ? "X " + length(line.x1M() + spot.dxM() - spot.leastX())
        : level ? "Y " + length(line.y1M() + spot.dyM() - spot.leastY()) : "";
  }

  private static boolean isUpright(FloorPlan.Line line) {
    return Math.abs(line.x1M() - line.x2M()) < STRAIGHT_M;
  }

  /** The number alone, on the joint or close beside it. */
  private void number(Spot spot, FloorPlan.Line line, int number) {
    Words words = new Words(0, 0, "joint " + number, SIZE, 0, Anchor.MIDDLE);
    double dx = page.x(line.x2M()) - page.x(line.x1M());
    double dy = page.y(line.y2M()) - page.y(line.y1M());
    double length = page.points(line.lengthM());
    double beside = words.height() / 2 + Math.abs(dy) / length * words.width() / 2;
    List<Words> choices = new ArrayList<>();
    for (double off : new double[] {0, beside, -beside}) {
      for (double share : SHARES) {
        double x = page.x(line.x1M() + spot.dxM()) + dx * share - dy / length * off;
        double y = page.y(line.y1M() + spot.dyM()) + dy * share + dx / length * off;
        choices.add(words.at(x, y));
      }
    }
    page.wordsOrNone(choices);
  }

  /** On a joint where it is long enough, else beyond its end where that lies on the outside. */
  private List<Words> choices(Spot spot, FloorPlan.Line line, Words words) {
    List<Words> choices = new ArrayList<>();
    if (page.points(line.lengthM()) > words.width() + 2 * SIZE) {
      choices.addAll(page.fromStart(spot, line, words));
    }
    double x = line.x1M() + spot.dxM();
    double y = line.y1M() + spot.dyM();
    if (spot.section().partOf().isPresent()) {
      return choices;
    }
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

  private String length(double metres) {
    return JobDrawing.length(Length.ofMetres(metres), job.units());
  }
}
