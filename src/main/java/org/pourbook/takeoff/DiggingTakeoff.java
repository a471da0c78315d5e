package org.pourbook.takeoff;

import java.util.Set;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.CompactedBase;

/** What is dug out for concrete below the slab's underside, listed as work (BASE-2). */
final class DiggingTakeoff {

  private static final String RULE = "BASE-2";

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
            Floors.counted(job, section, Floors.planArea(job, section).times(lower(job, section))),
            working.plan(section) + " × " + working.small(lower) + working.times(times),
            RULE));
  }

  /** How far a recess's underside lies below its parent's [m]. */
  private static Worked lower(Job job, Section recess) {
    return SectionFigure.DROP
        .of(recess, job.units())
        .plus(Floors.thickness(job, recess))
        .minus(Floors.thickness(job, Floors.parent(job, recess)));
  }

  private void add(Poured row) {
    if (row.m3() > 0) {
      String bank = working.volume(row.m3());
      Worked dug =
          row.rule().equals(RULE)
              ? row.worked()
              : new Worked.Other(row.section().code(), row.what(), row.m3());
      told(row, "bank", dug, row.working() + " = " + bank);
      Worked loose =
          CompactedBase.loose(new Worked.Other(row.section().code(), name(row, "bank"), row.m3()));
      told(row, "loose", loose, bank + " × 1.25 = " + working.volume(loose.value()));
    }
  }

  private static String name(Poured row, String state) {
    return "digging, " + row.what() + ", " + state;
  }

  private void told(Poured row, String state, Worked worked, String how) {
    Unit unit = working.volumeUnit();
    part.add(
        Quantity.told(
                row.section().code(),
                name(row, state),
                unit.fromBase(worked.value()),
                unit,
                how,
                RULE,
                row.section().pour())
            .by(worked));
  }
}
