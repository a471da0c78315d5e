package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.ForkedJava;

/** A program that may write files up to some size only, its temporary files among them. */
class FullDiskTest {

  private static final Path SHELL = Path.of("/bin/sh");
  private static final String OLDER = "an older order";

  @TempDir Path folder;

  /** Returns what was said. */
  private String estimate(String most, int status) throws Exception {
    assumeTrue(Files.isExecutable(SHELL), "no POSIX shell to set the limit");
    Path temporary = Files.createDirectories(folder.resolve("temporary"));
    ForkedJava.Ended run =
        ForkedJava.of(Main.class, "-XX:-UsePerfData", "-Djava.io.tmpdir=" + temporary)
            .by(SHELL.toString(), "-c", "ulimit -f " + most + " && exec \"$@\"", "sh")
            .run(
                "estimate",
                "demo-data/jobs.xlsx",
                "--overwrite",
                "-o",
                folder.resolve("order.xlsx"));
    assertEquals(status, run.status(), run.said());
    try (Stream<Path> left = Files.walk(temporary).filter(Files::isRegularFile)) {
      assertEquals(List.of(), left.toList(), "temporary files");
    }
    return run.said();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder).filter(Files::isRegularFile)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /**
   * In blocks of 512 or 1,024 bytes, as the shell has it: from the first write to the last part.
   */
  @ParameterizedTest
  @ValueSource(strings = {"1", "8", "64", "128"})
  void anOutputThatDoesNotFitIsOneSentence(String most) throws Exception {
    Files.writeString(folder.resolve("order.xlsx"), OLDER);
    String said = estimate(most, ExitStatus.NOTHING);
    assertEquals(1, said.lines().count(), said);
    assertTrue(said.contains("order.xlsx"), said);
    assertEquals(OLDER, Files.readString(folder.resolve("order.xlsx")));
    assertEquals(List.of("order.xlsx"), names());
  }

  /** Else the limits above might be what no run keeps. */
  @Test
  void anOutputThatFitsIsWritten() throws Exception {
    estimate("100000", ExitStatus.DONE);
    assertTrue(Files.size(folder.resolve("order.xlsx")) > 10_000);
  }
}
