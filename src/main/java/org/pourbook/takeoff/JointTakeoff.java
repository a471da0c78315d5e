package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.ControlJoints;

/** Control joints, what seals them, and isolation joints (JOINT-1 … JOINT-4). */
final class JointTakeoff {

  private final Job job;
  private final Working working;
  private final Part part = new Part();

  private JointTakeoff(Job job) {
    this.job = job;
    this.working = new Working(job.units());
  }

  /** Returns the control and isolation joints of a job. */
  static Part of(Job job) {
    JointTakeoff takeoff = new JointTakeoff(job);
    for (Section section : job.sections()) {
      if (section.kind().isFloor() && !section.jointSpacing().none()) {
        takeoff.control(section);
      }
    }
    for (Joint joint : job.joints()) {
      if (joint.kind() == JointKind.ISOLATION) {
        takeoff.isolation(joint);
      }
    }
    return takeoff.part;
  }

  private void control(Section section) {
    FloorJoints found = FloorJoints.of(job, section);
    if (!found.cuts().isEmpty()) {
      cut(section, found.cuts());
    }
    JointPanels.add(part, job, section, found.panels(), found.largest());
  }

  private void cut(Section section, List<JointCut> cuts) {
    int times = job.timesOf(section);
    Length depth = ControlJoints.depth(section.thickness());
    int number = 1;
    for (JointCut cut : cuts) {
      String note = cut.place() + (times == 1 ? "" : working.times(times));
      part.add(
          new JointLine(
              section.code(),
              Integer.toString(number++),
              cut.what(),
              cut.length(),
              Optional.of(depth),
              0,
              "",
              note.strip()));
    }
    double lengthM = cuts.stream().mapToDouble(cut -> cut.length().metres()).sum() * times;
    String how = JointCut.working(cuts, working) + working.times(times);
    Unit unit = Material.SAW_CUTTING.unit(job.units());
    buy(
        section.code(),
        "control joints, " + working.small(depth) + " deep",
        Material.SAW_CUTTING.of(""),
        lengthM,
        unit,
        how,
        "JOINT-1",
        section.pour());
    if (job.practice().isYes(Setting.SEAL_JOINTS)) {
      seal(section, lengthM);
    }
  }

  private void seal(Section section, double lengthM) {
    buy(
        section.code(),
        "joint sealant",
        Material.JOINT_SEALANT.of(""),
        ControlJoints.sealantM3(lengthM),
        Material.JOINT_SEALANT.unit(job.units()),
        working.run(lengthM) + " × 1/4\" × 1/2\"",
        "JOINT-3",
        section.pour());
    buy(
        section.code(),
        "backer rod",
        Material.BACKER_ROD.of(""),
        lengthM,
        Material.BACKER_ROD.unit(job.units()),
        "along the joints",
        "JOINT-3",
        section.pour());
  }

  private void isolation(Joint joint) {
    Optional<Section> section = joint.section().map(job::section);
    int times = section.map(job::timesOf).orElse(1);
    Length depth = joint.fillerDepth().orElseGet(() -> thickness(section));
    Length thickness = ControlJoints.fillerThickness();
    String size = size(thickness) + " x " + size(depth);
    part.add(
        new JointLine(
            section.map(Section::code).orElse(""),
            joint.code(),
            JointKind.ISOLATION.label(),
            joint.length(),
            Optional.of(depth),
            0,
            "",
            working.times(times).strip()));
    buy(
        joint.code(),
        "joint filler " + size,
        Material.JOINT_FILLER.of(size),
        joint.length().metres() * times,
        Material.JOINT_FILLER.unit(job.units()),
        working.length(joint.length()) + working.times(times),
        "JOINT-4",
        section.map(Section::pour).orElse(job.pours().get(0).number()));
  }

  /** Thickness of the joint's section, else of the job's thickest floor. */
  private Length thickness(Optional<Section> section) {
    return section
        .map(Section::thickness)
        .orElseGet(
            () ->
                job.sections().stream()
                    .filter(floor -> floor.kind().isFloor())
                    .map(Section::thickness)
                    .reduce(Length.ofInches(4), Length::max));
  }

  /** A trade size: inches without their mark; whole millimetres in a metric job. */
  private String size(Length length) {
    return job.units().isMetric()
        ? Long.toString(Math.round(length.millimetres()))
        : LengthFormat.inches(length).replace("\"", "");
  }

  private void buy(
      String of,
      String what,
      MaterialKey key,
      double base,
      Unit unit,
      String how,
      String rule,
      int pour) {
    part.add(
        Quantity.of(
            of,
            what,
            unit.fromBase(base),
            unit,
            how + " = " + working.amount(base, unit),
            rule,
            key,
            pour));
  }
}
