package org.pourbook.book.out;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.buy.Line;
import org.pourbook.buy.Price;
import org.pourbook.desk.Estimate;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.TakeOff;

/** The chain of a Materials row: Takeoff → Net → Needed → Packs → Amount. */
final class MaterialFormulas {

  private final Estimate estimate;
  private final TakeoffSheet takeoff;
  private final Map<String, Job> jobs = new HashMap<>();

  MaterialFormulas(Estimate estimate, TakeoffSheet takeoff) {
    this.estimate = estimate;
    this.takeoff = takeoff;
    for (TakeOff one : estimate.takeOffs()) {
      jobs.put(one.job().code(), one.job());
    }
  }

  Cell net(At<Line> at) {
    OptionalDouble net = at.record().net();
    Optional<Span> rows = takeoff.rowsOf(Need.of(at.record()));
    if (net.isEmpty() || rows.isEmpty()) {
      return Cell.of(net);
    }
    return Cell.live(
        "SUM(" + takeoff.amounts(rows.get()) + ")", takeoff.sum(rows.get()), net.getAsDouble());
  }

  Cell needed(At<Line> at) {
    Line line = at.record();
    if (line.net().isEmpty() || line.allowancePercent().isEmpty()) {
      return Cell.of(line.needed());
    }
    double byFormula = line.net().getAsDouble() * (1 + line.allowancePercent().getAsDouble() / 100);
    return Cell.live(
        at.cell(MaterialsSheet.NET)
            + "*(1+"
            + at.cell(MaterialsSheet.ALLOWANCE)
            + "/100)"
            + takeoff
                .rowsOf(Need.of(line))
                .flatMap(takeoff::ownWaste)
                .map(waste -> "+" + waste)
                .orElse(""),
        byFormula,
        line.needed());
  }

  /** Returns the least step of an order in order units: whole packs, of concrete its order step. */
  double step(Line line) {
    Job job = jobs.get(line.job());
    if (job == null || !MaterialsSheet.isOf(line, Material.CONCRETE)) {
      return 1;
    }
    double stepM3 =
        line.price()
            .map(Price::supplier)
            .flatMap(estimate.batch().prices()::supplier)
            .map(supplier -> supplier.orderStepM3())
            .filter(OptionalDouble::isPresent)
            .map(OptionalDouble::getAsDouble)
            .orElse(job.practice().number(Setting.ORDER_STEP));
    double step = Unit.named(line.orderUnit()).map(unit -> unit.fromBase(stepM3)).orElse(stepM3);
    return BigDecimal.valueOf(step).setScale(9, RoundingMode.HALF_UP).doubleValue();
  }

  Cell packs(At<Line> at) {
    Line line = at.record();
    double step = step(line);
    double steps = roundedUp(line.needed() / line.packHolds() / step);
    String formula =
        "ROUNDUP(ROUND("
            + at.cell(MaterialsSheet.NEEDED)
            + "/"
            + at.cell(MaterialsSheet.HOLDS)
            + "/"
            + at.cell(MaterialsSheet.STEP)
            + ",9),0)*"
            + at.cell(MaterialsSheet.STEP);
    return Cell.live(formula, steps * step, line.packs().doubleValue());
  }

  /**
   * Returns a quotient rounded up to a whole number as the formula does it: to 9 decimals first.
   */
  private static double roundedUp(double quotient) {
    return BigDecimal.valueOf(quotient)
        .setScale(9, RoundingMode.HALF_UP)
        .setScale(0, RoundingMode.CEILING)
        .doubleValue();
  }

  Cell amount(At<Line> at) {
    Line line = at.record();
    double byFormula =
        line.price()
            .map(price -> price.price().multiply(line.packs()))
            .orElse(BigDecimal.ZERO)
            .setScale(2, RoundingMode.HALF_UP)
            .doubleValue();
    return Cell.live(
        "ROUND(" + at.cell(MaterialsSheet.PACKS) + "*" + at.cell(MaterialsSheet.PRICE) + ",2)",
        byFormula,
        MaterialsSheet.amount(line).amount().doubleValue());
  }

  /** Packs that were typed may hold less than is needed. */
  static Cell enough(At<Line> at) {
    String formula =
        "IF(ROUND("
            + at.cell(MaterialsSheet.PACKS)
            + "*"
            + at.cell(MaterialsSheet.HOLDS)
            + "-"
            + at.cell(MaterialsSheet.NEEDED)
            + ",6)<0,0,1)";
    return Cell.formula(formula, isEnough(at.record()) ? 1 : 0);
  }

  static boolean isEnough(Line line) {
    return Math.round((line.packs().doubleValue() * line.packHolds() - line.needed()) * 1e6) >= 0;
  }

  /** Returns whether the packs follow by formulas from Net and Allowance %. */
  Cell live(At<Line> at) {
    return Cell.ofYesNo(needed(at) instanceof Cell.Formula && packs(at) instanceof Cell.Formula);
  }

  /** Returns a link to the Takeoff rows that a row comes from. */
  Cell why(At<Line> at) {
    return takeoff
        .rowsOf(Need.of(at.record()))
        .map(
            rows ->
                Cell.formula(
                    "HYPERLINK(\"#" + takeoff.place(rows) + "\",\"" + whyText(rows) + "\")",
                    whyText(rows)))
        .orElse(Cell.BLANK);
  }

  private static String whyText(Span rows) {
    return rows.size() == 1
        ? "Takeoff " + rows.first()
        : "Takeoff " + rows.first() + "–" + rows.last();
  }
}
