package org.pourbook.takeoff;

import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;

/** Bars, mesh, supports, ties, dowels and caps of a job. */
public final class SteelTakeoff {

  private static final Length GROUND_COVER = Length.ofInches(3);
  private static final Length FORMED_COVER = Length.ofInches(3, 2);

  private SteelTakeoff() {}

  /** Returns the steel of a job: quantities, pieces to cut, bar marks, joint lines, cautions. */
  public static Part of(Job job, OnOffer onOffer) {
    SteelJob steel = SteelJob.of(job, onOffer);
    job.sections().forEach(section -> section(steel, section));
    if (job.sections().isEmpty()) {
      return steel.part();
    }
    for (Joint joint : job.joints()) {
      JointSteel.add(steel, joint);
    }
    cover(steel);
    return steel.part();
  }

  private static void section(SteelJob steel, Section section) {
    int times = steel.job().timesOf(section);
    BarsOf bars = new BarsOf(steel, section.code(), section.pour(), times);
    section.bars().ifPresent(mat -> new MatSteel(steel, section, mat, bars).add());
    section.edgeBars().ifPresent(run -> new EdgeSteel(steel, section, run, bars).add());
    if (section.kind() == Kind.RECESS) {
      new StepTies(steel, section, bars).add();
    }
    section.mesh().ifPresent(style -> new MeshSteel(steel, section, style, bars).add());
    bars.finish();
  }

  private static void cover(SteelJob steel) {
    Length cover = steel.setting(Setting.EDGE_COVER);
    boolean barred = steel.job().sections().stream().anyMatch(s -> s.bars().isPresent());
    if (barred && cover.isLessThan(GROUND_COVER)) {
      String says =
          "Edge cover is "
              + steel.small(cover)
              + "; concrete cast against ground has "
              + steel.small(GROUND_COVER)
              + ", against forms "
              + steel.small(FORMED_COVER)
              + " for #5 and smaller.";
      steel.caution("", says, "BAR-1, ACI 318-19 Table 20.5.1.3.1");
    }
  }
}
