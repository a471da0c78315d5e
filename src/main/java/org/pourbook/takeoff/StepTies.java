package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.BarMat;
import org.pourbook.job.Job;
import org.pourbook.job.JointKind;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.BarMark.BarShape;
import org.pourbook.takeoff.BarsOf.Role;
import org.pourbook.takeoff.rule.BarCaps;
import org.pourbook.takeoff.rule.StepTieBars;
import org.pourbook.takeoff.rule.TieWire;

/** Bent bars on the inner sides of a recess, that tie it to its parent's mat (BAR-5). */
public final class StepTies {
  private final SteelJob steel;
  private final Section recess;
  private final BarsOf bars;

  StepTies(SteelJob steel, Section recess, BarsOf bars) {
    this.steel = steel;
    this.recess = recess;
    this.bars = bars;
  }

  void add() {
    Job job = steel.job();
    Section parent = job.section(recess.partOf().orElseThrow());
    if (parent.bars().isEmpty()) {
      return;
    }
    BarMat mat = parent.bars().get();
    Length levels = Steps.levels(job, parent, recess);
    boolean any = side(mat, levels, true) | side(mat, levels, false);
    if (any && recess.bars().isEmpty()) {
      String says = "The recess is tied to its parent's bars but has none of its own.";
      steel.caution(recess.code(), says, "BAR-5");
    }
    if (!any && recess.bars().isPresent() && runOn(mat, levels)) {
      String says = "The floor's bars run on below the recess; its own bars come besides.";
      steel.caution(recess.code(), says, "BAR-5");
    }
  }

  private static boolean runOn(BarMat mat, Length levels) {
    return !StepTieBars.isBent(levels, mat.along()) && !StepTieBars.isBent(levels, mat.across());
  }

  /** Adds the ties that continue the parent's bars of one direction; false where there are none. */
  private boolean side(BarMat mat, Length levels, boolean along) {
    BarSize bar = along ? mat.along() : mat.across();
    Length spacing = along ? mat.alongSpacing() : mat.acrossSpacing();
    if (!StepTieBars.isBent(levels, bar)) {
      return false;
    }
    int count = 0;
    for (FigureSide side : Figures.of(recess).sides()) {
      if (isTied(steel.job(), recess, side, along)) {
        count += StepTieBars.along(side.length(), spacing);
      }
    }
    if (along) {
      count += recess.formed().run().map(run -> StepTieBars.along(run, spacing)).orElse(0);
    }
    Length lap = steel.laps().of(bar, recess.mix(), Length.ZERO);
    Role role = new Role("step ties", "BAR-5", along ? "ties of sides W" : "ties of sides L");
    List<Length> legs = List.of(lap, StepTieBars.riser(levels, bar), lap);
    bars.bent(role, bar, BarShape.STEP, count, legs);
    bars.tie(TieWire.atLaps(2L * count));
    caps(count);
    return count > 0;
  }

  /** Bars along X meet the sides that run more along Y than along X, and the round one. */
  static boolean isMetBy(FigureSide side, boolean along) {
    double dx = Math.abs(side.x2M() - side.x1M());
    double dy = Math.abs(side.y2M() - side.y1M());
    return along == dy >= dx;
  }

  private static boolean isTied(Job job, Section recess, FigureSide side, boolean along) {
    return side.formed() && isMetBy(side, along) && !hasStepJoint(job, recess, side);
  }

  private static boolean hasStepJoint(Job job, Section recess, FigureSide side) {
    return job.joints().stream()
        .filter(joint -> joint.kind() == JointKind.STEP)
        .filter(joint -> joint.section().equals(Optional.of(recess.code())))
        .anyMatch(joint -> joint.side().equals(Optional.of(side.name())));
  }

  /** Returns how many ties stand along a side; 0 where it is no recess's or the bars run on. */
  public static int along(Job job, Section recess, FigureSide side) {
    if (recess.kind() != Kind.RECESS) {
      return 0;
    }
    Section parent = job.section(recess.partOf().orElseThrow());
    if (parent.bars().isEmpty()) {
      return 0;
    }
    BarMat mat = parent.bars().get();
    Length levels = Steps.levels(job, parent, recess);
    boolean along = isMetBy(side, true);
    return isTied(job, recess, side, along)
            && StepTieBars.isBent(levels, along ? mat.along() : mat.across())
        ? StepTieBars.along(side.length(), along ? mat.alongSpacing() : mat.acrossSpacing())
        : 0;
  }

  /** Ties stand out where the recess is poured before or after its parent. */
  private void caps(int count) {
    Section parent = steel.job().section(recess.partOf().orElseThrow());
    if (parent.pour() != recess.pour()) {
      String working = count + " ties left standing between the pours";
      bars.counted("bar caps", Material.BAR_CAP, "", BarCaps.over(count), working, "BAR-9");
    }
  }
}
