package org.pourbook.takeoff;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.outline.Figure;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.RetarderStrips;

/** Vapor retarder in lapped strips, and its tape (VR-1). */
final class RetarderTakeoff {

  private static final Length TURNED_UP = Length.ofInches(6);

  /** Taken where the price book has no roll of the kind. */
  private static final OnOffer.SheetSize USUAL_ROLL =
      new OnOffer.SheetSize(Length.ofFeet(100), Length.ofFeet(15));

  private final Job job;
  private final Working working;
  private final Length lap;
  private final MaterialKey key;
  private final List<OnOffer.SheetSize> rolls;
  private final Part part = new Part();

  private RetarderTakeoff(Job job, OnOffer onOffer) {
    this.job = job;
    this.working = new Working(job.units());
    this.lap = job.practice().length(Setting.RETARDER_LAP);
    this.key = Material.VAPOR_RETARDER.of(job.practice().text(Setting.RETARDER));
    List<OnOffer.SheetSize> offered =
        onOffer.sheets(key).stream()
            .filter(roll -> roll.width().isMoreThan(lap) && roll.length().isMoreThan(lap))
            .toList();
    this.rolls = offered.isEmpty() ? List.of(USUAL_ROLL) : offered;
  }

  /** Returns the retarder of a job. */
  static Part of(Job job, OnOffer onOffer) {
    RetarderTakeoff takeoff = new RetarderTakeoff(job, onOffer);
    List<Section> covered = job.sections().stream().filter(takeoff::isCovered).toList();
    if (!covered.isEmpty()) {
      OnOffer.SheetSize roll = takeoff.bestRoll(covered);
      covered.forEach(section -> takeoff.add(section, roll));
      covered.forEach(takeoff::banks);
    }
    return takeoff.part;
  }

  /** A recess lies under its parent's strips. */
  private boolean isCovered(Section section) {
    return section.kind() == Kind.SLAB && section.vaporRetarder();
  }

  /** The roll that leaves the least of whole rolls for all sections. */
  private OnOffer.SheetSize bestRoll(List<Section> sections) {
    return rolls.stream()
        .min(
            Comparator.comparingDouble(
                roll -> {
                  double netM2 =
                      sections.stream().mapToDouble(s -> bestStrips(s, roll).netM2()).sum();
                  double rollM2 = roll.length().metres() * roll.width().metres();
                  return Math.ceil(netM2 / rollM2 - 1e-9) * rollM2;
                }))
        .orElse(USUAL_ROLL);
  }

  private Strips bestStrips(Section section, OnOffer.SheetSize roll) {
    Strips along = strips(section, roll, true);
    Strips across = strips(section, roll, false);
    return across.netM2() < along.netM2() ? across : along;
  }

  /**
   * Strips of one section, all of its count.
   *
   * @param run of all strips, without end laps
   * @param sideLaps length of all laps beside each other
   */
  private record Strips(
      int count,
      Length run,
      Length sideLaps,
      int endLaps,
      Length lap,
      OnOffer.SheetSize roll,
      boolean along) {

    double netM2() {
      return run.plus(lap.times(endLaps)).metres() * roll.width().metres();
    }
  }

  private Strips strips(Section section, OnOffer.SheetSize roll, boolean along) {
    Covered covered = covered(section);
    Length across = along ? covered.alongY() : covered.alongX();
    int count = RetarderStrips.count(across, roll.width(), lap);
    Length each = along ? covered.alongX() : covered.alongY();
    Length run = each.times(count);
    Length sideLaps = each.times(count - 1L);
    if (section.shape() instanceof Shape.Outline) {
      Figure figure = Figures.of(section);
      run = StripCover.run(figure, along, roll.width(), lap);
      sideLaps = StripCover.sideLaps(figure, along, roll.width(), lap);
    }
    int times = job.timesOf(section);
    Length all = run.times(times);
    int endLaps = RetarderStrips.endLaps(all, roll.length(), lap);
    return new Strips(count, all, sideLaps.times(times), endLaps, lap, roll, along);
  }

  /** The extent that sheets cover, with what goes down banks and up walls. */
  private record Covered(Length alongX, Length alongY) {}

  private Covered covered(Section section) {
    Figure figure = Figures.of(section);
    if (section.shape() instanceof Shape.Round round) {
      Length more = more(section, figure.sides().get(0)).times(2);
      return new Covered(round.diameter().plus(more), round.diameter().plus(more));
    }
    Length x = Length.ofMetres(figure.extentXM());
    Length y = Length.ofMetres(figure.extentYM());
    if (section.shape() instanceof Shape.Rectangle) {
      for (FigureSide side : figure.sides()) {
        if (side.name().startsWith("W")) {
          x = x.plus(more(section, side));
        } else {
          y = y.plus(more(section, side));
        }
      }
    }
    return new Covered(x, y);
  }

  /** How much farther than the plan the sheet goes at a side. */
  private Length more(Section section, FigureSide side) {
    if (side.turnedDown()) {
      return EdgeBelow.of(section, job.practice())
          .map(
              below ->
                  Length.ofMetres(RetarderStrips.bankMoreM(below.depth().metres(), below.slope())))
          .orElse(Length.ZERO);
    }
    return side.existing() || job.joints().stream().anyMatch(joint -> isWall(joint, section, side))
        ? TURNED_UP
        : Length.ZERO;
  }

  private static boolean isWall(Joint joint, Section section, FigureSide side) {
    return joint.section().filter(section.code()::equals).isPresent()
        && joint.side().filter(side.name()::equals).isPresent()
        && (joint.kind() == JointKind.ISOLATION || joint.drilled());
  }

  private void add(Section section, OnOffer.SheetSize roll) {
    Strips strips = bestStrips(section, roll);
    int times = job.timesOf(section);
    String laid =
        section.shape() instanceof Shape.Outline
            ? strips.count() + " strips, " + working.run(strips.run().metres())
            : strips.count() * times
                + " × "
                + working.length(strips.run().dividedBy((long) strips.count() * times));
    String laps =
        strips.endLaps() == 0 ? "" : " + " + strips.endLaps() + " × " + working.small(lap) + " lap";
    String how = (laps.isEmpty() ? laid : "(" + laid + laps + ")") + " × ";
    Unit area = Material.VAPOR_RETARDER.unit(job.units());
    String direction = strips.along() ? ", along Length" : ", along Width";
    buy(
        section,
        "vapor retarder" + direction,
        key,
        strips.netM2(),
        area,
        how + working.length(roll.width()));
    tape(section, strips, times);
  }

  private void tape(Section section, Strips strips, int times) {
    double sideM = strips.sideLaps().metres();
    double endM = strips.endLaps() * strips.roll().width().metres();
    if (sideM + endM > 0) {
      buy(
          section,
          "seam tape",
          Material.SEAM_TAPE.of(""),
          sideM + endM,
          Material.SEAM_TAPE.unit(job.units()),
          "side laps "
              + working.run(sideM)
              + " + "
              + strips.endLaps()
              + " end laps × "
              + working.length(strips.roll().width())
              + (times > 1 ? ", all " + times : ""));
    }
  }

  /**
   * Sheet that goes down banks and up walls over the plan: at an outline's sides, whose strips are
   * as long as the outline, and at the inner sides of a lower recess.
   */
  private void banks(Section parent) {
    if (parent.shape() instanceof Shape.Outline) {
      outlineSides(parent);
    }
    double slope = job.practice().number(Setting.BASE_BANK_SLOPE);
    for (Section recess : job.partsOf(parent)) {
      if (recess.kind() == Kind.RECESS && Floors.lowerBy(job, recess).isPositive()) {
        Length lower = Floors.lowerBy(job, recess);
        double moreM = RetarderStrips.bankMoreM(lower.metres(), slope);
        double sidesM = Floors.innerSidesM(recess) * job.timesOf(recess);
        buy(
            recess,
            "vapor retarder down the bank",
            key,
            sidesM * moreM,
            Material.VAPOR_RETARDER.unit(job.units()),
            working.run(sidesM) + " × " + working.small(Length.ofMetres(moreM)) + " more");
      }
    }
  }

  private void outlineSides(Section section) {
    Map<Length, Double> sidesM = new TreeMap<>();
    for (FigureSide side : Figures.of(section).sides()) {
      Length more = more(section, side);
      if (more.isPositive()) {
        sidesM.merge(more, side.length().metres() * job.timesOf(section), Double::sum);
      }
    }
    sidesM.forEach(
        (more, runM) ->
            buy(
                section,
                "vapor retarder beyond the plan",
                key,
                runM * more.metres(),
                Material.VAPOR_RETARDER.unit(job.units()),
                working.run(runM) + " × " + working.small(more) + " more"));
  }

  private void buy(
      Section section, String what, MaterialKey material, double base, Unit unit, String how) {
    part.add(
        Quantity.of(
            section.code(),
            what,
            unit.fromBase(base),
            unit,
            how + " = " + working.amount(base, unit),
            "VR-1",
            material,
            section.pour()));
  }
}
