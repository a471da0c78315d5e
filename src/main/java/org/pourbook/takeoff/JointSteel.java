package org.pourbook.takeoff;

import org.pourbook.job.Joint;
import org.pourbook.job.Section;
import org.pourbook.takeoff.rule.Dowels;
import org.pourbook.takeoff.rule.Dowels.Across;

/** Dowels and tie bars across a written joint (DOW-1). */
final class JointSteel {
  private final SteelJob steel;
  private final Joint joint;
  private final Section section;
  private final JointBars across;

  private JointSteel(JointBars across) {
    this.steel = across.steel;
    this.joint = across.joint;
    this.section = across.section;
    this.across = across;
  }

  /** Adds what crosses a joint; nothing crosses an isolation joint. */
  static void add(SteelJob steel, Joint joint) {
    JointBars across = new JointBars(steel, joint);
    JointSteel one = new JointSteel(across);
    switch (joint.kind()) {
      case DOWEL -> one.dowels();
      case TIE -> one.ties();
      case STEP -> new StepJoint(across).add();
      case ISOLATION -> {}
    }
    across.bars.finish();
  }

  private void dowels() {
    Across dowel = AcrossJoint.dowel(joint, Dowels.byThickness(section.thickness()));
    int count = Dowels.across(joint.length(), dowel.spacing());
    String working = steel.show(joint.length()) + " at " + steel.small(dowel.spacing());
    String size = AcrossJoint.dowelSize(dowel);
    String name = dowel.diameterName();
    BarsOf bars = across.bars;
    bars.counted("dowels", Material.DOWEL, size, count, working, "DOW-1");
    String each = count + " dowels, one each";
    bars.counted("dowel sleeves", Material.DOWEL_SLEEVE, name, count, each, "DOW-1");
    cautions();
    String text = size + " @ " + steel.small(dowel.spacing());
    across.across(text, dowel, count, joint.embedment().orElse(dowel.length().dividedBy(2)));
  }

  private void cautions() {
    boolean thin = !Dowels.isDowelled(section.thickness());
    if (thin) {
      String says =
          "Dowels in a slab of " + steel.small(section.thickness()) + ": one this thin is tied.";
      across.caution(says, "DOW-1, ACI 302.1R (from memory)");
    }
    if (!AcrossJoint.isWritten(joint)) {
      String says = "Dowels by a table for paving" + (thin ? ", thicker than this slab" : "");
      across.caution(says + ": let the designer confirm them.", "DOW-1, UFC 3-260-02 Table 12-8");
    }
  }

  private void ties() {
    Across usual = Dowels.usualTie();
    across.tieStraight(across.bar().orElse(JointBars.usualBar()), usual.length(), usual.spacing());
  }
}
