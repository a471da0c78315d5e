package org.pourbook.takeoff;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.pourbook.job.Job;
import org.pourbook.job.Pour;
import org.pourbook.job.Setting;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.ConcreteOrder;

/** Fiber of a pour, by dose (CON-11). */
final class FiberTakeoff {

  private FiberTakeoff() {}

  /**
   * Adds the fiber of a pour: each dose × the volume of the sections that have it, with their
   * allowance, rounded up to the job's order step.
   */
  static void add(
      Part part,
      Job job,
      Pour pour,
      List<Poured> poured,
      ToDoubleFunction<Poured> allowancePercent) {
    Map<Double, Double> byDose = new TreeMap<>();
    for (Poured row : poured) {
      row.section()
          .fiberKgPerM3()
          .ifPresent(
              dose -> {
                double allowed = row.m3() * (1 + allowancePercent.applyAsDouble(row) / 100);
                byDose.merge(dose, allowed, Double::sum);
              });
    }
    byDose.forEach((dose, allowedM3) -> part.add(fiber(job, pour, dose, allowedM3)));
  }

  private static Quantity fiber(Job job, Pour pour, double doseKgPerM3, double allowedM3) {
    Working working = new Working(job.units());
    double orderedM3 =
        ConcreteOrder.orderedM3(allowedM3, job.practice().number(Setting.ORDER_STEP));
    double kg = ConcreteOrder.fiberKg(doseKgPerM3, orderedM3);
    Unit unit = Material.FIBER.unit(job.units());
    Unit volume = working.volumeUnit();
    String dose = Working.number(unit.fromBase(doseKgPerM3 * volume.toBase(1)));
    return Quantity.of(
        "",
        "fiber",
        unit.fromBase(kg),
        unit,
        dose
            + " "
            + unit.label()
            + "/"
            + volume.label()
            + " × "
            + working.volume(orderedM3)
            + " = "
            + working.amount(kg, unit),
        "CON-11",
        Material.FIBER.of(""),
        pour.number());
  }
}
