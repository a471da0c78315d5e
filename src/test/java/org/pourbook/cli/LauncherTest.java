package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher with a Java that only tells how it was called, and writes the archive asked for. */
class LauncherTest {

  /** Tells its arguments, makes the archive that is asked for, and ends with 3. */
  private static final String JAVA =
      """
      #!/bin/sh
      for argument in "$@"; do
        case $argument in
          -Xshare:dump) dump=yes ;;
          -XX:DumpLoadedClassList=* | -XX:AOTCacheOutput=*) echo classes >"${argument#*=}"; exit 0 ;;
          -XX:SharedClassListFile=*) [ -s "${argument#*=}" ] || exit 1 ;;
          -XX:SharedArchiveFile=*) [ -z "$dump" ] || echo archive >"${argument#*=}" ;;
        esac
      done
      echo "[$*]"
      exit 3
      """;

  @TempDir Path folder;
  private Path home;
  private Path java;

  @BeforeEach
  void install() throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no shell");
    home = Files.createDirectories(folder.resolve("a place/pourbook"));
    Files.createDirectories(home.resolve("lib"));
    Files.writeString(home.resolve("lib/pourbook.jar"), "a jar");
    executable(home.resolve("pourbook"), Files.readString(Path.of("src/launcher/pourbook")));
    java = javaOf("17.0.99");
  }

  private Path javaOf(String version) throws IOException {
    Path jdk = Files.createDirectories(folder.resolve("jdk " + version));
    Files.createDirectories(jdk.resolve("bin"));
    executable(jdk.resolve("bin/java"), JAVA);
    Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    return jdk;
  }

  private static void executable(Path file, String text) throws IOException {
    Files.writeString(file, text);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private String run(Path launcher, Object... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(launcher.toString()));
    Stream.of(args).map(Object::toString).forEach(command::add);
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("JAVA_HOME", java.toString());
    builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
    builder.environment().remove("POURBOOK_NO_ARCHIVE");
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(3, process.waitFor(), "the program's own exit status: " + said);
    return said;
  }

  private List<String> archives() throws IOException {
    try (Stream<Path> files = Files.list(home.resolve("lib"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.startsWith("classes-"))
          .sorted()
          .toList();
    }
  }

  private List<String> awaitArchives(int count) throws IOException, InterruptedException {
    for (int i = 0; i < 200 && archives().size() != count; i++) {
      Thread.sleep(50);
    }
    assertEquals(count, archives().size(), archives().toString());
    return archives();
  }

  @Test
  void theFirstEstimateMakesTheArchiveThatLaterRunsUse() throws Exception {
    Path launcher = home.resolve("pourbook");
    String first = run(launcher, "estimate", "jobs of spring.xlsx");
    assertTrue(first.contains("-jar " + home + "/lib/pourbook.jar estimate jobs of spring.xlsx]"));
    assertFalse(first.contains("-XX:SharedArchiveFile"), first);
    assertEquals(1, first.lines().count(), "nothing but the program's own words: " + first);
    String archive = awaitArchives(1).get(0);
    assertTrue(archive.matches("classes-17\\.0\\.99-[0-9-]+\\.jsa"), archive);
    String second = run(launcher, "check", "jobs.xlsx");
    assertTrue(second.contains("-XX:SharedArchiveFile=" + home + "/lib/" + archive + " "), second);
    awaitArchives(1);
  }

  @Test
  void anotherJavaHasAnArchiveOfItsOwn() throws Exception {
    Path launcher = home.resolve("pourbook");
    run(launcher, "estimate", "jobs.xlsx");
    awaitArchives(1);
    java = javaOf("25.0.1");
    assertFalse(run(launcher, "estimate", "jobs.xlsx").contains("-XX:AOTCache"));
    awaitArchives(2);
    assertTrue(run(launcher, "--help").contains("-XX:AOTCache="));
  }

  @Test
  void aMovedFolderUsesNoOldArchiveAndRemovesIt() throws Exception {
    run(home.resolve("pourbook"), "estimate", "jobs.xlsx");
    String old = awaitArchives(1).get(0);
    Path moved = folder.resolve("moved");
    Files.move(home, moved);
    home = moved;
    assertFalse(run(moved.resolve("pourbook"), "estimate", "x.xlsx").contains("-XX:Shared"));
    for (int i = 0; i < 200 && archives().equals(List.of(old)); i++) {
      Thread.sleep(50);
    }
    awaitArchives(1);
    assertFalse(archives().contains(old), archives().toString());
  }

  @Test
  void aSmallJobIsCompiledQuicklyAndALargeOneWell() throws Exception {
    Path small = Files.write(folder.resolve("small.xlsx"), new byte[1000]);
    Path large = Files.write(folder.resolve("large.xlsx"), new byte[300_000]);
    Path launcher = home.resolve("pourbook");
    assertTrue(run(launcher, "check", small).contains("-XX:TieredStopAtLevel=1"));
    assertFalse(run(launcher, "check", large).contains("-XX:TieredStopAtLevel=1"));
    assertFalse(run(launcher, "check", folder).contains("-XX:TieredStopAtLevel=1"), "a folder");
  }

  @Test
  void aLinkToTheLauncherFindsTheProgram() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("link"), home.resolve("pourbook"));
    assertTrue(run(link, "--version").contains("-jar " + home + "/lib/pourbook.jar"));
  }
}
