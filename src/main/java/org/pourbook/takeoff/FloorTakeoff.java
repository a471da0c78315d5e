package org.pourbook.takeoff;

import org.pourbook.job.Finish;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.Finishing;

/** Plan areas, finishing by finish, and curing of floors (CON-1, FIN-1). */
final class FloorTakeoff {

  private static final String PLAN_AREA = "plan area";

  /** A floor that is all recess has no top of its own, but for rounding [m2]. */
  private static final double NONE_M2 = 1e-9;

  private final Job job;
  private final Working working;
  private final boolean laborPriced;
  private final Part part = new Part();

  private FloorTakeoff(Job job, OnOffer onOffer) {
    this.job = job;
    this.working = new Working(job.units());
    this.laborPriced = onOffer.has(Material.FINISHING_LABOR.of(""));
  }

  /** Returns the floors of a job. */
  static Part of(Job job, OnOffer onOffer) {
    FloorTakeoff takeoff = new FloorTakeoff(job, onOffer);
    job.sections().stream().filter(s -> s.kind().isFloor()).forEach(takeoff::add);
    return takeoff.part;
  }

  private void add(Section section) {
    int times = job.timesOf(section);
    Worked own = Floors.counted(job, section, Floors.ownArea(job, section));
    double areaM2 = own.value();
    if (areaM2 < NONE_M2) {
      return;
    }
    Worked asTold = new Worked.Other(section.code(), PLAN_AREA, areaM2);
    double recessesM2 = Floors.recessesM2(job, section);
    String how =
        recessesM2 > 0
            ? "(" + working.plan(section) + " − " + working.area(recessesM2) + " recesses)"
            : working.plan(section);
    String area = working.area(areaM2);
    told(section, PLAN_AREA, own, how + working.times(times) + " = " + area, "CON-1");
    if (section.finish() != Finish.NONE) {
      String what = section.finish().label() + " finish";
      told(section, what, asTold, how + working.times(times) + " = " + area, "FIN-1");
      if (laborPriced) {
        labor(section, asTold);
      }
    }
    curing(section, asTold);
  }

  private void curing(Section section, Worked area) {
    Worked curing = Finishing.curingCompound(area);
    Unit unit = Material.CURING_COMPOUND.unit(job.units());
    part.add(
        Quantity.of(
                section.code(),
                "curing compound",
                unit.fromBase(curing.value()),
                unit,
                working.area(area.value())
                    + " ÷ "
                    + perCuringUnit(unit)
                    + " = "
                    + working.amount(curing.value(), unit),
                "FIN-1",
                Material.CURING_COMPOUND.of(""),
                section.pour())
            .by(curing));
  }

  private String perCuringUnit(Unit unit) {
    double m2 = unit.toBase(1) / Finishing.curingCompound(Worked.of(1)).value();
    return working.area(m2) + "/" + unit.label();
  }

  private void labor(Section section, Worked area) {
    double areaM2 = area.value();
    Worked worked = Finishing.hours(area);
    double hours = worked.value();
    part.add(
        Quantity.of(
                section.code(),
                "finishing labor",
                hours,
                Unit.HOUR,
                working.area(areaM2)
                    + " ÷ "
                    + working.area(areaM2 / hours)
                    + "/hour = "
                    + working.amount(hours, Unit.HOUR),
                "FIN-1",
                Material.FINISHING_LABOR.of(""),
                section.pour())
            .by(worked));
  }

  private void told(Section section, String what, Worked area, String how, String rule) {
    Unit unit = working.areaUnit();
    part.add(
        Quantity.told(
                section.code(), what, unit.fromBase(area.value()), unit, how, rule, section.pour())
            .by(area));
  }
}
