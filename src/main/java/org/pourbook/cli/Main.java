package org.pourbook.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.Spec;

/** The root command, {@code pourbook}. */
@Command(
    name = "pourbook",
    description = "Estimates batches of concrete slabs from a spreadsheet.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:done",
      "1:an error inside the tool",
      "2:the command line is wrong",
      "3:done, but something in the input could not be used",
      "4:nothing done: a file cannot be read or written, or no job was usable"
    })
public final class Main implements Runnable {

  /** What a desk calls, in the order of the help. */
  private static final List<Class<?>> COMMANDS =
      List.of(
          TemplateCommand.class,
          CheckCommand.class,
          EstimateCommand.class,
          QuoteCommand.class,
          CompareCommand.class,
          ReviseCommand.class,
          ReconcileCommand.class,
          WatchCommand.class);

  /** What tells of all commands. */
  private static final List<Class<?>> OF_COMMANDS = List.of(ManualCommand.class, HelpCommand.class);

  @Spec private CommandSpec spec;

  /** Runs the command line and ends the process with its exit status. */
  public static void main(String[] args) {
    System.exit(run(args));
  }

  private static int run(String... args) {
    Locale.setDefault(Locale.ENGLISH); // charts and formats of the workbook library follow it
    String[] meant = meant(args);
    return commandLine(meant).execute(meant);
  }

  /** A workbook alone, as when it is dropped on the launcher, is to be estimated. */
  static String[] meant(String... args) {
    boolean workbook =
        args.length == 1
            && args[0].toLowerCase(Locale.ROOT).endsWith(".xlsx")
            && !args[0].startsWith("-");
    return workbook ? new String[] {"estimate", args[0]} : args;
  }

  /**
   * Returns the command line with its exit statuses; tests give it streams of their own.
   *
   * @param args what it is for. If they begin with a command, it knows no other: to read the
   *     declarations of all takes longer than to read a small workbook
   */
  static CommandLine commandLine(String... args) {
    CommandLine root = new CommandLine(new Main());
    List<Class<?>> named =
        COMMANDS.stream().filter(c -> args.length > 0 && name(c).equals(args[0])).toList();
    if (named.isEmpty()) {
      COMMANDS.forEach(root::addSubcommand);
      OF_COMMANDS.forEach(root::addSubcommand);
    } else {
      named.forEach(root::addSubcommand);
    }
    return root.setExecutionStrategy(Main::withinMemory)
        .setExecutionExceptionHandler(new Failures());
  }

  private static String name(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }

  /** An input may hold more than fits; what it took is free again when this is caught. */
  private static int withinMemory(ParseResult arguments) {
    try {
      return new RunLast().execute(arguments);
    } catch (OutOfMemoryError | StackOverflowError e) {
      PrintWriter err = arguments.commandSpec().commandLine().getErr();
      err.println(
          "pourbook: the input needs more memory than Java may take here;"
              + " is it the right file? Else give more by the option -Xmx of java.");
      err.flush();
      return ExitStatus.NOTHING;
    }
  }

  /** Refuses a call that names no command: the usage goes to standard error, exit status 2. */
  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Missing command");
  }
}
