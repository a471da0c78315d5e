package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Help and refusals wait for no library: neither for the one of workbooks nor for geometry. */
class LoadedClassesTest {

  /** Libraries of workbooks, archives, CSV and logging; of geometry; and what draws. */
  private static final Pattern LIBRARY =
      Pattern.compile(
          " (org\\.(apache|openxmlformats|slf4j|locationtech)|schemaorg_apache|java\\.awt)[._]\\S*");

  private static final String JOBS = "demo-data/jobs.xlsx";

  @TempDir Path folder;

  /** Returns the classes of libraries that a command loads. */
  private List<String> loaded(int status, String... args) throws Exception {
    Path log = Files.createTempFile(folder, "classes", ".txt");
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + log,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(List.of(args));
    Path said = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    assertEquals(status, process.waitFor(), Files.readString(said));
    return libraries(log);
  }

  private static List<String> libraries(Path log) throws IOException {
    try (Stream<String> lines = Files.lines(log)) {
      List<String> all = lines.toList();
      assertTrue(
          all.stream().anyMatch(line -> line.contains(" " + Main.class.getName() + " ")),
          "classes are logged");
      return all.stream().filter(line -> LIBRARY.matcher(line).find()).limit(5).toList();
    }
  }

  @Test
  void helpAndVersionLoadNoLibrary() throws Exception {
    assertEquals(List.of(), loaded(ExitStatus.DONE, "--help"));
    assertEquals(List.of(), loaded(ExitStatus.DONE, "--version"));
    assertEquals(List.of(), loaded(ExitStatus.DONE, "estimate", "--help"));
  }

  @Test
  void aWrongCommandLineLoadsNoLibrary() throws Exception {
    assertEquals(List.of(), loaded(ExitStatus.USAGE, "estimate", JOBS, "--wrong"));
  }

  @Test
  void aMissingInputLoadsNoLibrary() throws Exception {
    assertEquals(List.of(), loaded(ExitStatus.NOTHING, "check", "missing.xlsx"));
    assertEquals(
        List.of(), loaded(ExitStatus.NOTHING, "estimate", JOBS, "--prices", "missing.xlsx"));
    assertEquals(List.of(), loaded(ExitStatus.NOTHING, "reconcile", JOBS, "missing.csv"));
  }

  @Test
  void anOutputThatMayNotBeWrittenLoadsNoLibrary() throws Exception {
    assertEquals(
        List.of(), loaded(ExitStatus.NOTHING, "estimate", JOBS, "-o", JOBS, "--overwrite"));
  }

  /** So that the tests above can fail. */
  @Test
  void readingAWorkbookLoadsItsLibrary() throws Exception {
    assertEquals(5, loaded(ExitStatus.DONE, "check", JOBS).size());
  }
}
