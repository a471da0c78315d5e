package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.JobsReader;
import org.pourbook.desk.Batch;
import org.pourbook.problem.Checked;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The jobs and prices that a command reads, shared by all that read them. */
final class JobsInput {

  @Parameters(paramLabel = "JOBS", description = "Jobs workbook, or a folder of CSV files.")
  private Path jobs;

  @Option(
      names = "--prices",
      paramLabel = "BOOK",
      description = "Price book: a workbook, a folder or a prices.csv.")
  private @Nullable Path prices;

  Path jobs() {
    return jobs;
  }

  /** Returns the files named. */
  List<Path> paths() {
    List<Path> paths = new ArrayList<>(List.of(jobs));
    Optional.ofNullable(prices).ifPresent(paths::add);
    return paths;
  }

  /** Returns the jobs, with learnt waste allowances where given. */
  Checked<Batch> read(Optional<Path> practice) throws IOException {
    return JobsReader.read(jobs, Optional.ofNullable(prices), practice);
  }
}
