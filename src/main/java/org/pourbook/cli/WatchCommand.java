package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code pourbook watch}: estimates every jobs workbook that is saved in a folder. */
@Command(
    name = "watch",
    description = {
      "Estimates every jobs workbook that is saved in a folder, and writes beside it.",
      "Ends with Ctrl-C."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class WatchCommand implements Callable<Integer> {

  /** How often the folder is looked at; a file that has not changed meanwhile is whole. */
  private static final long PAUSE_MILLIS = 1_000;

  @Spec private CommandSpec spec;
  @Mixin private Messages messages;

  @Parameters(paramLabel = "FOLDER", description = "Folder to watch.")
  private Path folder;

  @Option(
      names = "--prices",
      paramLabel = "BOOK",
      description = "Price book: a workbook, a folder or a prices.csv.")
  private @Nullable Path prices;

  @Override
  public Integer call() throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    WatchedFolder watched = new WatchedFolder(folder, Optional.ofNullable(prices));
    if (!messages.isQuiet()) {
      messages.tell("pourbook: watching " + folder + ", Ctrl-C ends it.");
    }
    try {
      while (!Thread.currentThread().isInterrupted()) {
        for (Path jobs : watched.saved()) {
          estimate(jobs);
        }
        Thread.sleep(PAUSE_MILLIS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return ExitStatus.DONE;
  }

  /** A workbook that cannot be estimated is told, and the next one waited for. */
  private void estimate(Path jobs) {
    List<String> args =
        new ArrayList<>(
            List.of(
                "estimate",
                jobs.toString(),
                "-o",
                WatchedFolder.orderOf(jobs).toString(),
                "--overwrite"));
    Optional.ofNullable(prices)
        .ifPresent(book -> args.addAll(List.of("--prices", book.toString())));
    if (messages.isQuiet()) {
      args.add("--quiet");
    }
    String[] words = args.toArray(String[]::new);
    int status =
        Main.commandLine(words)
            .setOut(spec.commandLine().getOut())
            .setErr(spec.commandLine().getErr())
            .execute(words);
    if (status == ExitStatus.DEFECT) {
      messages.tell("pourbook: " + jobs + " was not estimated.");
    }
  }
}
