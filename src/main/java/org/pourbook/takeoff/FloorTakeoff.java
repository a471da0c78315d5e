package org.pourbook.takeoff;

import org.pourbook.job.Finish;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.Finishing;

/** Plan areas, finishing by finish, and curing of floors (CON-1, FIN-1). */
final class FloorTakeoff {

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
    double areaM2 = Floors.ownAreaM2(job, section) * times;
    double recessesM2 = Floors.recessesM2(job, section);
    String how =
        recessesM2 > 0
            ? "(" + working.plan(section) + " − " + working.area(recessesM2) + " recesses)"
            : working.plan(section);
    String area = working.area(areaM2);
    told(section, "plan area", areaM2, how + working.times(times) + " = " + area, "CON-1");
    if (section.finish() != Finish.NONE) {
      String what = section.finish().label() + " finish";
      told(section, what, areaM2, how + working.times(times) + " = " + area, "FIN-1");
      if (laborPriced) {
        labor(section, areaM2);
      }
    }
    double curingM3 = Finishing.curingCompoundM3(areaM2);
    Unit unit = Material.CURING_COMPOUND.unit(job.units());
    part.add(
        Quantity.of(
            section.code(),
            "curing compound",
            unit.fromBase(curingM3),
            unit,
            area + " ÷ " + perCuringUnit(unit) + " = " + working.amount(curingM3, unit),
            "FIN-1",
            Material.CURING_COMPOUND.of(""),
            section.pour()));
  }

  private String perCuringUnit(Unit unit) {
    double m2 = unit.toBase(1) / Finishing.curingCompoundM3(1);
    return working.area(m2) + "/" + unit.label();
  }

  private void labor(Section section, double areaM2) {
    double hours = Finishing.hours(areaM2);
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
            section.pour()));
  }

  private void told(Section section, String what, double areaM2, String how, String rule) {
    Unit unit = working.areaUnit();
    part.add(
        Quantity.told(
            section.code(), what, unit.fromBase(areaM2), unit, how, rule, section.pour()));
  }
}
