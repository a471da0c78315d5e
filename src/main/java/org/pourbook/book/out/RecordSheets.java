package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimate;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingValue;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.TakeOff;

/** What the figures rest on: problems of the input, settings in force, input files. */
final class RecordSheets {

  private RecordSheets() {}

  static SheetSpec<Problem> problems(Estimate estimate) {
    return SheetSpec.landscape(
        "Problems",
        estimate.problems().isEmpty()
            ? "Everything in the input could be used."
            : "What in the input could not be used, or should be looked at.",
        List.of(
            Column.text("Job", 12, Problem::job),
            Column.text("Sheet", 14, problem -> problem.place().sheet()),
            Column.text("Cell", 8, problem -> problem.place().cell()),
            Column.text("Found", 44, Problem::found),
            Column.text("Expected", 56, Problem::expected),
            Column.text("Effect", 14, problem -> problem.effect().label())),
        estimate.problems());
  }

  record Fact(String job, String setting, String value, String unit, String source) {}

  static SheetSpec<Fact> basis(Estimate estimate) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("", "Tool version", estimate.version(), "", "pourbook"));
    for (Batch.InputFile file : estimate.batch().files()) {
      facts.add(new Fact("", "Input file", file.sha256(), "SHA-256", file.name()));
    }
    for (TakeOff takeOff : estimate.takeOffs()) {
      String job = takeOff.job().code();
      for (Map.Entry<Setting, SettingValue> entry : takeOff.job().practice().values().entrySet()) {
        facts.add(fact(job, entry.getKey().label(), entry.getValue()));
      }
      named(facts, job, Setting.ALLOWANCE, takeOff.job().practice().allowances());
      named(facts, job, Setting.AHEAD_OF_POUR, takeOff.job().practice().aheadOfPour());
    }
    return SheetSpec.landscape(
        "Basis",
        "The settings in force for each job, and the files that were read.",
        List.of(
            Column.text("Job", 12, Fact::job),
            Column.text("Setting", 32, Fact::setting),
            Column.cell("Value", Look.GIVEN, 24, fact -> value(fact.value())),
            Column.text("Unit", 10, Fact::unit),
            Column.text("Source", 44, Fact::source)),
        facts);
  }

  private static void named(
      List<Fact> facts, String job, Setting setting, Map<String, SettingValue> values) {
    values.forEach(
        (material, value) -> facts.add(fact(job, setting.label() + ", " + material, value)));
  }

  private static Fact fact(String job, String setting, SettingValue value) {
    return new Fact(
        job, setting, value.isByRule() ? "by rule" : value.shown(), value.unit(), value.source());
  }

  /** A value that is a number is written as one. */
  private static Cell value(String shown) {
    return shown.matches("-?\\d{1,9}(\\.\\d+)?")
        ? Cell.of(Double.parseDouble(shown))
        : Cell.of(shown);
  }
}
