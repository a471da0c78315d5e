package org.pourbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The programs that are compared, each run as a process.
 *
 * @param folder where they may write
 */
record Programs(Path folder) {

  static final Path PRICES = Path.of("demo-data/prices.xlsx");

  private static final Path INSTALLED = Path.of("target/pourbook").toAbsolutePath();

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  private Run run(List<String> command) throws IOException, InterruptedException {
    return Run.of(folder.resolve("said.txt"), command);
  }

  /** Runs the installed program. */
  Run launch(String... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(INSTALLED.resolve("pourbook").toString()));
    command.addAll(List.of(args));
    return run(command);
  }

  /** Runs the installed jar without the launcher. */
  Run jar(String... args) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(List.of(java(), "-jar", INSTALLED.resolve("lib/pourbook.jar").toString()));
    command.addAll(List.of(args));
    return run(command);
  }

  /** Runs a program of this package. */
  Run java(Class<?> main, String heap, String... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(java()));
    if (!heap.isEmpty()) {
      command.add(heap);
    }
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    command.addAll(List.of(args));
    return run(command);
  }

  /** Runs a command of another program. */
  Run other(List<String> command) throws IOException, InterruptedException {
    return run(command);
  }

  /**
   * Has the launcher make its archive of classes, as it does after the first estimate. One of an
   * earlier build would not be used, and a new one would be made while runs are timed.
   */
  void makeArchive() throws IOException, InterruptedException {
    for (Path old : archives()) {
      Files.delete(old);
    }
    for (int i = 0; i < 120 && archives().isEmpty(); i++) {
      if (i == 0) {
        Path order = folder.resolve("demo.xlsx");
        launch("estimate", "demo-data/jobs.xlsx", "-o", order.toString(), "--overwrite");
      }
      Thread.sleep(500);
    }
    if (archives().isEmpty()) {
      throw new IllegalStateException("the launcher made no archive of classes");
    }
  }

  private static List<Path> archives() throws IOException {
    try (Stream<Path> files = Files.list(INSTALLED.resolve("lib"))) {
      return files.filter(file -> file.toString().matches(".*\\.(jsa|aot)")).toList();
    }
  }
}
