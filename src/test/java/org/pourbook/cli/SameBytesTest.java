package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.ForkedJava;

/** The demo estimated on other machines, as far as one machine can be another. */
class SameBytesTest {

  @TempDir Path folder;

  /** Runs an estimate in a process of its own and returns the order workbook. */
  private Path estimate(ForkedJava java, String name) throws IOException, InterruptedException {
    Path order = folder.resolve(name + ".xlsx");
    ForkedJava.Ended run =
        java.with("LC_ALL", "C")
            .run(
                "estimate",
                "demo-data/jobs.xlsx",
                "--prices",
                "demo-data/prices.xlsx",
                "--quiet",
                "-o",
                order);
    assertEquals(0, run.status(), run.said());
    return order;
  }

  /** Returns a Java of another version where one is installed. */
  private static List<Path> others() throws IOException {
    Path all = Path.of("/usr/lib/jvm");
    if (!Files.isDirectory(all)) {
      return List.of();
    }
    try (Stream<Path> homes = Files.list(all)) {
      return homes
          .filter(home -> isOther(home.resolve("release")))
          .map(home -> home.resolve("bin/java"))
          .filter(Files::isExecutable)
          .limit(1)
          .toList();
    }
  }

  private static boolean isOther(Path release) {
    try {
      return Files.readAllLines(release).stream()
          .filter(line -> line.startsWith("JAVA_VERSION=\""))
          .map(line -> line.substring(14).split("[.\"]", -1)[0])
          .anyMatch(version -> Integer.parseInt(version) >= 17 && !version.equals(ourVersion()));
    } catch (IOException | NumberFormatException e) {
      return false;
    }
  }

  private static String ourVersion() {
    return Integer.toString(Runtime.version().feature());
  }

  @Test
  void theBytesDoNotDependOnCoresLocaleTimeZoneOrJava() throws Exception {
    ForkedJava here =
        ForkedJava.of(Main.class, "-XX:ActiveProcessorCount=1", "-Duser.timezone=UTC");
    Path one = estimate(here, "one");
    ForkedJava elsewhere =
        ForkedJava.of(
            Main.class,
            "-XX:ActiveProcessorCount=7",
            "-Duser.language=de",
            "-Duser.country=DE",
            "-Duser.timezone=Asia/Tokyo",
            "-Dfile.encoding=ISO-8859-1");
    Path away = estimate(elsewhere, "elsewhere");
    assertEquals(-1, Files.mismatch(one, away), "seven cores, German, Tokyo");
    for (Path java : others()) {
      ForkedJava turkish = ForkedJava.of(Main.class, "-Duser.language=tr", "-Duser.country=TR");
      Path other = estimate(turkish.by(java), "other");
      assertEquals(-1, Files.mismatch(one, other), java.toString());
    }
  }
}
