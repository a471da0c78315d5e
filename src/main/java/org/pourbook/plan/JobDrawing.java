package org.pourbook.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.job.Plate;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Mark;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.takeoff.BoltPiece;
import org.pourbook.takeoff.TakeOff;

/** Draws the plan of a job. */
public final class JobDrawing {

  private final TakeOff takeOff;
  private final Job job;
  private final List<Places.Spot> spots;
  private final Page page;
  private final List<String> notes = new ArrayList<>();

  private JobDrawing(TakeOff takeOff) {
    this.takeOff = takeOff;
    this.job = takeOff.job();
    this.spots = Places.of(job);
    this.page = new Page(spots);
  }

  /** Returns the drawing of a job that is worked out. */
  public static Drawing of(TakeOff takeOff) {
    JobDrawing drawing = new JobDrawing(takeOff);
    SectionMarks sections = new SectionMarks(takeOff, drawing.page);
    drawing.spots.forEach(sections::add);
    if (drawing.spots.stream().anyMatch(spot -> !spot.known())) {
      drawing.notes.add("Sections without X and Y stand side by side.");
    }
    takeOff.job().plates().forEach(drawing::plate);
    drawing.legend();
    drawing.title();
    return new Drawing(takeOff.job().code(), drawing.page.marks());
  }

  private void plate(Plate plate) {
    List<BoltPiece> pieces =
        takeOff.boltPieces().stream().filter(piece -> piece.plate().equals(plate.code())).toList();
    if (plate.start().isEmpty() || plate.directionDegrees().isEmpty()) {
      notes.add("Plate " + plate.code() + ", place not written: " + positions(pieces));
      return;
    }
    double angle = StrictMath.toRadians(plate.directionDegrees().getAsDouble());
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    double x = plate.start().get().x().metres();
    double y = plate.start().get().y().metres();
    page.line(
        x, y, x + cos * plate.length().metres(), y + sin * plate.length().metres(), Stroke.PLATE);
    for (BoltPiece piece : pieces) {
      for (Length at : piece.positions()) {
        page.dot(x + cos * at.metres(), y + sin * at.metres());
      }
      x += cos * piece.length().metres();
      y += sin * piece.length().metres();
    }
  }

  private String positions(List<BoltPiece> pieces) {
    return pieces.stream()
        .map(
            piece -> piece.positions().stream().map(this::length).collect(Collectors.joining(", ")))
        .collect(Collectors.joining("; next piece "));
  }

  private String length(Length length) {
    return LengthFormat.of(length, job.units());
  }

  private void legend() {
    Set<Stroke> used = new LinkedHashSet<>();
    for (Mark mark : page.marks()) {
      if (mark instanceof Drawing.Line line) {
        used.add(line.stroke());
      }
    }
    double top = Drawing.PAGE_HEIGHT - Page.MARGIN - Page.FOOT + 34;
    int i = 0;
    for (Stroke stroke : Stroke.values()) {
      if (used.contains(stroke)) {
        double x = Page.MARGIN + i % 4 * 178;
        double y = top + i / 4 * 14;
        page.marks().add(new Drawing.Line(x, y, x + 36, y, stroke));
        page.words(x + 42, y, stroke.label(), 8, Anchor.START);
        i++;
      }
    }
    double y = top + (i + 3) / 4 * 14;
    for (String note : notes) {
      page.words(Page.MARGIN, y, note, 7, Anchor.START);
      y += 10;
    }
  }

  private void title() {
    String name = job.description().isEmpty() ? "" : ", " + job.description();
    double y = Drawing.PAGE_HEIGHT - Page.MARGIN + 14;
    page.words(Page.MARGIN, y, job.code() + name, 12, Anchor.START);
    Length bar = job.units().isMetric() ? Length.ofMillimetres(3000) : Length.ofFeet(10);
    double right = Drawing.PAGE_WIDTH - Page.MARGIN;
    double left = right - page.points(bar.metres());
    page.marks().add(new Drawing.Line(left, y, right, y, Stroke.SIDE));
    page.words((left + right) / 2, y - 7, length(bar), 8, Anchor.MIDDLE);
  }
}
