package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.book.Heading;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingBounds;
import org.pourbook.job.SettingText;
import org.pourbook.job.SettingValue;
import org.pourbook.job.SettingValues;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.OnOffer;

/** Reads the rows of Practice: a job's own rows beat those for every job, these the defaults. */
final class PracticeRows {

  private final OnOffer onOffer;
  private final UnitSystem forAll;
  private final Map<Key, TableRow> rowsForAll = new LinkedHashMap<>();
  private final Set<Key> badForAll = new HashSet<>();
  private boolean unknownForAll;
  private final Map<UnitSystem, Practice> usual = new EnumMap<>(UnitSystem.class);

  /** A setting, with a material where it has one value for each. */
  private record Key(Setting setting, String material) {}

  /**
   * Returns the rows for every job.
   *
   * @param rows those without a job
   * @param forAll whose units their bare numbers have
   */
  PracticeRows(List<TableRow> rows, UnitSystem forAll, OnOffer onOffer, List<Problem> problems) {
    this.onOffer = onOffer;
    this.forAll = forAll;
    for (TableRow row : rows) {
      Cells cells = new Cells(row, forAll, "", Effect.JOB_LEFT_OUT, problems);
      Optional<Key> key = key(cells);
      if (key.isEmpty()) {
        unknownForAll = true;
      } else if (rowsForAll.putIfAbsent(key.get(), row) != null) {
        cells.refuse("Setting", "one row a setting");
        badForAll.add(key.get());
      } else if (!isBlank(row)
          && (!cells.isSound() || value(key.get(), row, cells, forAll).isEmpty())) {
        badForAll.add(key.get());
      }
    }
  }

  /** Returns the settings in force for a job, and leaves it out where one of them is bad. */
  Practice of(JobDraft job) {
    List<TableRow> own = job.rows(InputSheet.PRACTICE);
    Set<Key> written = new HashSet<>();
    Map<Key, SettingValue> values = new HashMap<>();
    for (TableRow row : own) {
      Cells cells = job.cells(row);
      Optional<Key> key = key(cells);
      if (key.isPresent() && !written.add(key.get())) {
        cells.refuse("Setting", "one row a setting");
      } else if (key.isPresent() && cells.isSound()) {
        readValue(key.get(), row, cells, job.units())
            .ifPresent(value -> values.put(key.get(), value));
      }
      job.accepts(cells);
    }
    if (unknownForAll || !written.containsAll(badForAll)) {
      job.leaveOut();
    }
    Practice forEvery = usual.computeIfAbsent(job.units(), this::forEveryJob);
    return own.isEmpty() ? forEvery : over(forEvery, written, values, job.units());
  }

  private Optional<SettingValue> readValue(Key key, TableRow row, Cells cells, UnitSystem units) {
    return isBlank(row) ? Optional.empty() : value(key, row, cells, units);
  }

  private static boolean isBlank(TableRow row) {
    return CellWords.of(row.cell("Value")).isEmpty();
  }

  private Practice forEveryJob(UnitSystem shown) {
    Map<Key, SettingValue> values = new HashMap<>();
    rowsForAll.forEach(
        (key, row) -> {
          if (!isBlank(row) && !badForAll.contains(key)) {
            read(key, row, forAll, shown).ifPresent(value -> values.put(key, value));
          }
        });
    Practice defaults = new Practice(SettingValues.usual(shown), Map.of(), Map.of());
    return over(defaults, values.keySet(), values, shown);
  }

  /** Returns a practice with some settings written over, and back at the default where blank. */
  private static Practice over(
      Practice under, Set<Key> written, Map<Key, SettingValue> values, UnitSystem shown) {
    Map<Setting, SettingValue> settings = new LinkedHashMap<>(under.values());
    Map<String, SettingValue> allowances = new LinkedHashMap<>(under.allowances());
    Map<String, SettingValue> ahead = new LinkedHashMap<>(under.aheadOfPour());
    Map<Setting, SettingValue> defaults = SettingValues.usual(shown);
    for (Key key : written) {
      SettingValue value = values.get(key);
      if (key.setting() == Setting.ALLOWANCE || key.setting() == Setting.AHEAD_OF_POUR) {
        Map<String, SettingValue> several = key.setting() == Setting.ALLOWANCE ? allowances : ahead;
        if (value == null) {
          several.remove(key.material());
        } else {
          several.put(key.material(), value);
        }
      } else {
        SettingValue usual = defaults.get(key.setting());
        if (value != null || usual != null) {
          settings.put(
              key.setting(), value == null ? java.util.Objects.requireNonNull(usual) : value);
        }
      }
    }
    return new Practice(settings, allowances, ahead);
  }

  private Optional<SettingValue> value(Key key, TableRow row, Cells cells, UnitSystem units) {
    Optional<SettingValue> value = read(key, row, units, units);
    if (value.isEmpty()) {
      String unit =
          units.isMetric() ? key.setting().type().metricUnit() : key.setting().type().unit();
      String usual = key.setting().usual();
      String bounds = SettingBounds.words(key.setting(), units);
      cells.refuse(
          "Value",
          "a value of "
              + key.setting().label()
              + (unit.isEmpty() ? "" : " [" + unit + "]")
              + (usual.isEmpty() || units.isMetric() ? "" : ", such as " + usual)
              + (bounds.isEmpty() ? "" : "; " + bounds));
    }
    return value;
  }

  private static Optional<SettingValue> read(
      Key key, TableRow row, UnitSystem bare, UnitSystem shown) {
    String text = CellWords.of(row.cell("Value"));
    return SettingText.read(
        key.setting(),
        text,
        unitsOf(key.setting(), row, text, bare),
        shown,
        row.place("Value").toString());
  }

  /** The Unit cell of the row, where there is one, says in which units a bare number is. */
  private static UnitSystem unitsOf(
      Setting setting, TableRow row, String text, UnitSystem otherwise) {
    String unit = CellWords.of(row.cell("Unit"));
    if (!LengthText.isBare(text) || setting.type().unit().equals(setting.type().metricUnit())) {
      return otherwise;
    }
    if (unit.equalsIgnoreCase(setting.type().unit())) {
      return UnitSystem.FT_IN;
    }
    return unit.equalsIgnoreCase(setting.type().metricUnit()) ? UnitSystem.M : otherwise;
  }

  private Optional<Key> key(Cells cells) {
    return cells.parsed("Setting", this::key);
  }

  private Optional<Key> key(String name) {
    String key = Heading.key(name);
    for (Setting setting : Setting.values()) {
      boolean several = setting == Setting.ALLOWANCE || setting == Setting.AHEAD_OF_POUR;
      if (!several && Heading.key(setting.label()).equals(key)) {
        return Optional.of(new Key(setting, ""));
      }
    }
    int comma = name.indexOf(',');
    if (comma < 0) {
      return Optional.empty();
    }
    String first = Heading.key(name.substring(0, comma));
    String material = name.substring(comma + 1).strip();
    return List.of(Setting.ALLOWANCE, Setting.AHEAD_OF_POUR).stream()
        .filter(setting -> Heading.key(setting.label()).equals(first))
        .filter(setting -> isMaterial(material) || isOfGoods(setting, material))
        .findFirst()
        .map(
            setting ->
                new Key(
                    setting,
                    isOfGoods(setting, material) ? Practice.GOODS : PriceRows.canonical(material)));
  }

  private static boolean isOfGoods(Setting setting, String name) {
    return setting == Setting.AHEAD_OF_POUR && name.equalsIgnoreCase(Practice.GOODS);
  }

  private boolean isMaterial(String name) {
    return Material.named(name).isPresent() || !onOffer.sizes(name).isEmpty();
  }

  /** Returns the rows without a job, of a table. */
  static List<TableRow> withoutJob(Table table) {
    List<TableRow> rows = new ArrayList<>();
    for (TableRow row : table.rows()) {
      if (CellWords.of(row.cell("Job")).isEmpty()) {
        rows.add(row);
      }
    }
    return rows;
  }
}
