package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
    Path log = folder.resolve("log.txt");
    Path told = folder.resolve("told.txt");
    // A small heap lets go of what is kept only as long as there is room.
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx64m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                SeasonHeap.class.getName(),
                folder.toString(),
                PRICES.toString(),
                told.toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertTrue(process.waitFor(10, TimeUnit.MINUTES), "the run does not end");
    assertEquals(0, process.exitValue(), Files.readString(log));

    String[] bytes = Files.readString(told).split(" ");
    System.out.println("bytes a job, estimated and with its sheets: " + String.join(", ", bytes));
    for (String aJob : bytes) {
      assertTrue(Long.parseLong(aJob) <= MOST_BYTES_A_JOB, aJob + " bytes a job");
    }
  }
}
