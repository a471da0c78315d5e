package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pourbook.book.in.JobsReader;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimates;
import org.pourbook.problem.Checked;

/** Order workbooks of sound input. */
final class DemoOrder {

  private DemoOrder() {}

  /** Writes the demo's own. */
  static Path write(Path file) throws IOException {
    return write(Path.of("demo-data/jobs"), Path.of("demo-data/prices"), file);
  }

  static Path write(Path jobs, Path prices, Path file) throws IOException {
    Checked<Batch> read = JobsReader.read(jobs, Optional.of(prices));
    assertEquals(List.of(), read.problems());
    OrderWorkbook.write(
        Estimates.estimate(
            read.value(), read.problems(), new FirstFitPlanner(), "test", done -> {}),
        file,
        false);
    return file;
  }
}
