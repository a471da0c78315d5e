package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.book.out.OrderWorkbook;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimates;
import org.pourbook.job.Job;
import org.pourbook.problem.Checked;

/** Texts that look like formulas, through a folder of CSV files and back. */
class GuardedTextsTest {

  @TempDir Path folder;

  private static List<String> descriptions(Checked<Batch> read) {
    return read.value().jobs().stream().map(Job::description).toList();
  }

  @Test
  void textsComeThroughAnOrderFolderAsTheyWereWritten() throws IOException {
    Checked<Batch> read =
        WrittenJob.in(Files.createDirectory(folder.resolve("jobs")))
            .sheet(
                "Jobs",
                "Job,Mix,Description",
                "A,3000 psi,'=1+1",
                "B,3000 psi,''tis",
                "C,3000 psi,'tis")
            .sheet(
                "Sections",
                "Job,Section,Length,Width,Thickness (in)",
                "A,F,9,9,4",
                "B,F,9,9,4",
                "C,F,9,9,4")
            .read();
    assertEquals(List.of("=1+1", "'tis", "'tis"), descriptions(read));

    Path order = folder.resolve("order");
    OrderWorkbook.write(
        Estimates.estimate(
            read.value(), read.problems(), OptimalPlanner.usual(), "test", done -> {}),
        order,
        false);

    assertTrue(Files.readString(order.resolve("Given Jobs.csv")).contains(",'=1+1,"));
    assertEquals(descriptions(read), descriptions(JobsReader.read(order, Optional.empty())));
  }
}
