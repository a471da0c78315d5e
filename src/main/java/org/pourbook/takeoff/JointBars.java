package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Joint;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.BarsOf.Role;
import org.pourbook.takeoff.rule.BarCaps;
import org.pourbook.takeoff.rule.Dowels;
import org.pourbook.takeoff.rule.Dowels.Across;

/** What the bars of any joint share: where it lies, tie bars, holes or caps, its line. */
final class JointBars {
  final SteelJob steel;
  final Joint joint;
  final Section section;
  final BarsOf bars;
  private final int times;

  JointBars(SteelJob steel, Joint joint) {
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

  /** Returns the section that the joint's section is part of, else that section. */
  Section parent() {
    return section.partOf().map(steel.job()::section).orElse(section);
  }

  /** Returns the bar written for ties, if it is one. */
  Optional<BarSize> bar() {
    Optional<BarSize> named = joint.bar().flatMap(BarSize::named);
    if (joint.bar().isPresent() && named.isEmpty()) {
      caution("\"" + joint.bar().get() + "\" is no bar size: another taken.", "DOW-1");
    }
    return named;
  }

  static BarSize usualBar() {
    return BarSize.named(Dowels.usualTie().diameterName()).orElseThrow();
  }

  Length lap(BarSize bar) {
    return steel.laps().of(bar, section.mix(), Length.ZERO);
  }

  /**
   * Adds straight tie bars.
   *
   * @param length where none is written
   * @param spacing where none is written
   */
  void tieStraight(BarSize bar, Length length, Length spacing) {
    Length each = joint.barLength().orElse(length);
    Length apart = joint.spacing().orElse(spacing);
    int count = Dowels.across(joint.length(), apart);
    Role role = new Role("tie bars", "DOW-1", "across the joint");
    bars.straight(role, bar, List.of(new Runs(each, count)), lap(bar));
    String text = bar + " x " + steel.small(each) + " @ " + steel.small(apart);
    across(text, new Across(bar.designation(), bar.diameter(), each, apart), count);
    if (!AcrossJoint.isWritten(joint)) {
      caution("Tie bars not written in full: " + text + " taken.", "DOW-1");
    }
  }

  /** Returns how deep tie bars are drilled in. */
  Length tieEmbedment(Length diameter) {
    return joint.embedment().orElse(Dowels.tieEmbedment(diameter));
  }

  /** Adds what ties across the joint need besides, and its line. */
  void across(String text, Across tie, int count) {
    across(text, tie, count, tieEmbedment(tie.diameter()));
  }

  /** Adds what bars across the joint need besides, holes or caps, and its line. */
  void across(String text, Across bar, int count, Length embedment) {
    String how = "cast in";
    if (joint.drilled()) {
      new DrilledHoles(steel, joint.code(), section.pour(), times).add(bar, count, embedment);
      String hole = steel.small(Dowels.hole(bar.diameter()));
      how = "drilled " + steel.small(embedment) + " deep, hole " + hole;
    } else if (section.kind() != Kind.RECESS || parent().pour() != section.pour()) {
      String working = count + " bars left standing between the pours";
      bars.counted("bar caps", Material.BAR_CAP, "", BarCaps.over(count), working, "BAR-9");
    }
    String on = joint.section().orElse("");
    String kind = joint.kind().label();
    Optional<Length> depth = Optional.empty();
    steel
        .part()
        .add(new JointLine(on, joint.code(), kind, joint.length(), depth, count, text, how));
  }

  void caution(String says, String rule) {
    steel.caution(joint.code(), says, rule);
  }
}
