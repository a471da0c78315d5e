package org.pourbook.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The root command, {@code pourbook}. */
@Command(
    name = "pourbook",
    description = "Estimates batches of concrete slabs from a spreadsheet.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
public final class Main implements Runnable {

  @Spec private CommandSpec spec;

  /** Runs the command line and ends the process with its exit status. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Main()).execute(args));
  }

  /** Refuses a call that names no command: the usage goes to standard error, exit status 2. */
  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Missing command");
  }
}
