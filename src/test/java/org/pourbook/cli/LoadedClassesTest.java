package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.ForkedJava;

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
    ForkedJava.Ended run =
        ForkedJava.of(Main.class, "-Xlog:class+load:file=" + log).run((Object[]) args);
    assertEquals(status, run.status(), run.said());
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
