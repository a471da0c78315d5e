package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.BarMat;
import org.pourbook.job.Joint;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.BarMark.BarShape;
import org.pourbook.takeoff.BarsOf.Role;
import org.pourbook.takeoff.rule.BarBends;
import org.pourbook.takeoff.rule.BarCaps;
import org.pourbook.takeoff.rule.Dowels;
import org.pourbook.takeoff.rule.Dowels.Across;
import org.pourbook.takeoff.rule.StepTieBars;
import org.pourbook.takeoff.rule.TieWire;

/** Dowels, tie bars and step ties across a written joint (DOW-1, BAR-5). */
final class JointSteel {
  private final SteelJob steel;
  private final Joint joint;
  private final Section section;
  private final int times;
  private final BarsOf bars;

  JointSteel(SteelJob steel, Joint joint) {
    this.steel = steel;
    this.joint = joint;
    this.section = sectionOf(steel, joint);
    this.times = joint.section().isPresent() ? steel.job().timesOf(section) : 1;
    this.bars = new BarsOf(steel, joint.code(), section.pour(), times);
  }

  /** A joint without a section is taken to lie on the job's first floor. */
  private static Section sectionOf(SteelJob steel, Joint joint) {
    List<Section> all = steel.job().sections();
    return joint
        .section()
        .map(steel.job()::section)
        .orElseGet(
            () -> all.stream().filter(s -> s.kind().isFloor()).findFirst().orElse(all.get(0)));
  }

  void add() {
    switch (joint.kind()) {
      case DOWEL -> dowels();
      case TIE -> ties();
      case STEP -> steps();
      case ISOLATION -> throw new IllegalArgumentException("nothing crosses an isolation joint");
    }
    bars.finish();
  }

  private void dowels() {
    Across dowel = AcrossJoint.dowel(joint, Dowels.byThickness(section.thickness()));
    int count = Dowels.across(joint.length(), dowel.spacing());
    String working = worked(dowel.spacing());
    String size = AcrossJoint.dowelSize(dowel);
    bars.counted("dowels", Material.DOWEL, size, count, working, "DOW-1");
    String sleeves = count + " dowels, one each";
    bars.counted(
        "dowel sleeves", Material.DOWEL_SLEEVE, dowel.diameterName(), count, sleeves, "DOW-1");
    dowelCautions();
    Length half = dowel.length().dividedBy(2);
    String text = size + " @ " + steel.small(dowel.spacing());
    across(text, dowel, count, joint.embedment().orElse(half));
  }

  private void dowelCautions() {
    boolean thin = !Dowels.isDowelled(section.thickness());
    if (thin) {
      String says =
          "Dowels in a slab of " + steel.small(section.thickness()) + ": under 5\" it is tied.";
      caution(says, "DOW-1, ACI 302.1R (from memory)");
    }
    if (!AcrossJoint.isWritten(joint)) {
      String says = "Dowels by a table for paving" + (thin ? ", thicker than this slab" : "");
      caution(says + ": let the designer confirm them.", "DOW-1, UFC 3-260-02 Table 12-8");
    }
  }

  private void ties() {
    Across tie = tie(Dowels.usualTie());
    BarSize bar = bar().orElse(usualBar());
    int count = Dowels.across(joint.length(), tie.spacing());
    straightTies(bar, tie, count);
  }

  private void straightTies(BarSize bar, Across tie, int count) {
    List<Runs> runs = List.of(new Runs(tie.length(), count));
    Role role = new Role("tie bars", "DOW-1", "across the joint");
    bars.straight(role, bar, runs, lap(bar));
    String text = bar + " x " + steel.small(tie.length()) + " @ " + steel.small(tie.spacing());
    Length embedment = joint.embedment().orElse(Dowels.tieEmbedment(bar.diameter()));
    across(
        text,
        new Across(bar.designation(), bar.diameter(), tie.length(), tie.spacing()),
        count,
        embedment);
    if (!AcrossJoint.isWritten(joint)) {
      String says = "Tie bars not written in full: " + text + " taken.";
      caution(says, "DOW-1");
    }
  }

  private Across tie(Across usual) {
    return new Across(
        usual.diameterName(),
        usual.diameter(),
        joint.barLength().orElse(usual.length()),
        joint.spacing().orElse(usual.spacing()));
  }

  private void steps() {
    BarSize bar = bar().or(() -> matBar().map(Given::bar)).orElse(usualBar());
    Length spacing =
        joint.spacing().or(() -> matBar().map(Given::spacing)).orElse(Dowels.usualTie().spacing());
    Length levels = levels();
    Length lap = lap(bar);
    if (!StepTieBars.isBent(levels, bar)) {
      String says = "A step of " + steel.small(levels) + " is too low to bend " + bar;
      caution(says + ": straight tie bars taken.", "BAR-5");
      Across usual = new Across(bar.designation(), bar.diameter(), lap.times(2), spacing);
      straightTies(bar, tie(usual), Dowels.across(joint.length(), spacing));
      return;
    }
    int count = StepTieBars.along(joint.length(), spacing);
    Length leg = leg(bar, levels, lap);
    Length embedment = joint.embedment().orElse(Dowels.tieEmbedment(bar.diameter()));
    Length upper = joint.drilled() ? embedment : leg;
    List<Length> legs = List.of(upper, StepTieBars.riser(levels, bar), leg);
    bars.bent(new Role("step ties", "BAR-5", "ties of the step"), bar, BarShape.STEP, count, legs);
    bars.tie(TieWire.atLaps((joint.drilled() ? 1L : 2L) * count));
    String text = bar + " step ties @ " + steel.small(spacing);
    across(text, new Across(bar.designation(), bar.diameter(), leg, spacing), count, embedment);
  }

  /** A leg is a lap; where the bar length is written, half of what the riser leaves. */
  private Length leg(BarSize bar, Length levels, Length lap) {
    if (joint.barLength().isEmpty()) {
      return lap;
    }
    Length bends = BarBends.deduction(bar).times(2);
    Length riser = StepTieBars.riser(levels, bar);
    Length leg = joint.barLength().get().plus(bends).minus(riser).dividedBy(2);
    if (leg.isLessThan(lap)) {
      String says = "Legs of " + steel.small(leg) + " are under the lap of " + steel.small(lap);
      caution(says + (leg.isPositive() ? "." : ": lapped legs taken."), "BAR-5");
    }
    return leg.isPositive() ? leg : lap;
  }

  private Length levels() {
    if (joint.drop().isPositive() || section.kind() != Kind.RECESS) {
      return joint.drop();
    }
    return Steps.levels(steel, parent(), section);
  }

  private Section parent() {
    return section.partOf().map(steel.job()::section).orElse(section);
  }

  private record Given(BarSize bar, Length spacing) {}

  /** The bars of the mat that meet the joint's side: across Length at L1 and L2. */
  private Optional<Given> matBar() {
    Optional<BarMat> mat = parent().bars().or(section::bars);
    boolean across = joint.side().map(side -> side.startsWith("L")).orElse(false);
    return mat.map(
        m ->
            across
                ? new Given(m.across(), m.acrossSpacing())
                : new Given(m.along(), m.alongSpacing()));
  }

  private Optional<BarSize> bar() {
    Optional<BarSize> named = joint.bar().flatMap(BarSize::named);
    if (joint.bar().isPresent() && named.isEmpty()) {
      caution("\"" + joint.bar().get() + "\" is no bar size: another taken.", "DOW-1");
    }
    return named;
  }

  private static BarSize usualBar() {
    return BarSize.named(Dowels.usualTie().diameterName()).orElseThrow();
  }

  private Length lap(BarSize bar) {
    return steel.laps().of(bar, section.mix(), Length.ZERO);
  }

  private void across(String text, Across bar, int count, Length embedment) {
    String how = "cast in";
    if (joint.drilled()) {
      new DrilledHoles(steel, joint.code(), section.pour(), times).add(bar, count, embedment);
      how =
          "drilled "
              + steel.small(embedment)
              + " deep, hole "
              + steel.small(Dowels.hole(bar.diameter()));
    } else if (!isPouredWithParent()) {
      String working = count + " bars left standing between the pours";
      bars.counted("bar caps", Material.BAR_CAP, "", BarCaps.over(count), working, "BAR-9");
    }
    steel
        .part()
        .add(
            new JointLine(
                joint.section().orElse(""),
                joint.code(),
                joint.kind().label(),
                joint.length(),
                Optional.empty(),
                count,
                text,
                how));
  }

  private boolean isPouredWithParent() {
    return section.kind() == Kind.RECESS && parent().pour() == section.pour();
  }

  private String worked(Length spacing) {
    return steel.show(joint.length()) + " at " + steel.small(spacing);
  }

  private void caution(String says, String rule) {
    steel.caution(joint.code(), says, rule);
  }
}
