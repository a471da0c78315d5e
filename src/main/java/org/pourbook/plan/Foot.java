package org.pourbook.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.Plate;
import org.pourbook.measure.Length;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.takeoff.BoltPiece;
import org.pourbook.takeoff.JointOnSide;
import org.pourbook.takeoff.TakeOff;

/** What stands below the plan: legend, scale, notes. */
record Foot(Job job, List<String> notes) {

  private static final double LINE = 12;
  private static final double NOTE_LINE = 9;
  private static final int LEGEND_LINES = 3;
  private static final int LEGEND_COLUMNS = 4;
  private static final double SWATCH = 36;

  /** Letters in a line of notes, that surely go on the page. */
  private static final int LETTERS = 170;

  private static final int MOST_NOTES = 14;

  /** The scale is drawn by the longest of these that is not too long [ft, or half metres]. */
  private static final int[] SCALES = {50, 20, 10, 5, 2, 1};

  private static final double LONG = 150;

  static Foot of(TakeOff takeOff, List<Places.Spot> spots) {
    Job job = takeOff.job();
    List<String> notes = new ArrayList<>();
    String plan = "X to the right, Y up, from the lower left corner. (1), (2)… strips as placed.";
    boolean cut =
        takeOff.joints().stream().anyMatch(line -> job.joints().stream().noneMatch(line::isOf));
    notes.add(plan + (cut ? " Control joints by number: sheet Joints." : ""));
    if (spots.stream().anyMatch(spot -> !spot.known())) {
      notes.add("Sections without X and Y stand side by side.");
    }
    for (Plate plate : job.plates()) {
      if (!JobDrawing.isPlaced(plate)) {
        List<BoltPiece> pieces =
            takeOff.boltPieces().stream().filter(p -> p.plate().equals(plate.code())).toList();
        String times = plate.count() == 1 ? "" : " × " + plate.count();
        wrap(notes, "Bolts of plate " + plate.code() + times + ", at " + positions(job, pieces));
      }
    }
    for (Joint joint : job.joints()) {
      Optional<JointOnSide> drawn = drawn(job, joint, spots);
      if (drawn.isEmpty()) {
        wrap(notes, told(joint, takeOff));
      } else if (!drawn.get().known()) {
        wrap(notes, told(joint, takeOff) + ", drawn from the side's first corner");
      }
    }
    if (notes.size() > MOST_NOTES) {
      notes.subList(MOST_NOTES - 1, notes.size()).clear();
      notes.add("More bolts and joints are on sheets Bolts and Joints.");
    }
    return new Foot(job, List.copyOf(notes));
  }

  /** Dowels and ties stand on the side that their joint names; isolation joints are not drawn. */
  private static Optional<JointOnSide> drawn(Job job, Joint joint, List<Places.Spot> spots) {
    return spots.stream()
        .filter(spot -> joint.section().equals(Optional.of(spot.section().code())))
        .flatMap(
            spot ->
                spot.figure().sides().stream()
                    .flatMap(side -> JointOnSide.of(job, spot.section(), side).stream()))
        .filter(on -> on.joint().equals(joint))
        .findFirst();
  }

  private static String told(Joint joint, TakeOff takeOff) {
    String bars =
        takeOff.joints().stream()
            .filter(line -> line.isOf(joint) && line.bars() > 0)
            .map(line -> ": " + line.bars() + " of " + line.barText())
            .findFirst()
            .orElse("");
    return "Joint "
        + joint.code()
        + ", "
        + joint.kind().label()
        + joint.section().map(section -> ", " + section).orElse("")
        + joint.side().map(side -> ", " + side).orElse("")
        + ", "
        + JobDrawing.length(joint.length(), takeOff.job().units())
        + bars;
  }

  private static String positions(Job job, List<BoltPiece> pieces) {
    return pieces.stream()
        .map(
            piece ->
                piece.positions().stream()
                    .map(at -> JobDrawing.length(at, job.units()))
                    .collect(Collectors.joining(", ")))
        .collect(Collectors.joining("; next piece "));
  }

  private static void wrap(List<String> notes, String text) {
    String rest = text;
    while (rest.length() > LETTERS) {
      int cut = Math.max(rest.lastIndexOf(", ", LETTERS), rest.lastIndexOf("; ", LETTERS));
      if (cut < 0) {
        break;
      }
      notes.add(rest.substring(0, cut + 1));
      rest = "    " + rest.substring(cut + 2);
    }
    notes.add(rest);
  }

  /** Returns the room it takes [pt]. */
  double height() {
    return LEGEND_LINES * LINE + notes.size() * NOTE_LINE;
  }

  void add(Page page) {
    double top = Drawing.HEIGHT - height() + 2;
    legend(page, top);
    double y = top + LEGEND_LINES * LINE;
    for (int i = 0; i < notes.size(); i++) {
      String more =
          i == 0 && page.leftOut() > 0 ? " " + page.leftOut() + " have no room here." : "";
      page.words(0, y, notes.get(i) + more, 7, Anchor.START);
      y += NOTE_LINE;
    }
    scale(page, top + (LEGEND_LINES - 0.5) * LINE);
  }

  private static void legend(Page page, double top) {
    Set<Stroke> used = new LinkedHashSet<>();
    boolean bolts = false;
    for (Drawing.Mark mark : page.marks()) {
      if (mark instanceof Drawing.Line line) {
        used.add(line.stroke());
      }
      bolts |= mark instanceof Drawing.Dot;
    }
    int i = 0;
    for (Stroke stroke : Stroke.values()) {
      if (used.contains(stroke)) {
        double x = column(i);
        double y = top + i / LEGEND_COLUMNS * LINE;
        page.put(new Drawing.Line(x, y, x + SWATCH, y, stroke));
        page.words(x + SWATCH + 6, y, stroke.label(), 8, Anchor.START);
        i++;
      }
    }
    if (bolts) {
      double y = top + i / LEGEND_COLUMNS * LINE;
      page.put(new Drawing.Dot(column(i) + SWATCH / 2, y, 2));
      page.words(column(i) + SWATCH + 6, y, "anchor bolt", 8, Anchor.START);
    }
  }

  private static double column(int i) {
    return i % LEGEND_COLUMNS * Drawing.WIDTH / LEGEND_COLUMNS;
  }

  private void scale(Page page, double y) {
    Length unit = job.units().isMetric() ? Length.ofMillimetres(500) : Length.ofFeet(1);
    Length bar = unit;
    for (int scale : SCALES) {
      if (page.points(unit.times(scale).metres()) <= LONG) {
        bar = unit.times(scale);
        break;
      }
    }
    double right = Drawing.WIDTH - 1;
    double left = right - page.points(bar.metres());
    page.put(new Drawing.Line(left, y, right, y, Stroke.SIDE));
    page.put(new Drawing.Line(left, y - 3, left, y + 3, Stroke.SIDE));
    page.put(new Drawing.Line(right, y - 3, right, y + 3, Stroke.SIDE));
    page.words((left + right) / 2, y - 7, JobDrawing.length(bar, job.units()), 8, Anchor.MIDDLE);
  }
}
