package org.pourbook.takeoff;

import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.Dowels;
import org.pourbook.takeoff.rule.Dowels.Across;

/** Holes drilled into existing concrete, and what bonds the bars in them (DOW-1). */
record DrilledHoles(SteelJob steel, String code, int pour, int times) {

  /** Adds the adhesive, what to drill with, and the cautions for the bars of one section. */
  void add(Across bar, int count, Length embedment) {
    int holes = count * times;
    Unit unit = Material.ANCHORING_ADHESIVE.unit(steel.units());
    double fill = steel.job().practice().number(Setting.HOLE_FILL);
    double eachM3 = Dowels.adhesiveM3(bar.diameter(), embedment, fill);
    double amount = unit.fromBase(eachM3 * holes);
    String hole = steel.small(Dowels.hole(bar.diameter()));
    String working =
        holes
            + " holes "
            + hole
            + " × "
            + steel.small(embedment)
            + " round "
            + steel.small(bar.diameter())
            + " bars × "
            + Working.number(fill)
            + SteelJob.equal(amount, unit);
    MaterialKey key = Material.ANCHORING_ADHESIVE.of("");
    steel
        .part()
        .add(Quantity.of(code, "anchoring adhesive", amount, unit, working, "DOW-1", key, pour));
    steel
        .part()
        .add(new ReadyItem("Hammer drill with " + hole + " bit, blow-out pump, brush", "", code));
    steel.part().add(new ReadyItem("Mixing nozzles for the adhesive", "one a cartridge", code));
    cautions(bar, embedment);
  }

  private void cautions(Across bar, Length embedment) {
    if (!embedment.isLessThan(bar.length())) {
      String says = "Bars of " + steel.small(bar.length()) + " do not reach out of their holes.";
      steel.caution(code, says, "DOW-1");
    }
    String dust =
        "Drilling into concrete makes silica dust: shroud and vacuum, or a respirator. The"
            + " adhesive's maker gives hole, depth and setting time.";
    steel.caution(code, dust, "29 CFR 1926.1153, Table 1");
  }
}
