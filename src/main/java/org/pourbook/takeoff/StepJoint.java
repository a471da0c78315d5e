package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.BarMat;
import org.pourbook.job.Joint;
import org.pourbook.job.Kind;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.BarMark.BarShape;
import org.pourbook.takeoff.BarsOf.Role;
import org.pourbook.takeoff.rule.BarBends;
import org.pourbook.takeoff.rule.Dowels;
import org.pourbook.takeoff.rule.Dowels.Across;
import org.pourbook.takeoff.rule.StepTieBars;
import org.pourbook.takeoff.rule.TieWire;

/** Bent ties at a written joint between two levels (BAR-5). */
final class StepJoint {
  private final SteelJob steel;
  private final Joint joint;
  private final JointBars across;

  StepJoint(JointBars across) {
    this.steel = across.steel;
    this.joint = across.joint;
    this.across = across;
  }

  /** Bars of the mat that meet the joint, or the usual ties. */
  private record Met(BarSize bar, Length spacing) {}

  void add() {
    Met met = met();
    BarSize bar = across.bar().orElse(met.bar());
    Length spacing = joint.spacing().orElse(met.spacing());
    Length levels = levels();
    if (StepTieBars.isBent(levels, bar)) {
      bent(bar, spacing, levels);
      return;
    }
    String says = "A step of " + steel.small(levels) + " is too low to bend " + bar;
    across.caution(says + ": straight tie bars taken.", "BAR-5");
    across.tieStraight(bar, across.lap(bar).times(2), spacing);
  }

  private void bent(BarSize bar, Length spacing, Length levels) {
    int count = StepTieBars.along(joint.length(), spacing);
    Length leg = leg(bar, levels);
    Length upper = joint.drilled() ? across.tieEmbedment(bar.diameter()) : leg;
    List<Length> legs = List.of(upper, StepTieBars.riser(levels, bar), leg);
    Role role = new Role("step ties", "BAR-5", "ties of the step");
    across.bars.bent(role, bar, BarShape.STEP, count, legs);
    across.bars.tie(TieWire.atLaps((joint.drilled() ? 1L : 2L) * count));
    String text = bar + " step ties @ " + steel.small(spacing);
    Length whole = legs.stream().reduce(Length.ZERO, Length::plus);
    across.across(text, new Across(bar.designation(), bar.diameter(), whole, spacing), count);
  }

  /** A leg is a lap; where the bar length is written, half of what the riser leaves. */
  private Length leg(BarSize bar, Length levels) {
    Length lap = across.lap(bar);
    if (joint.barLength().isEmpty()) {
      return lap;
    }
    Length bends = BarBends.deduction(bar).times(2);
    Length riser = StepTieBars.riser(levels, bar);
    Length leg = joint.barLength().get().plus(bends).minus(riser).dividedBy(2);
    if (leg.isLessThan(lap)) {
      String says = "Legs of " + steel.small(leg) + " are under the lap of " + steel.small(lap);
      across.caution(says + (leg.isPositive() ? "." : ": lapped legs taken."), "BAR-5");
    }
    return leg.isPositive() ? leg : lap;
  }

  private Length levels() {
    if (joint.drop().isPositive() || across.section.kind() != Kind.RECESS) {
      return joint.drop();
    }
    return Steps.levels(steel.job(), across.parent(), across.section);
  }

  /** The bars that meet the joint's side: those along X unless it runs more along X than Y. */
  private Met met() {
    Optional<BarMat> mat = across.parent().bars().or(across.section::bars);
    boolean acrossLength =
        Figures.of(across.section).sides().stream()
            .filter(side -> joint.side().equals(Optional.of(side.name())))
            .anyMatch(side -> !StepTies.isMetBy(side, true));
    return mat.map(
            m ->
                acrossLength
                    ? new Met(m.across(), m.acrossSpacing())
                    : new Met(m.along(), m.alongSpacing()))
        .orElse(new Met(JointBars.usualBar(), Dowels.usualTie().spacing()));
  }
}
