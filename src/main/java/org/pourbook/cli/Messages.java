package org.pourbook.cli;

import java.io.PrintWriter;
import java.util.List;
import org.pourbook.problem.Problem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What a command says: problems and notes on standard error, results on standard output. */
final class Messages {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = {"-q", "--quiet"},
      description = "Say nothing but errors.")
  private boolean quiet;

  /** Prints a result line on standard output. */
  void result(String line) {
    if (!quiet) {
      PrintWriter out = spec.commandLine().getOut();
      out.println(line);
      out.flush();
    }
  }

  /** Prints a line on standard error. */
  void tell(String line) {
    PrintWriter err = spec.commandLine().getErr();
    err.println(line);
    err.flush();
  }

  /** Prints every problem on standard error, notes only when not quiet. */
  void problems(List<Problem> problems) {
    for (Problem problem : problems) {
      if (!quiet || problem.refused()) {
        tell(problem.toString());
      }
    }
  }

  boolean isQuiet() {
    return quiet;
  }
}
