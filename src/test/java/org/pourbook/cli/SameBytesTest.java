package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo estimated on other machines, as far as one machine can be another. */
class SameBytesTest {

  @TempDir Path folder;

  /** Runs an estimate in a process of its own and returns the order workbook. */
  private Path estimate(String java, String name, String... options)
      throws IOException, InterruptedException {
    Path order = folder.resolve(name + ".xlsx");
    List<String> command = new ArrayList<>(List.of(java));
    command.addAll(List.of(options));
    command.addAll(
        List.of(
            "-cp",
            System.getProperty("java.class.path"),
            "org.pourbook.cli.Main",
            "estimate",
            "demo-data/jobs.xlsx",
            "--prices",
            "demo-data/prices.xlsx",
            "--quiet",
            "-o",
            order.toString()));
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve(name + ".log").toFile());
    builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS"));
    builder.environment().putAll(Map.of("LC_ALL", "C"));
    Process process = builder.start();
    boolean ended = process.waitFor(3, TimeUnit.MINUTES);
    process.destroyForcibly();
    String said = Files.readString(folder.resolve(name + ".log"));
    assertTrue(ended, "still running: " + said);
    assertEquals(0, process.exitValue(), said);
    return order;
  }

  private static String ours() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  /** Returns a Java of another version where one is installed. */
  private static List<String> others() throws IOException {
    Path all = Path.of("/usr/lib/jvm");
    if (!Files.isDirectory(all)) {
      return List.of();
    }
    try (Stream<Path> homes = Files.list(all)) {
      return homes
          .filter(home -> isOther(home.resolve("release")))
          .map(home -> home.resolve("bin/java").toString())
          .filter(java -> Files.isExecutable(Path.of(java)))
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
    Path one = estimate(ours(), "one", "-XX:ActiveProcessorCount=1", "-Duser.timezone=UTC");
    Path elsewhere =
        estimate(
            ours(),
            "elsewhere",
            "-XX:ActiveProcessorCount=7",
            "-Duser.language=de",
            "-Duser.country=DE",
            "-Duser.timezone=Asia/Tokyo",
            "-Dfile.encoding=ISO-8859-1");
    assertEquals(-1, Files.mismatch(one, elsewhere), "seven cores, German, Tokyo");
    for (String java : others()) {
      Path other = estimate(java, "other", "-Duser.language=tr", "-Duser.country=TR");
      assertEquals(-1, Files.mismatch(one, other), java);
    }
  }
}
