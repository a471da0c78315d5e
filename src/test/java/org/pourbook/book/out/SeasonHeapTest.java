package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.ForkedJava;

/**
 * Ten thousand jobs of ten sections go through 1 GiB: a job may take 80 KB of it from reading to
 * writing, which leaves 200 MB for what is soon let go.
 */
class SeasonHeapTest {

  private static final Path PRICES = Path.of("demo-data/prices.xlsx").toAbsolutePath();

  private static final long MOST_BYTES_A_JOB = 80_000;

  @TempDir Path folder;

  @Test
  void aJobOfASeasonTakesLittleMemory() throws Exception {
    Path told = folder.resolve("told.txt");
    // A small heap lets go of what is kept only as long as there is room.
    ForkedJava.Ended run =
        ForkedJava.of(SeasonHeap.class, "-Xmx64m", "-XX:+UseSerialGC").run(folder, PRICES, told);
    assertEquals(0, run.status(), run.said());

    String[] bytes = Files.readString(told).split(" ");
    System.out.println("bytes a job, estimated and with its sheets: " + String.join(", ", bytes));
    for (String aJob : bytes) {
      assertTrue(Long.parseLong(aJob) <= MOST_BYTES_A_JOB, aJob + " bytes a job");
    }
  }
}
