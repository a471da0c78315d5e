package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.outline.FloorPlan;
import org.pourbook.outline.FloorPlan.Line;
import org.pourbook.outline.Placed;
import org.pourbook.takeoff.rule.SlabVolume;

/** Measures of a section that several families need. */
final class Floors {

  private Floors() {}

  /** Returns the plan area of one section [m2]. */
  static Worked planArea(Job job, Section section) {
    if (section.shape() instanceof Shape.Rectangle) {
      return SectionFigure.LENGTH
          .of(section, job.units())
          .times(SectionFigure.WIDTH.of(section, job.units()));
    }
    if (section.shape() instanceof Shape.Round) {
      Worked diameter = SectionFigure.DIAMETER.of(section, job.units());
      return diameter.times(diameter).times(Math.PI / 4);
    }
    return new Worked.Laid(Figures.of(section).areaM2());
  }

  static Worked thickness(Job job, Section section) {
    return SectionFigure.THICKNESS.of(section, job.units());
  }

  /** Returns an amount of one section, of a part in one parent, as often as there is one. */
  static Worked counted(Job job, Section section, Worked one) {
    Worked counted = one.times(SectionFigure.COUNT.of(section, job.units()));
    return section.partOf().isEmpty()
        ? counted
        : counted.times(SectionFigure.COUNT.of(parent(job, section), job.units()));
  }

  /** Returns the area of one section's own top, its recesses taken out [m2]. */
  static Worked ownArea(Job job, Section section) {
    return SlabVolume.ownArea(planArea(job, section), recesses(job, section));
  }

  /** Returns the area of the recesses in one section [m2]. */
  static Worked recesses(Job job, Section section) {
    Worked recesses = Worked.of(0);
    for (Section part : job.partsOf(section)) {
      if (part.kind() == Kind.RECESS) {
        recesses =
            recesses.plus(planArea(job, part).times(SectionFigure.COUNT.of(part, job.units())));
      }
    }
    return recesses;
  }

  /** Returns the area of one section's own top, its recesses taken out [m2]. */
  static double ownAreaM2(Job job, Section section) {
    return ownArea(job, section).value();
  }

  /**
   * Returns the volume of one floor at its thickness, its recesses taken out, with its fall [m3].
   */
  static double designM3(Job job, Section section) {
    Worked area = ownArea(job, section);
    double flatM3 = SlabVolume.flat(area, thickness(job, section)).value();
    return section.baseFollows()
        ? flatM3
        : flatM3 + SlabVolume.fallM3(area.value(), section.fall(), Figures.of(section).extentXM());
  }

  /** Returns the area of the recesses in one section [m2]. */
  static double recessesM2(Job job, Section section) {
    return job.partsOf(section).stream()
        .filter(part -> part.kind() == Kind.RECESS)
        .mapToDouble(part -> Figures.of(part).areaM2() * part.count())
        .sum();
  }

  /** Returns the recesses of a section whose places are known, in the section's plan. */
  static List<Placed> placedRecesses(Job job, Section section) {
    return job.partsOf(section).stream()
        .filter(part -> part.kind() == Kind.RECESS && part.count() == 1)
        .flatMap(part -> Placed.in(section, part).stream())
        .toList();
  }

  /** Returns the pieces of a section's own floor, the recesses taken out whose places are known. */
  static List<FloorPlan> plan(Job job, Section section) {
    return FloorPlan.of(Figures.of(section), placedRecesses(job, section));
  }

  /** Returns the diagonal of the rectangle round a section, from the corner of least X and Y. */
  static Line roundIt(Section section) {
    Figure figure = Figures.of(section);
    boolean round = section.shape() instanceof Shape.Round;
    double x = round ? 0 : figure.sides().stream().mapToDouble(FigureSide::x1M).min().orElse(0);
    double y = round ? 0 : figure.sides().stream().mapToDouble(FigureSide::y1M).min().orElse(0);
    return new Line(x, y, x + figure.extentXM(), y + figure.extentYM());
  }

  /** Returns the section in which a part lies. */
  static Section parent(Job job, Section part) {
    return job.section(
        part.partOf().orElseThrow(() -> new IllegalArgumentException(part.code() + " is no part")));
  }

  /** Returns how far a recess's underside lies below its parent's; negative where it lies above. */
  static Length lowerBy(Job job, Section recess) {
    return recess.drop().plus(recess.thickness()).minus(parent(job, recess).thickness());
  }

  /** Returns how far a thickening reaches below its parent's underside, at least zero. */
  static Length below(Job job, Section thickening) {
    return thickening.thickness().minus(parent(job, thickening).thickness()).max(Length.ZERO);
  }

  /** Returns the length of a recess's sides that lie inside its parent, of one recess [m]. */
  static double innerSidesM(Section recess) {
    return recess
        .formed()
        .run()
        .map(Length::metres)
        .orElseGet(
            () ->
                Figures.of(recess).sides().stream()
                    .filter(FigureSide::formed)
                    .mapToDouble(side -> side.length().metres())
                    .sum());
  }

  /** Returns the width across of a thickening or footing: its Width, else its lesser extent [m]. */
  static double widthM(Section section) {
    if (section.shape() instanceof Shape.Rectangle rectangle) {
      return rectangle.width().metres();
    }
    Figure figure = Figures.of(section);
    return Math.min(figure.extentXM(), figure.extentYM());
  }
}
