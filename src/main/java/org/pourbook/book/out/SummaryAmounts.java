package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.pourbook.buy.Line;
import org.pourbook.measure.BarSize;
import org.pourbook.takeoff.ConcreteNeed;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.PieceNeed;

/** The Summary's amounts of what is ordered, from Takeoff and Materials. */
final class SummaryAmounts {

  /** How the place that cut pieces go to ends where they are stakes. */
  private static final String CUT_STAKES = " stakes";

  private final TakeoffSheet takeoff;
  private final MaterialsSheet materials;

  SummaryAmounts(TakeoffSheet takeoff, MaterialsSheet materials) {
    this.takeoff = takeoff;
    this.materials = materials;
  }

  /** Plan volume of all pours, without what stays in a pump. */
  Cell net(At<SummarySheet.Row> at) {
    double m3 = 0;
    double lossM3 = 0;
    for (ConcreteNeed need : at.record().takeOff().concrete()) {
      m3 += need.planM3();
      lossM3 += need.pumpLossM3();
    }
    double figure = BatchUnits.volume(m3, at.record().units());
    double loss = BatchUnits.volume(lossM3, at.record().units());
    List<String> parts = new ArrayList<>();
    double sum = -loss;
    for (Line line : linesOf(at, Material.CONCRETE, Material.BAGGED_CONCRETE)) {
      Optional<Span> rows = takeoff.rowsOf(Need.of(line));
      if (rows.isPresent() && line.net().isPresent()) {
        parts.add(takeoff.withoutPumpLoss(rows.get()));
        sum += takeoff.sum(rows.get());
      }
    }
    return parts.isEmpty() ? Cell.of(figure) : Cell.live(String.join("+", parts), sum, figure);
  }

  Cell concreteOrder(At<SummarySheet.Row> at) {
    return ordered(at, Material.CONCRETE);
  }

  /** Returns what is ordered of a material in its own unit: packs × what a pack holds. */
  Cell ordered(At<SummarySheet.Row> at, Material material) {
    return product(at, material, line -> line.packs().doubleValue() * line.packHolds(), "");
  }

  /** Returns the stakes bought, and those cut from boards that are ordered. */
  Cell stakes(At<SummarySheet.Row> at) {
    double cut =
        at.record().takeOff().pieces().stream()
            .filter(piece -> piece.goesTo().endsWith(CUT_STAKES))
            .mapToDouble(PieceNeed::count)
            .sum();
    Cell bought = ordered(at, Material.STAKE);
    if (cut == 0) {
      return bought;
    }
    return bought instanceof Cell.Formula formula && formula.stored() instanceof Cell.Number number
        ? Cell.of(number.number() + cut)
        : Cell.of(cut);
  }

  /** Returns the weight of the bars ordered. */
  Cell bars(At<SummarySheet.Row> at) {
    return product(
        at,
        Material.BAR,
        line -> line.packs().doubleValue() * line.packHolds() * weightOf(line),
        MaterialsSheet.WEIGHT);
  }

  private static double weightOf(Line line) {
    return BarSize.named(line.key().size())
        .map(size -> BatchUnits.weightPerLength(size.massKgPerM(), line.units()))
        .orElse(0.0);
  }

  private Cell product(
      At<SummarySheet.Row> at, Material material, ToDoubleFunction<Line> of, String factor) {
    Optional<Span> rows = materials.rowsOf(at.record().code(), material);
    if (rows.isEmpty()) {
      return Cell.of(0);
    }
    String formula =
        "SUMPRODUCT("
            + materials.cells(rows.get(), MaterialsSheet.PACKS)
            + ","
            + materials.cells(rows.get(), MaterialsSheet.HOLDS)
            + (factor.isEmpty() ? "" : "," + materials.cells(rows.get(), factor))
            + ")";
    return Cell.formula(formula, linesOf(at, material).stream().mapToDouble(of).sum());
  }

  private List<Line> linesOf(At<SummarySheet.Row> at, Material... wanted) {
    List<Line> lines = new ArrayList<>();
    for (Material material : wanted) {
      materials
          .rowsOf(at.record().code(), material)
          .ifPresent(
              rows -> {
                for (int row = rows.first(); row <= rows.last(); row++) {
                  lines.add(materials.lineAt(row));
                }
              });
    }
    return lines;
  }
}
