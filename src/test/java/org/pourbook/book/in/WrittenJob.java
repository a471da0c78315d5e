package org.pourbook.book.in;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pourbook.desk.Batch;
import org.pourbook.job.Job;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;

/** A job {@code J} as a folder of CSV files, for the tests of the reader. */
final class WrittenJob {

  private final Path folder;

  private WrittenJob(Path folder) {
    this.folder = folder;
  }

  /** Returns a job without sections. */
  static WrittenJob in(Path folder) throws IOException {
    return new WrittenJob(folder).sheet("Jobs", "Job,Mix", "J,3000 psi");
  }

  /** Writes a sheet; lengths stand unquoted, so without inch marks. */
  WrittenJob sheet(String name, String... lines) throws IOException {
    Files.write(folder.resolve(name + ".csv"), List.of(lines));
    return this;
  }

  Checked<Batch> read() throws UnreadableFile {
    return JobsReader.read(folder, Optional.empty());
  }

  /** Returns the job; every problem must be a note. */
  Job job() throws UnreadableFile {
    Checked<Batch> read = read();
    if (read.value().jobs().isEmpty()) {
      throw new AssertionError(read.problems());
    }
    return read.value().jobs().get(0);
  }

  /** Returns what keeps the job out: {@code Sheet!Cell: expected}. */
  List<String> refused() throws UnreadableFile {
    return read().problems().stream()
        .filter(problem -> problem.effect() != Problem.Effect.NOTE)
        .map(problem -> problem.place() + ": " + problem.expected())
        .toList();
  }

  List<String> notes() throws UnreadableFile {
    return read().problems().stream()
        .filter(problem -> problem.effect() == Problem.Effect.NOTE)
        .map(problem -> problem.place() + ": " + problem.expected())
        .toList();
  }
}
