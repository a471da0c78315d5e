package org.pourbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.pourbook.cut.CutTable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints the table of benchmarks. What is compared is run in turn; medians are printed. */
@Command(name = "bench", mixinStandardHelpOptions = true)
final class Bench implements Callable<Integer> {

  /** The parts of the table. */
  private enum Part {
    START,
    RUNS,
    FUNCTIONS,
    CUTS
  }

  @Option(
      names = "--jobs",
      split = ",",
      defaultValue = "1,100",
      description = "Sizes of the whole runs; 10000 takes about ten minutes.")
  private List<Integer> jobs = List.of();

  @Option(
      names = "--only",
      split = ",",
      defaultValue = "START,RUNS,FUNCTIONS,CUTS",
      description = "Parts of the table: ${COMPLETION-CANDIDATES}.")
  private List<Part> parts = List.of();

  @Option(names = "--heap", defaultValue = "1g", description = "Memory for a whole run.")
  private String heap = "";

  @Option(names = "--prove", description = "Cut plans by the planner of --prove.")
  private boolean prove;

  @Option(
      names = "--pieces",
      defaultValue = "1000",
      description = "The most pieces of a cut plan; to 10000.")
  private int pieces;

  @Option(names = "--seeds", defaultValue = "3", description = "Cut plans a row.")
  private int seeds;

  /** Runs the parts asked for; the options may stand in one argument. */
  public static void main(String[] args) {
    String[] words = String.join(" ", args).strip().split("\\s+", -1);
    CommandLine line = new CommandLine(new Bench()).setCaseInsensitiveEnumValuesAllowed(true);
    System.exit(line.execute(words[0].isEmpty() ? new String[0] : words));
  }

  @Override
  public Integer call() throws IOException, InterruptedException, RunnerException {
    Table table = new Table(System.out);
    Programs programs = new Programs(Files.createDirectories(Path.of("target/bench")));
    if (parts.contains(Part.START)) {
      start(table, programs);
    }
    if (parts.contains(Part.RUNS)) {
      for (int size : jobs) {
        new WholeRuns(programs, heap, size).print(table);
      }
    }
    if (parts.contains(Part.FUNCTIONS)) {
      functions(table);
    }
    if (parts.contains(Part.CUTS)) {
      CutTable.print(System.out, prove, pieces, seeds);
    }
    return 0;
  }

  private static void start(Table table, Programs programs)
      throws IOException, InterruptedException {
    programs.makeArchive();
    List<Figure> launched = new ArrayList<>();
    List<Figure> jar = new ArrayList<>();
    List<Figure> bare = new ArrayList<>();
    for (int i = 0; i < 15; i++) {
      launched.add(programs.launch("--help").whole());
      bare.add(programs.java(Bare.class, "", "--help").whole());
      jar.add(programs.jar("--help").whole());
    }
    table.pair("--help by the launcher", "", launched, "bare Java and picocli", bare, "2");
    table.pair("--help by java -jar", "", jar, "bare Java and picocli", bare, "");
  }

  private static void functions(Table table) throws RunnerException {
    for (RunResult result :
        new Runner(
                new OptionsBuilder()
                    .include("^" + Functions.class.getName() + "\\.")
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run()) {
      double nanos = result.getPrimaryResult().getScore() * TimeUnit.MICROSECONDS.toNanos(1);
      String name = result.getPrimaryResult().getLabel();
      table.alone("warm: " + name, "", List.of(new Figure(nanos, Double.NaN)), "");
    }
  }
}
