package org.pourbook.takeoff;

import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.outline.Figure;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.CompactedBase;
import org.pourbook.takeoff.rule.SlabVolume;

/** Compacted base under floors (BASE-1). */
final class BaseTakeoff {

  private static final String COMPACTED = "compacted base";
  private static final String MATERIAL = "clean stone";

  /** Less is the rounding of what is taken out of a base [m3]. */
  private static final double NONE_M3 = 1e-9;

  private final Job job;
  private final Working working;
  private final CompactedBase.Stone stone;
  private final MaterialKey key;
  private final Part part = new Part();

  private BaseTakeoff(Job job, OnOffer onOffer) {
    this.job = job;
    this.working = new Working(job.units());
    String name = job.practice().text(Setting.BASE_MATERIAL);
    this.stone =
        CompactedBase.stone(name)
            .or(() -> CompactedBase.stone(MATERIAL))
            .orElseThrow(() -> new IllegalStateException(MATERIAL));
    this.key = key(name, onOffer);
    if (CompactedBase.stone(name).isEmpty()) {
      part.add(
          new Caution(
              "",
              "Base material \"" + name + "\" is not known: ordered at the weight of " + MATERIAL,
              "BASE-1"));
    }
  }

  /** The base material by its name where the price book lists it so, else without a size. */
  private static MaterialKey key(String name, OnOffer onOffer) {
    String wanted = MaterialKey.normal(name);
    return onOffer.sizes(Material.BASE_GRAVEL.label()).stream()
        .filter(size -> MaterialKey.normal(size).equals(wanted))
        .findFirst()
        .map(Material.BASE_GRAVEL::of)
        .orElse(Material.BASE_GRAVEL.of(""));
  }

  /** Returns the base of a job. */
  static Part of(Job job, OnOffer onOffer) {
    BaseTakeoff takeoff = new BaseTakeoff(job, onOffer);
    for (Section section : job.sections()) {
      if (section.kind().isFloor() && section.base().isPositive()) {
        takeoff.add(section);
      }
    }
    return takeoff.part;
  }

  private void add(Section section) {
    int times = job.timesOf(section);
    Worked area = area(section);
    Worked base = SectionFigure.BASE.of(section, job.units());
    Worked displaced = displaced(section, base);
    double displacedM3 = displaced.value();
    Worked one = CompactedBase.compacted(area, base, displaced);
    Worked compacted = Floors.counted(job, section, one);
    double compactedM3 = compacted.value();
    if (compactedM3 < NONE_M3) {
      String says =
          "No base is ordered: what is formed under the slab takes all "
              + working.small(section.base())
              + " of it, or recesses all of its plan.";
      part.add(new Caution(section.code(), says, "BASE-1"));
      return;
    }
    Worked mass =
        CompactedBase.mass(new Worked.Other(section.code(), COMPACTED, compactedM3), stone);
    String how =
        working.area(area.value())
            + " × "
            + working.small(section.base())
            + (displacedM3 > 0 ? " − " + working.volume(displacedM3) + " displaced" : "");
    String counted = displacedM3 > 0 && times > 1 ? "(" + how + ")" : how;
    String volume = counted + working.times(times) + " = " + working.volume(compactedM3);
    part.add(
        Quantity.told(
                section.code(),
                COMPACTED,
                working.volumeUnit().fromBase(compactedM3),
                working.volumeUnit(),
                volume,
                "BASE-1",
                section.pour())
            .by(compacted));
    part.add(ordered(section, compactedM3, mass));
  }

  private Quantity ordered(Section section, double compactedM3, Worked mass) {
    double kg = mass.value();
    Unit unit = Material.BASE_GRAVEL.unit(job.units());
    double perVolume = unit.fromBase(Unit.TON.toBase(stone.tonPerYd3()) / Unit.YD3.toBase(1));
    double shown = perVolume * working.volumeUnit().toBase(1);
    return Quantity.of(
            section.code(),
            "base, " + stone.name() + ", loose",
            unit.fromBase(kg),
            unit,
            working.volume(compactedM3)
                + " × "
                + stone.loosePerCompacted()
                + " × "
                + Math.round(shown * 1000) / 1000.0
                + " "
                + unit.label()
                + "/"
                + working.volumeUnit().label()
                + " = "
                + working.amount(kg, unit),
            "BASE-1",
            key,
            section.pour())
        .by(mass);
  }

  /** The plan with its margin; of a rectangle whose sides are alike, by its sides. */
  private Worked area(Section section) {
    double m2 = areaM2(section);
    Worked byCells = Floors.planArea(job, section);
    if (section.shape() instanceof Shape.Rectangle && section.kind() != Kind.RECESS) {
      byCells =
          side(section, SectionFigure.LENGTH, "W1", "W2")
              .times(side(section, SectionFigure.WIDTH, "L1", "L2"))
              .minus(Floors.recesses(job, section));
    }
    return Worked.orLaid(byCells, m2);
  }

  /** A side with the margin at its two ends, which are the other sides. */
  private Worked side(Section section, SectionFigure figure, String first, String last) {
    double marginM = job.practice().length(Setting.BASE_MARGIN).metres();
    long margins =
        Figures.of(section).sides().stream()
            .filter(side -> side.name().equals(first) || side.name().equals(last))
            .filter(side -> hasMargin(section, side))
            .count();
    Worked bare = figure.of(section, job.units());
    return margins == 0 ? bare : bare.plus(Worked.of(marginM * margins));
  }

  private double areaM2(Section section) {
    Figure figure = Figures.of(section);
    if (section.kind() == Kind.RECESS) {
      return figure.areaM2();
    }
    double marginM = job.practice().length(Setting.BASE_MARGIN).metres();
    double alongRun = section.formed().run().map(run -> run.metres() * marginM).orElse(0.0);
    return figure.movedOutAreaM2(marginM, side -> hasMargin(section, side))
        + alongRun
        - Floors.recessesM2(job, section);
  }

  private boolean hasMargin(Section section, FigureSide side) {
    return side.formed()
        && !side.turnedDown()
        && !side.existing()
        && !SharedSides.isShared(job, section, side);
  }

  private Worked displaced(Section section, Worked base) {
    Worked displaced =
        EdgeBelow.of(section, job.practice())
            .map(below -> below.upper(job, section, section.base(), base))
            .orElse(Worked.of(0));
    for (Section inside : job.partsOf(section)) {
      if (inside.kind() == Kind.THICKENING) {
        Worked one = thickening(inside, section.base(), base);
        displaced = displaced.plus(one.times(SectionFigure.COUNT.of(inside, job.units())));
      }
    }
    double footingsM3 =
        job.sections().stream()
            .filter(other -> other.kind() == Kind.FOOTING)
            .mapToDouble(footing -> footingM3(section, footing))
            .sum();
    return footingsM3 == 0 ? displaced : displaced.plus(new Worked.Laid(footingsM3));
  }

  /** What a thickening takes of the base: as one so deep that is as wide as this one is there. */
  private Worked thickening(Section thickening, Length base, Worked figure) {
    double slope = job.practice().number(Setting.BASE_BANK_SLOPE);
    double m3 = thickeningM3(thickening, base, slope);
    if (!(thickening.shape() instanceof Shape.Rectangle)) {
      return new Worked.Laid(m3);
    }
    Worked depth =
        Floors.thickness(job, thickening)
            .minus(Floors.thickness(job, Floors.parent(job, thickening)));
    Worked upper = figure.orLess(depth);
    Worked width = SectionFigure.WIDTH.of(thickening, job.units());
    Worked wider = width.plus(depth.minus(upper).times(2 * slope));
    Worked length = SectionFigure.LENGTH.of(thickening, job.units());
    return Worked.orLaid(SlabVolume.thickening(length, wider, slope, upper), m3);
  }

  private double thickeningM3(Section thickening, Length base, double slope) {
    double depth = Floors.below(job, thickening).metres();
    double from = Math.max(0, depth - base.metres());
    double widthM = Floors.widthM(thickening);
    double lengthM = Figures.of(thickening).areaM2() / widthM;
    return SlabVolume.thickeningM3(lengthM, widthM, slope, from, depth);
  }

  /** What a footing takes of the base where both positions are known; else nothing is known. */
  private double footingM3(Section slab, Section footing) {
    Length top = footing.drop().max(slab.thickness());
    Length bottom =
        footing.drop().plus(footing.thickness()).min(slab.thickness().plus(slab.base()));
    Optional<Double> overlapM2 = SharedSides.overlapM2(slab, footing);
    return bottom.isMoreThan(top)
        ? overlapM2.orElse(0.0) * bottom.minus(top).metres() * footing.count() / slab.count()
        : 0;
  }
}
