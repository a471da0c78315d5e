package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.out.OrderWorkbook;
import org.pourbook.book.out.PlanFiles;
import org.pourbook.book.out.Rehearsal;
import org.pourbook.book.out.Rehearsed;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimate;
import org.pourbook.desk.Estimates;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.JobDrawing;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code pourbook estimate}: jobs in, a priced order workbook out. */
@Command(
    name = "estimate",
    description = "Works out a jobs workbook and writes a priced order workbook.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class EstimateCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private Messages messages;
  @Mixin private Output output;
  @Mixin private JobsInput input;
  @Mixin private Cutting cutting;
  @Mixin private OffcutsInput offcuts;

  @Option(
      names = "--practice",
      paramLabel = "FILE",
      description = "Learnt waste allowances, as reconcile --learned writes them.")
  private @Nullable Path practice;

  @Option(
      names = "--plans",
      paramLabel = "DIR",
      description = "Draws the plan of each job as an SVG file in this folder.")
  private @Nullable Path plans;

  @Override
  public Integer call() throws IOException {
    List<Path> inputs = input.paths();
    Optional.ofNullable(practice).ifPresent(inputs::add);
    offcuts.path().ifPresent(inputs::add);
    Path target = output.resolve(input.jobs(), "-order.xlsx", inputs);
    Checked<Batch> read = offcuts.addedTo(input.read(Optional.ofNullable(practice)));
    if (read.value().jobs().isEmpty()) {
      messages.problems(read.problems());
      messages.tell("pourbook: no job was usable, nothing is written.");
      return ExitStatus.NOTHING;
    }
    Rehearsed<Estimate> rehearsed = Rehearsal.during(() -> estimate(read));
    Estimate estimate = rehearsed.result();
    messages.problems(estimate.problems());
    if (estimate.takeOffs().isEmpty()) {
      messages.tell("pourbook: no job was usable, nothing is written.");
      return ExitStatus.NOTHING;
    }
    rehearsed.write(() -> OrderWorkbook.write(estimate, target, output.isOverwrite()));
    if (plans != null) {
      List<Drawing> drawings = estimate.takeOffs().stream().map(JobDrawing::of).toList();
      PlanFiles.write(drawings, plans, output.isOverwrite());
    } else if (!messages.isQuiet() && !OrderWorkbook.holdsPlans(estimate)) {
      messages.tell("pourbook: so many plans stand in no workbook; draw them with --plans DIR.");
    }
    messages.result(Told.of(estimate, target));
    return estimate.problems().stream().anyMatch(Problem::refused)
        ? ExitStatus.PARTLY
        : ExitStatus.DONE;
  }

  private Estimate estimate(Checked<Batch> read) {
    boolean watched = System.console() != null && !messages.isQuiet();
    int total = read.value().jobs().size();
    try (Progress progress = new Progress(spec.commandLine().getErr(), total, watched)) {
      return Estimates.estimate(
          read.value(), read.problems(), cutting.planner(), Version.number(), progress);
    }
  }
}
