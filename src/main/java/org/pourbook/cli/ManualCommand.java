package org.pourbook.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code pourbook manual}: the manual page, or the completion script of shells. */
@Command(
    name = "manual",
    hidden = true,
    description = "Prints the manual page, as troff.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class ManualCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Option(names = "--completion", description = "Print a completion script for bash and zsh.")
  private boolean completion;

  @Override
  public Integer call() {
    CommandLine root = spec.root().commandLine();
    PrintWriter out = root.getOut();
    out.print(completion ? AutoComplete.bash(root.getCommandName(), root) : ManualPage.of(root));
    out.flush();
    return ExitStatus.DONE;
  }
}
