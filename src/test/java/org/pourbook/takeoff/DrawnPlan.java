package org.pourbook.takeoff;

import java.util.List;
import java.util.function.Predicate;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.JobDrawing;

/** The drawing of a job, asked for its marks by their kind. */
record DrawnPlan(TakeOff takeOff, Drawing drawing) {

  /** A stroke in the legend is so long [pt]. */
  private static final double SWATCH = 36;

  static DrawnPlan of(SiteJob job) {
    return of(TakeOffs.of(job.build(), Offer.NOTHING));
  }

  static DrawnPlan of(TakeOff takeOff) {
    return new DrawnPlan(takeOff, JobDrawing.of(takeOff));
  }

  /** Returns the lines of a stroke, those of the legend left out. */
  List<Drawing.Line> lines(Stroke stroke) {
    return all(Drawing.Line.class, line -> line.stroke() == stroke && !isSwatch(line));
  }

  /** Returns the strokes of the legend. */
  List<Drawing.Line> swatches() {
    return all(Drawing.Line.class, DrawnPlan::isSwatch);
  }

  private static boolean isSwatch(Drawing.Line line) {
    return line.y1() == line.y2() && Math.abs(line.x2() - line.x1() - SWATCH) < 1e-9;
  }

  /** Returns bolts, that of the legend left out: it stands beside its words. */
  List<Drawing.Dot> bolts() {
    return all(
        Drawing.Dot.class,
        dot ->
            words().stream()
                .noneMatch(words -> words.text().equals("anchor bolt") && words.y() == dot.y()));
  }

  List<Drawing.Words> words() {
    return all(Drawing.Words.class, words -> true);
  }

  List<String> texts() {
    return words().stream().map(Drawing.Words::text).toList();
  }

  /** Returns the words of a text that stands there once. */
  Drawing.Words words(String text) {
    List<Drawing.Words> found = all(Drawing.Words.class, words -> words.text().equals(text));
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " times \"" + text + "\" in " + texts());
    }
    return found.get(0);
  }

  private <T extends Drawing.Mark> List<T> all(Class<T> kind, Predicate<T> wanted) {
    return drawing.marks().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .filter(wanted)
        .toList();
  }

  static double length(Drawing.Line line) {
    double dx = line.x2() - line.x1();
    double dy = line.y2() - line.y1();
    return Math.sqrt(dx * dx + dy * dy);
  }
}
