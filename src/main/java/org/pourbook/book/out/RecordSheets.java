package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.book.Layout;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimate;
import org.pourbook.desk.Reconcile;
import org.pourbook.desk.Reconciled;
import org.pourbook.job.Job;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingValue;
import org.pourbook.problem.Problem;
import org.pourbook.ticket.Billed;

/** What the figures rest on: problems of the input, settings in force, input files. */
final class RecordSheets {

  private static final String BASIS = "Basis";

  private RecordSheets() {}

  static SheetSpec<Problem> problems(Estimate estimate) {
    return problems(estimate.problems());
  }

  static SheetSpec<Problem> problems(List<Problem> problems) {
    return SheetSpec.landscape(
        "Problems",
        problems.isEmpty()
            ? "Everything in the input could be used."
            : "What in the input could not be used, or should be looked at.",
        List.of(
            Column.text("Job", 12, Problem::job),
            Column.text("Sheet", 14, problem -> problem.place().sheet()),
            Column.text("Cell", 8, problem -> problem.place().cell()),
            Column.text("Found", 44, Problem::found),
            Column.text("Expected", 56, Problem::expected),
            Column.text("Effect", 14, problem -> problem.effect().label())),
        problems);
  }

  /**
   * A line of Basis.
   *
   * @param rule that a setting is of; empty where it is none
   */
  record Fact(String job, String setting, String value, String unit, String source, String rule) {

    Fact(String job, String setting, String value, String unit, String source) {
      this(job, setting, value, unit, source, "");
    }
  }

  private static final String IN_FORCE =
      "The settings in force for each job, and the files that were read.";

  static SheetSpec<Fact> basis(Estimate estimate) {
    return basis(estimate, Cell::of);
  }

  /**
   * Returns the settings in force for each job of an estimate.
   *
   * @param ofRule what stands for a rule's id
   */
  static SheetSpec<Fact> basis(Estimate estimate, Function<String, Cell> ofRule) {
    List<Fact> read = read(estimate.version(), estimate.batch().files());
    if (!PlansSheet.holds(estimate.takeOffs().size())) {
      String why = "more than " + PlansSheet.MOST_JOBS + " jobs: draw them with --plans DIR";
      read.add(0, new Fact("", "Sheet Plans", "left out", "", why));
    }
    return basis(IN_FORCE, facts(read, estimate.batch().jobs()), ofRule);
  }

  /** Returns the settings in force for each job, and the files that were read. */
  static SheetSpec<Fact> basis(Batch batch, String version) {
    return basis(IN_FORCE, facts(read(version, batch.files()), batch.jobs()));
  }

  /** Returns what was read, then the settings of each job. */
  private static List<Fact> facts(List<Fact> read, List<Job> jobs) {
    List<Optional<Job>> records = new ArrayList<>(List.of(Optional.empty()));
    jobs.forEach(job -> records.add(Optional.of(job)));
    return MadeRows.of(
        records, job -> job.map(RecordSheets::facts).orElse(read), (job, fact) -> fact);
  }

  private static List<Fact> facts(Job job) {
    List<Fact> facts = new ArrayList<>();
    Practice practice = job.practice();
    for (Map.Entry<Setting, SettingValue> entry : practice.values().entrySet()) {
      facts.add(fact(job.code(), entry.getKey(), "", entry.getValue()));
    }
    named(facts, job.code(), Setting.ALLOWANCE, practice.allowances());
    named(facts, job.code(), Setting.AHEAD_OF_POUR, practice.aheadOfPour());
    return facts;
  }

  /** Returns the tool's version and the files that were read. */
  static List<Fact> read(String version, List<Batch.InputFile> files) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("", "Tool version", version, "", "pourbook"));
    facts.add(new Fact("", Layout.LABEL, Integer.toString(Layout.NUMBER), "", "pourbook"));
    for (Batch.InputFile file : files) {
      facts.add(new Fact("", "Input file", file.sha256(), "SHA-256", file.name()));
    }
    return facts;
  }

  /** Returns what a reconciliation rests on, and what was billed in all. */
  static SheetSpec<Fact> basis(Reconciled reconciled) {
    List<Fact> facts = new ArrayList<>();
    String currency = reconciled.order().batch().prices().currency();
    Billed billed = reconciled.result().billed();
    String rows = "each ticket or bill row once";
    facts.add(new Fact("", "Billed, ordered goods", billed.ordered().toString(), currency, rows));
    facts.add(new Fact("", "Billed, not ordered", billed.notOrdered().toString(), currency, rows));
    facts.add(new Fact("", "Billed, fees", billed.fees().toString(), currency, rows));
    facts.add(new Fact("", "Billed in all", billed.total().toString(), currency, rows));
    facts.addAll(read(reconciled.version(), reconciled.files()));
    for (Job job : reconciled.order().batch().jobs()) {
      for (Setting setting : Reconcile.SETTINGS) {
        facts.add(
            fact(
                job.code(),
                setting,
                "",
                Objects.requireNonNull(job.practice().values().get(setting))));
      }
    }
    return basis("What the reconciliation rests on, and what was billed in all.", facts);
  }

  static SheetSpec<Fact> basis(String says, List<Fact> facts) {
    return basis(says, facts, Cell::of);
  }

  private static SheetSpec<Fact> basis(
      String says, List<Fact> facts, Function<String, Cell> ofRule) {
    return SheetSpec.landscape(
        BASIS,
        says,
        List.of(
            Column.text("Job", 12, Fact::job),
            Column.text("Setting", 32, Fact::setting),
            Column.cell("Value", Look.GIVEN, 24, fact -> value(fact.value())),
            Column.text("Unit", 10, Fact::unit),
            Column.text("Source", 44, Fact::source),
            Column.onScreen(Column.cell("Rule", Look.LINK, 10, fact -> ofRule.apply(fact.rule())))),
        facts);
  }

  private static void named(
      List<Fact> facts, String job, Setting setting, Map<String, SettingValue> values) {
    values.forEach((material, value) -> facts.add(fact(job, setting, ", " + material, value)));
  }

  private static Fact fact(String job, Setting setting, String of, SettingValue value) {
    String shown = value.isByRule() ? setting.whenBlank() : value.shown();
    return new Fact(job, setting.label() + of, shown, value.unit(), value.source(), setting.rule());
  }

  /** A value that is a number is written as one. */
  private static Cell value(String shown) {
    return shown.matches("-?\\d{1,9}(\\.\\d+)?")
        ? Cell.of(Double.parseDouble(shown))
        : Cell.of(shown);
  }
}
