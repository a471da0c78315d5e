package org.pourbook.cli;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pourbook.desk.Batch;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code pourbook check}: says what is wrong with a jobs workbook and writes nothing. */
@Command(
    name = "check",
    description = "Says what is wrong with a jobs workbook; writes nothing.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CheckCommand implements Callable<Integer> {

  @Mixin private Messages messages;
  @Mixin private JobsInput input;

  @Override
  public Integer call() throws IOException {
    Checked<Batch> read = input.read(Optional.empty());
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
