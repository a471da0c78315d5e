package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.JobsReader;
import org.pourbook.desk.Batch;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pourbook check}: says what is wrong with a jobs workbook and writes nothing. */
@Command(
    name = "check",
    description = "Says what is wrong with a jobs workbook; writes nothing.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CheckCommand implements Callable<Integer> {

  @Mixin private Messages messages;

  @Parameters(paramLabel = "JOBS", description = "Jobs workbook, or a folder of CSV files.")
  private Path jobs;

  @Option(
      names = "--prices",
      paramLabel = "BOOK",
      description = "Price book: a workbook, a folder or a prices.csv.")
  private @Nullable Path prices;

  @Override
  public Integer call() throws IOException {
    Checked<Batch> read = JobsReader.read(jobs, Optional.ofNullable(prices));
    messages.problems(read.problems());
    long refused = read.problems().stream().filter(Problem::refused).count();
    long notes = read.problems().size() - refused;
    int sound = read.value().jobs().size();
    messages.result(
        Told.count(sound, "sound job")
            + ", "
            + Told.count(refused, "problem")
            + ", "
            + Told.count(notes, "note")
            + ".");
    if (sound == 0) {
      return ExitStatus.NOTHING;
    }
    return refused > 0 ? ExitStatus.PARTLY : ExitStatus.DONE;
  }
}
