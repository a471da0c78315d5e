package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.Prismatoid;
import org.pourbook.takeoff.rule.SlabVolume;

/** The concrete of one section by its named parts (CON-1 … CON-5). */
final class SectionConcrete {

  /** Name of the part that a turned-down edge is. */
  static final String EDGE = "turned-down edge";

  /** Name of the part that depth checks measured. */
  static final String MEASURED = "measured slab";

  private final Job job;
  private final Section section;
  private final Figure figure;
  private final Optional<MeasuredDepth> measured;
  private final int times;
  private final Working working;
  private final List<Poured> rows = new ArrayList<>();

  private SectionConcrete(Job job, Section section) {
    this.job = job;
    this.section = section;
    this.figure = Figures.of(section);
    this.times = job.timesOf(section);
    this.working = new Working(job.units());
    this.measured = MeasuredDepth.of(job, section);
  }

  /** Returns the named parts of a section's concrete; what is taken out is negative. */
  static List<Poured> of(Job job, Section section) {
    SectionConcrete concrete = new SectionConcrete(job, section);
    switch (section.kind()) {
      case SLAB -> concrete.slab();
      case RECESS -> concrete.recess();
      case THICKENING -> concrete.thickening();
      case FOOTING, PIER -> concrete.footing();
    }
    return List.copyOf(concrete.rows);
  }

  private void slab() {
    if (measured.isPresent()) {
      measured(measured.get());
      edge();
      return;
    }
    flat("plan slab", "CON-2");
    for (Section part : job.partsOf(section)) {
      if (part.kind() == Kind.RECESS) {
        takenOut(part);
      }
    }
    fall();
    edge();
  }

  private void recess() {
    if (measured.isPresent()) {
      measured(measured.get());
    } else {
      flat("recess", "CON-4");
      fall();
    }
    bank();
    edge();
  }

  /** What was measured takes the place of the flat slab, its fall and what recesses take out. */
  private void measured(MeasuredDepth depth) {
    double oneM3 = depth.volumeM3();
    String how = depth.working(working) + working.times(times);
    OptionalDouble allowance = OptionalDouble.of(depth.allowancePercent(job.practice()));
    rows.add(
        new Poured(section, MEASURED, new Worked.Laid(oneM3 * times), how, "CON-10", allowance));
  }

  private void flat(String what, String rule) {
    add(
        what,
        SlabVolume.flat(area(), Floors.thickness(job, section)),
        working.plan(section) + " × " + working.small(section.thickness()),
        rule);
  }

  private void takenOut(Section recess) {
    Worked one =
        SlabVolume.flat(Floors.planArea(job, recess), Floors.thickness(job, section))
            .times(SectionFigure.COUNT.of(recess, job.units()));
    add(
        "recess " + recess.code() + " taken out",
        one.times(-1),
        "− "
            + working.plan(recess)
            + " × "
            + working.small(section.thickness())
            + working.times(recess.count()),
        "CON-1");
  }

  private void fall() {
    if (section.fall() == 0 || section.baseFollows()) {
      return;
    }
    double areaM2 = Floors.ownAreaM2(job, section);
    add(
        "fall of the top",
        new Worked.Laid(SlabVolume.fallM3(areaM2, section.fall(), figure.extentXM())),
        working.area(areaM2)
            + " × "
            + working.small(Length.ofMetres(section.fall() * figure.extentXM()))
            + " fall / 2",
        "CON-2");
  }

  private void edge() {
    EdgeBelow.of(section, job.practice())
        .ifPresent(
            below -> {
              Prismatoid body = below.whole();
              add(
                  EDGE,
                  below.worked(job, section, body),
                  EdgeBelow.working(body, working),
                  "CON-3");
            });
  }

  private void bank() {
    Length lower = Floors.lowerBy(job, section);
    double slope = job.practice().number(Setting.BASE_BANK_SLOPE);
    double sidesM = Floors.innerSidesM(section);
    double m3 = SlabVolume.recessBankM3(sidesM, lower.metres(), slope);
    if (m3 > 0) {
      add(
          "bank of the recess",
          new Worked.Laid(m3),
          working.run(sidesM)
              + " × "
              + Working.number(slope)
              + " × ("
              + working.small(lower)
              + ")²/2",
          "CON-4");
    }
  }

  private void thickening() {
    Length below = Floors.below(job, section);
    double slope = job.practice().number(Setting.BASE_BANK_SLOPE);
    double widthM = Floors.widthM(section);
    String depth = working.small(below);
    add(
        section.kind().label(),
        thickening(slope),
        working.run(figure.areaM2() / widthM)
            + " × ("
            + working.small(Length.ofMetres(widthM))
            + " × "
            + depth
            + " + "
            + Working.number(slope)
            + " × ("
            + depth
            + ")²)",
        "CON-5");
  }

  private Worked thickening(double slope) {
    Length below = Floors.below(job, section);
    double widthM = Floors.widthM(section);
    if (section.shape() instanceof Shape.Rectangle && below.isPositive()) {
      Worked depth =
          Floors.thickness(job, section).minus(Floors.thickness(job, Floors.parent(job, section)));
      return SlabVolume.thickening(
          SectionFigure.LENGTH.of(section, job.units()),
          SectionFigure.WIDTH.of(section, job.units()),
          slope,
          depth);
    }
    return new Worked.Laid(
        SlabVolume.thickeningM3(figure.areaM2() / widthM, widthM, slope, 0, below.metres()));
  }

  private Worked area() {
    return Floors.planArea(job, section);
  }

  private void footing() {
    add(
        section.kind().label(),
        SlabVolume.footing(area(), Floors.thickness(job, section)),
        working.plan(section) + " × " + working.small(section.thickness()),
        "CON-5");
  }

  private void add(String what, Worked one, String how, String rule) {
    String counted = times == 1 || !how.contains(" + ") ? how : "(" + how + ")";
    OptionalDouble allowance =
        measured.isPresent()
            ? OptionalDouble.of(job.practice().number(Setting.SPILL))
            : OptionalDouble.empty();
    Worked all = Floors.counted(job, section, one);
    rows.add(new Poured(section, what, all, counted + working.times(times), rule, allowance));
  }
}
