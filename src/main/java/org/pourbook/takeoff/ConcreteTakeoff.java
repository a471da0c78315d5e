package org.pourbook.takeoff;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Placing;
import org.pourbook.job.Pour;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingValue;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.ConcreteOrder;

/** Concrete by section, pour and mix, its allowance, bags and fiber (CON-1 … CON-9, CON-11). */
final class ConcreteTakeoff {

  static final String BAG_SIZE = "80 lb";

  private final Job job;
  private final Working working;
  private final List<Poured> rows;
  private final double netM3;
  private final Part part = new Part();

  private ConcreteTakeoff(Job job) {
    this.job = job;
    this.working = new Working(job.units());
    this.rows =
        job.sections().stream()
            .flatMap(section -> SectionConcrete.of(job, section).stream())
            .toList();
    this.netM3 = rows.stream().mapToDouble(Poured::m3).sum();
  }

  /** Returns the concrete of a job. */
  static Part of(Job job) {
    ConcreteTakeoff takeoff = new ConcreteTakeoff(job);
    for (Pour pour : job.pours()) {
      takeoff.pour(pour);
    }
    job.sections().forEach(section -> MeasuredOrder.add(takeoff.part, job, section));
    return takeoff.part;
  }

  private void pour(Pour pour) {
    List<Poured> poured =
        rows.stream().filter(row -> row.section().pour() == pour.number()).toList();
    if (poured.isEmpty()) {
      return;
    }
    Map<String, Double> plan = byMix(poured, false);
    Map<String, Double> allowed = byMix(poured, true);
    double allowedM3 = allowed.values().stream().mapToDouble(Double::doubleValue).sum();
    boolean pumped = pour.placing() == Placing.PUMP;
    boolean bagged =
        !pumped && ConcreteOrder.isBagged(allowedM3, job.practice().number(Setting.BAGGED_UP_TO));
    poured.forEach(row -> part.add(quantity(row, bagged)));
    String pumpMix = mostOf(plan);
    for (Map.Entry<String, Double> mix : plan.entrySet()) {
      double lossM3 =
          pumped && mix.getKey().equals(pumpMix) ? job.practice().number(Setting.PUMP_LOSS) : 0;
      double all = allowed.getOrDefault(mix.getKey(), 0.0) + lossM3;
      part.add(new ConcreteNeed(pour.number(), mix.getKey(), mix.getValue(), all, lossM3, bagged));
      if (lossM3 > 0) {
        part.add(pumpLoss(pour, mix.getKey(), lossM3));
      }
      if (bagged) {
        part.add(bags(pour, all));
      }
    }
    FiberTakeoff.add(part, job, pour, poured, this::allowancePercent);
  }

  private Map<String, Double> byMix(List<Poured> poured, boolean withAllowance) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (Poured row : poured) {
      double factor = withAllowance ? 1 + allowancePercent(row) / 100 : 1;
      sums.merge(row.section().mix(), row.m3() * factor, Double::sum);
    }
    return sums;
  }

  private static String mostOf(Map<String, Double> byMix) {
    return byMix.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse("");
  }

  /**
   * The allowance of a row: by depth checks, else its section's own, else a pier's, else the job's
   * (CON-6).
   */
  private double allowancePercent(Poured row) {
    Section section = row.section();
    if (row.allowancePercent().isPresent()) {
      return row.allowancePercent().getAsDouble();
    }
    if (section.wastePercent().isPresent()) {
      return section.wastePercent().getAsDouble();
    }
    if (section.kind() == Kind.PIER) {
      return job.practice().number(Setting.WASTE_ALLOWANCE_PIER);
    }
    SettingValue written = job.practice().value(Setting.WASTE_ALLOWANCE);
    return written.isByRule() ? ConcreteOrder.wastePercent(netM3) : written.number();
  }

  private Quantity quantity(Poured row, boolean bagged) {
    Section section = row.section();
    MaterialKey key =
        bagged ? Material.BAGGED_CONCRETE.of(BAG_SIZE) : Material.CONCRETE.of(section.mix());
    return concrete(
        section.code(),
        row.what(),
        row.worked(),
        row.working(),
        row.rule(),
        key,
        section.pour(),
        allowancePercent(row));
  }

  private Quantity pumpLoss(Pour pour, String mix, double lossM3) {
    String how = "pour " + pour.number() + ", once a pour";
    MaterialKey key = Material.CONCRETE.of(mix);
    return concrete("", "pump loss", new Worked.Laid(lossM3), how, "CON-7", key, pour.number(), 0);
  }

  private Quantity concrete(
      String section,
      String what,
      Worked worked,
      String how,
      String rule,
      MaterialKey key,
      int pour,
      double allowance) {
    Unit unit = working.volumeUnit();
    double m3 = worked.value();
    return new Quantity(
            section,
            what,
            unit.fromBase(m3),
            unit,
            how + " = " + working.volume(m3),
            rule,
            Optional.of(key),
            pour,
            OptionalDouble.of(allowance))
        .by(worked);
  }

  private Quantity bags(Pour pour, double allowedM3) {
    int bags = ConcreteOrder.bags(allowedM3);
    return Quantity.told(
        "",
        "bags of " + BAG_SIZE,
        bags,
        Unit.EACH,
        "⌈" + working.amount(allowedM3, Unit.FT3) + " ÷ 0.60 ft3⌉ = " + bags,
        "CON-9",
        pour.number());
  }
}
