package org.pourbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.outline.Placed;

/** Where each section of a job is drawn; those without a place stand in a row beside [m]. */
final class Places {

  /** Room between sections that stand in a row [m]. */
  private static final double ROOM_M = Length.ofFeet(4).metres();

  private static final Position ZERO = new Position(Length.ZERO, Length.ZERO);

  /**
   * A section where it is drawn.
   *
   * @param dxM where its own plan's origin lies in the drawing
   * @param known whether that is its place in the job's plan, of a part its place in its slab
   */
  record Spot(Section section, Figure figure, double dxM, double dyM, boolean known) {

    double leastX() {
      return dxM + figure.sides().stream().mapToDouble(FigureSide::x1M).min().orElse(0) - round();
    }

    double leastY() {
      return section.shape() instanceof Shape.Round
          ? dyM
          : dyM + figure.sides().stream().mapToDouble(FigureSide::y1M).min().orElse(0);
    }

    private double round() {
      return section.shape() instanceof Shape.Round ? figure.extentXM() / 2 : 0;
    }

    double mostX() {
      return leastX() + figure.extentXM();
    }

    double mostY() {
      return leastY() + figure.extentYM();
    }
  }

  private final List<Spot> spots = new ArrayList<>();

  private Places() {}

  /** Returns the spots of a job's sections: slabs before the parts that lie in them. */
  static List<Spot> of(Job job) {
    Places places = new Places();
    List<Section> wholes = job.sections().stream().filter(s -> s.partOf().isEmpty()).toList();
    List<Section> parts = job.sections().stream().filter(s -> s.partOf().isPresent()).toList();
    wholes.forEach(whole -> places.own(whole).ifPresent(at -> places.put(whole, at)));
    wholes.stream().filter(whole -> places.own(whole).isEmpty()).forEach(places::putBeside);
    for (Section part : parts) {
      Section slab = job.section(part.partOf().orElseThrow());
      Optional<Position> in = Placed.place(slab, part.shape(), part.position());
      in.ifPresent(at -> places.putIn(slab, part, at));
    }
    parts.stream().filter(part -> places.spot(part).isEmpty()).forEach(places::putBeside);
    return List.copyOf(places.spots);
  }

  private Optional<Position> own(Section section) {
    return section.shape() instanceof Shape.Outline ? Optional.of(ZERO) : section.position();
  }

  private Optional<Spot> spot(Section section) {
    return spots.stream().filter(spot -> spot.section().equals(section)).findFirst();
  }

  private void put(Section section, Position at) {
    double x = at.x().metres();
    spots.add(new Spot(section, Figures.of(section), x, at.y().metres(), true));
  }

  private void putIn(Section slab, Section part, Position at) {
    Spot around = spot(slab).orElseThrow();
    spots.add(
        new Spot(
            part,
            Figures.of(part),
            around.dxM() + at.x().metres(),
            around.dyM() + at.y().metres(),
            true));
  }

  private void putBeside(Section section) {
    double x = spots.stream().mapToDouble(Spot::mostX).max().orElse(-ROOM_M) + ROOM_M;
    double y = spots.stream().mapToDouble(Spot::leastY).min().orElse(0);
    spots.add(new Spot(section, Figures.of(section), x, y, false));
  }
}
