package org.pourbook.plan;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Plate;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.UnitSystem;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.takeoff.BoltPiece;
import org.pourbook.takeoff.TakeOff;

/** Draws the plan of a job. */
public final class JobDrawing {

  private JobDrawing() {}

  /** Returns the drawing of a job that is worked out. */
  public static Drawing of(TakeOff takeOff) {
    Job job = takeOff.job();
    List<Places.Spot> spots = Places.of(job);
    Foot foot = Foot.of(takeOff, spots);
    Optional<NorthArrow> north = NorthArrow.of(job.practice());
    Page page = new Page(spots, foot.height(), north.isPresent() ? NorthArrow.ROOM : 0);
    FloorMarks floors = new FloorMarks(job, page);
    SectionMarks sections = new SectionMarks(takeOff, page, floors);
    spots.forEach(sections::add);
    job.plates().stream().filter(JobDrawing::isPlaced).forEach(p -> plate(takeOff, p, page));
    spots.forEach(floors::numbers);
    foot.add(page);
    north.ifPresent(arrow -> arrow.add(page));
    return new Drawing(job.code(), job.description(), page.marks());
  }

  static boolean isPlaced(Plate plate) {
    return plate.start().isPresent() && plate.directionDegrees().isPresent();
  }

  private static void plate(TakeOff takeOff, Plate plate, Page page) {
    double angle = StrictMath.toRadians(plate.directionDegrees().orElseThrow());
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    double x = plate.start().orElseThrow().x().metres();
    double y = plate.start().orElseThrow().y().metres();
    double endX = x + cos * plate.length().metres();
    double endY = y + sin * plate.length().metres();
    page.line(x, y, endX, endY, Stroke.PLATE);
    page.along(x, y, endX, endY, plate.code(), 7, -9);
    for (BoltPiece piece : takeOff.boltPieces()) {
      if (piece.plate().equals(plate.code())) {
        for (Length at : piece.positions()) {
          page.dot(x + cos * at.metres(), y + sin * at.metres());
        }
        x += cos * piece.length().metres();
        y += sin * piece.length().metres();
      }
    }
  }

  /** Returns a length as it is written on a plan: feet and inches, or metres. */
  static String length(Length length, UnitSystem units) {
    return units.isMetric() ? LengthFormat.metres(length) : LengthFormat.feetInches(length);
  }
}
