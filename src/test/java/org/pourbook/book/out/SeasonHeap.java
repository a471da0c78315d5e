package org.pourbook.book.out;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pourbook.book.in.JobsReader;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimate;
import org.pourbook.desk.Estimates;
import org.pourbook.problem.Checked;

/** Tells what an estimate takes of the heap; a test runs it in a JVM of its own. */
final class SeasonHeap {

  private SeasonHeap() {}

  /**
   * Estimates two seasons, of which one is longer.
   *
   * @param args a folder, the price book; then the file of bytes a job: of the estimate, and with
   *     the sheets of its order workbook as they stand before they are written
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Path prices = Path.of(args[1]);
    used(folder, prices, 20); // loads classes
    long[] few = used(folder, prices, 40);
    long[] many = used(folder, prices, 80);
    Files.writeString(Path.of(args[2]), (many[0] - few[0]) / 40 + " " + (many[1] - few[1]) / 40);
  }

  private static long[] used(Path folder, Path prices, int jobs) throws IOException {
    Path season = folder.resolve("season-" + jobs + ".xlsx");
    Season.write(season, jobs);
    Checked<Batch> read = JobsReader.read(season, Optional.of(prices));
    Estimate estimate =
        Estimates.estimate(
            read.value(), read.problems(), new FirstFitPlanner(), "test", done -> {});
    long estimated = used();
    List<Sheet> sheets = OrderSheets.of(estimate);
    long declared = used();
    if (sheets.isEmpty() || estimate.takeOffs().size() != jobs) {
      throw new IllegalStateException("not all jobs were usable: " + read.problems());
    }
    return new long[] {estimated, declared};
  }

  private static long used() {
    for (int i = 0; i < 3; i++) {
      System.gc(); // once more for what had to be finalized
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
