package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingValue;
import org.pourbook.job.SettingValues;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.Material.Planning;

/** Every setting with its default, unit and source, its value left blank. */
final class PracticeRows {

  private PracticeRows() {}

  static List<Map<String, Cell>> of(UnitSystem units) {
    List<Map<String, Cell>> rows = new ArrayList<>();
    SettingValues.usual(units)
        .forEach((setting, usual) -> rows.add(row(setting.label(), usual, setting)));
    for (Material material : Material.values()) {
      if (material.planning() == Planning.COUNTED) {
        String usual = Integer.toString(material.allowancePercent());
        rows.add(named(Setting.ALLOWANCE, material.label(), usual, units));
      }
    }
    Setting ahead = Setting.AHEAD_OF_POUR;
    rows.add(named(ahead, Practice.GOODS, "as below", units));
    for (Material material : Material.values()) {
      if (material.planning() != Planning.SERVICE) {
        String usual = Integer.toString(material.aheadOfPourDays());
        rows.add(named(ahead, material.label(), usual, units));
      }
    }
    return rows;
  }

  private static Map<String, Cell> row(String label, SettingValue usual, Setting setting) {
    return ExampleRows.row(
        "Setting",
        label,
        "Default",
        usual.isByRule() ? setting.whenBlank() : usual.shown(),
        "Unit",
        usual.unit(),
        "Source",
        source(setting));
  }

  private static Map<String, Cell> named(
      Setting setting, String material, String usual, UnitSystem units) {
    return ExampleRows.row(
        "Setting",
        setting.label() + ", " + material,
        "Default",
        usual,
        "Unit",
        units.isMetric() ? setting.type().metricUnit() : setting.type().unit(),
        "Source",
        source(setting));
  }

  private static String source(Setting setting) {
    return setting.rule() + ", " + setting.standing().label();
  }
}
