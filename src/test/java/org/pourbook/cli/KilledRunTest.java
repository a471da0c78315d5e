package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.ForkedJava;

/** A run that is killed while it writes, and outputs that nobody may write. */
class KilledRunTest extends CommandRuns {

  private static final String JOBS = "demo-data/jobs.xlsx";
  private static final String OLDER = "an older order";

  @TempDir Path folder;

  private boolean isWriting() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.anyMatch(file -> file.getFileName().toString().startsWith(".order.xlsx.part"));
    }
  }

  /** Starts an estimate and kills it as soon as it has begun to write. */
  private void kill(Path order) throws Exception {
    Path said = folder.resolve("said.txt");
    Process process =
        ForkedJava.of(Main.class).start(said, "estimate", JOBS, "--overwrite", "-o", order);
    while (process.isAlive() && !isWriting()) {
      Thread.sleep(2);
    }
    process.destroyForcibly();
    assertNotEquals(ExitStatus.DONE, process.waitFor(), "it ended before it was killed");
    assertTrue(isWriting(), Files.readString(said));
  }

  @Test
  void aKilledRunLeavesNothingUnderTheOutputsName() throws Exception {
    Path order = folder.resolve("order.xlsx");
    kill(order);
    assertFalse(Files.exists(order));
    Files.writeString(order, OLDER);
    kill(order);
    assertEquals(OLDER, Files.readString(order));
    assertEquals(ExitStatus.DONE, run("estimate", JOBS, "--quiet", "--overwrite", "-o", order));
    assertTrue(Files.size(order) > 10_000, "the next run is not disturbed");
  }

  /** Who may write everywhere may still write no file into these two folders of Linux. */
  @Test
  void aFolderThatCannotBeWrittenIsOneSentence() throws IOException {
    Path locked = Files.createDirectory(folder.resolve("locked"));
    assertTrue(locked.toFile().setWritable(false));
    for (Path place : List.of(locked, Path.of("/proc"), Path.of("/sys"))) {
      if (Files.isDirectory(place) && !(place.equals(locked) && Files.isWritable(place))) {
        Path order = place.resolve("order.xlsx");
        assertEquals(ExitStatus.NOTHING, run("estimate", JOBS, "-o", order), err);
        assertTrue(err.lines().anyMatch(line -> line.startsWith("pourbook: " + place)), err);
        assertFalse(Files.exists(order));
        assertEquals("", out);
      }
    }
  }
}
