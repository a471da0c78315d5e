package org.pourbook.takeoff;

import java.util.Optional;
import java.util.stream.Collectors;
import org.pourbook.job.Edge;
import org.pourbook.job.Job;
import org.pourbook.job.Practice;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.Prismatoid;
import org.pourbook.takeoff.rule.TurnedDownEdge;

/**
 * The turned-down edge of a section, below the slab's underside.
 *
 * @param depth below the underside, above zero
 * @param width at the bottom
 * @param slope run of the inner bank to one of rise
 */
record EdgeBelow(Edge edge, Figure figure, Length depth, Length width, double slope) {

  /** Returns the edge of a section, if it has one that reaches below its underside. */
  static Optional<EdgeBelow> of(Section section, Practice practice) {
    return section
        .edge()
        .filter(edge -> edge.depth().isMoreThan(section.thickness()) && !edge.sides().isNone())
        .map(
            edge ->
                new EdgeBelow(
                    edge,
                    Figures.of(section),
                    edge.depth().minus(section.thickness()),
                    edge.width(),
                    practice.number(Setting.BASE_BANK_SLOPE)));
  }

  /** Returns all of it. */
  Prismatoid whole() {
    return between(Length.ZERO, depth);
  }

  /** Returns what lies within a distance below the underside. */
  Prismatoid upper(Length within) {
    return between(depth.minus(within).max(Length.ZERO), depth);
  }

  /** Returns the volume of the whole body: of a rectangle by its closed form [m3]. */
  Worked worked(Job job, Section section, Prismatoid body) {
    return ofRectangle(
        job, section, body, SectionFigure.EDGE_WIDTH.of(section, job.units()), below(job, section));
  }

  /**
   * Returns the volume of what lies within a distance below the underside: of a rectangle by its
   * closed form, as an edge so deep that is as wide as this one is at that depth [m3].
   */
  Worked upper(Job job, Section section, Length within, Worked figure) {
    Worked below = below(job, section);
    Worked upper = figure.orLess(below);
    Worked wider =
        SectionFigure.EDGE_WIDTH.of(section, job.units()).plus(below.minus(upper).times(slope));
    return ofRectangle(job, section, upper(within), wider, upper);
  }

  private static Worked below(Job job, Section section) {
    return SectionFigure.EDGE_DEPTH.of(section, job.units()).minus(Floors.thickness(job, section));
  }

  private Worked ofRectangle(
      Job job, Section section, Prismatoid body, Worked bottom, Worked high) {
    double m3 = body.volumeM3();
    if (!(section.shape() instanceof Shape.Rectangle) || edge.sides().run().isPresent()) {
      return new Worked.Laid(m3);
    }
    int lengths = (edge.sides().has("L1") ? 1 : 0) + (edge.sides().has("L2") ? 1 : 0);
    int widths = (edge.sides().has("W1") ? 1 : 0) + (edge.sides().has("W2") ? 1 : 0);
    Worked along = SectionFigure.LENGTH.of(section, job.units()).times(lengths);
    Worked across = SectionFigure.WIDTH.of(section, job.units()).times(widths);
    Worked sides = lengths == 0 ? across : widths == 0 ? along : along.plus(across);
    return Worked.orLaid(
        TurnedDownEdge.ofRectangle(sides, lengths * widths, bottom, slope, high), m3);
  }

  private Prismatoid between(Length from, Length to) {
    return edge.sides()
        .run()
        .map(
            run ->
                TurnedDownEdge.ofRun(
                    figure.areaM2(),
                    run.metres(),
                    width.metres(),
                    slope,
                    from.metres(),
                    to.metres()))
        .orElseGet(
            () ->
                TurnedDownEdge.ofSides(
                    figure.areaM2(),
                    inset -> figure.movedInAreaM2(inset, FigureSide::turnedDown),
                    width.metres(),
                    slope,
                    from.metres(),
                    to.metres()));
  }

  /** Slices of a working; more are only counted. */
  private static final int MOST_SHOWN = 3;

  /** Returns how the volume follows from the rings: {@code 12"/6 × (116 + 4 × 171 + 224 ft2)}. */
  static String working(Prismatoid body, Working working) {
    if (body.slices().size() > MOST_SHOWN) {
      return "Σ h/6 × (A0 + 4 A½ + A1) over " + body.slices().size() + " slices of the edge's ring";
    }
    return body.slices().stream()
        .map(slice -> working(slice, working))
        .collect(Collectors.joining(" + "));
  }

  private static String working(Prismatoid.Slice slice, Working working) {
    String depth = working.small(Length.ofMetres(slice.depthM()));
    if (slice.isStraight()) {
      return depth + " × " + working.area(slice.middleM2());
    }
    return depth
        + "/6 × ("
        + Working.number(working.areaUnit().fromBase(slice.bottomM2()))
        + " + 4 × "
        + Working.number(working.areaUnit().fromBase(slice.middleM2()))
        + " + "
        + working.area(slice.topM2())
        + ")";
  }
}
