package org.pourbook.takeoff;

import java.util.Set;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.CompactedBase;

/** What is dug out for concrete below the slab's underside, listed as work (BASE-2). */
final class DiggingTakeoff {

  /** Named parts of the concrete that lie in ground dug out for them. */
  private static final Set<String> DUG =
      Set.of(
          SectionConcrete.EDGE, Kind.THICKENING.label(), Kind.FOOTING.label(), Kind.PIER.label());

  private final Working working;
  private final Part part = new Part();

  private DiggingTakeoff(Job job) {
    this.working = new Working(job.units());
  }

  /** Returns the digging of a job. */
  static Part of(Job job) {
    DiggingTakeoff takeoff = new DiggingTakeoff(job);
    for (Section section : job.sections()) {
      SectionConcrete.of(job, section).stream()
          .filter(row -> DUG.contains(row.what()))
          .forEach(takeoff::add);
      if (section.kind() == Kind.RECESS) {
        takeoff.recess(job, section);
      }
    }
    return takeoff.part;
  }

  private void recess(Job job, Section section) {
    Length lower = Floors.lowerBy(job, section);
    int times = job.timesOf(section);
    add(
        new Poured(
            section,
            "recess",
            Figures.of(section).areaM2() * lower.metres() * times,
            working.plan(section) + " × " + working.small(lower) + working.times(times),
            "BASE-2"));
  }

  private void add(Poured row) {
    if (row.m3() > 0) {
      double looseM3 = CompactedBase.looseM3(row.m3());
      String bank = working.volume(row.m3());
      told(row, "bank", row.m3(), row.working() + " = " + bank);
      told(row, "loose", looseM3, bank + " × 1.25 = " + working.volume(looseM3));
    }
  }

  private void told(Poured row, String state, double m3, String how) {
    Unit unit = working.volumeUnit();
    part.add(
        Quantity.told(
            row.section().code(),
            "digging, " + row.what() + ", " + state,
            unit.fromBase(m3),
            unit,
            how,
            "BASE-2",
            row.section().pour()));
  }
}
