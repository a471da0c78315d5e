package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.OffcutsFile;
import org.pourbook.desk.Batch;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import picocli.CommandLine.Option;

/** The boards and bars on hand that a command may read. */
final class OffcutsInput {

  @Option(
      names = "--offcuts",
      paramLabel = "FILE",
      description =
          "Boards and bars on hand, cut before any are bought: an earlier order workbook, or a list"
              + " with Material, Size, Stock length, Pieces.")
  private @Nullable Path offcuts;

  Optional<Path> path() {
    return Optional.ofNullable(offcuts);
  }

  /** Returns the batch with what is on hand, and the problems of its list besides. */
  Checked<Batch> addedTo(Checked<Batch> read) throws IOException {
    if (path().isEmpty()) {
      return read;
    }
    Checked<OffcutsFile.Offcuts> list = OffcutsFile.read(path().get());
    List<Problem> problems = new ArrayList<>(read.problems());
    problems.addAll(list.problems());
    return new Checked<>(read.value().with(list.value().offcuts(), list.value().files()), problems);
  }
}
