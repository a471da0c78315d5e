package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.ForkedJava;

/** Broken and harmful input: a sentence and an exit status, in little memory and time. */
class HostileInputTest {

  private static final Path PRICES = Path.of("demo-data/prices.xlsx").toAbsolutePath();

  /** Of CPU: several times what the slowest needs. */
  private static final long MOST_MILLIS = 60_000;

  /** What a person can still read at a glance. */
  private static final int LONGEST_LINE = 600;

  @TempDir Path folder;

  /** Returns when each file was changed, and the hash of its bytes. */
  private static Map<Path, String> state(Path folder) throws Exception {
    Map<Path, String> state = new HashMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        FileTime time = Files.getLastModifiedTime(file);
        state.put(file, time + " " + hash(file));
      }
    }
    return state;
  }

  private static String hash(Path file) throws Exception {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private List<String[]> run(List<HostileFiles.Hostile> files, Path outputs) throws Exception {
    Path list = folder.resolve("list.txt");
    Path report = folder.resolve("report.txt");
    Files.write(list, files.stream().map(file -> file.path().toString()).toList());
    ForkedJava.Ended runs =
        ForkedJava.of(HostileRuns.class, "-Xmx128m", "-XX:+UseSerialGC")
            .run(list, PRICES, outputs, report);
    assertEquals("", runs.said());
    assertEquals(0, runs.status());
    return Files.readAllLines(report).stream().map(line -> line.split("\t", 4)).toList();
  }

  @Test
  void eachHostileFileIsMetWithASentenceInLittleMemory() throws Exception {
    Path inputs = Files.createDirectory(folder.resolve("inputs"));
    Path outputs = Files.createDirectory(folder.resolve("outputs"));
    List<HostileFiles.Hostile> files = HostileFiles.in(inputs);
    Map<Path, String> before = state(inputs);
    Map<Path, String> prices = state(PRICES);

    List<String[]> reports = run(files, outputs);

    assertEquals(before, state(inputs), "inputs are not touched");
    assertEquals(prices, state(PRICES), "nor is the price book");
    assertEquals(outputsOf(files), names(outputs), "nothing else is left beside the outputs");
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      faults.addAll(faults(files.get(i), reports.get(i), outputs));
    }
    assertEquals(List.of(), faults, () -> String.join("\n", faults));
    System.out.println(
        "hostile files: "
            + files.size()
            + ", worst ms of CPU and MiB: "
            + worst(files, reports, 1)
            + ", "
            + worst(files, reports, 2));
  }

  /** Returns the names of what is to be written. */
  private static Set<String> outputsOf(List<HostileFiles.Hostile> files) {
    return files.stream()
        .filter(file -> file.status() != ExitStatus.NOTHING)
        .map(file -> file.path().getFileName() + "-order.xlsx")
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static String worst(
      List<HostileFiles.Hostile> files, List<String[]> reports, int column) {
    int worst =
        IntStream.range(0, reports.size())
            .boxed()
            .max(Comparator.comparing(i -> Long.parseLong(reports.get(i)[column])))
            .orElseThrow();
    return reports.get(worst)[column] + " of " + files.get(worst).path().getFileName();
  }

  private static List<String> faults(HostileFiles.Hostile file, String[] report, Path outputs) {
    List<String> faults = new ArrayList<>();
    String name = file.path().getFileName().toString();
    String said = report[3];
    boolean written = Files.exists(outputs.resolve(name + "-order.xlsx"));
    boolean sound =
        said.contains(file.sentence())
            && (file.status() != ExitStatus.NOTHING || !said.isEmpty())
            && said.lines().allMatch(line -> line.length() <= LONGEST_LINE)
            && said.chars().noneMatch(c -> Character.isISOControl(c));
    if (Integer.parseInt(report[0]) != file.status()
        || !sound
        || written != (file.status() != ExitStatus.NOTHING)
        || Long.parseLong(report[1]) > MOST_MILLIS) {
      faults.add(
          name
              + (written ? " wrote " : " ")
              + report[0]
              + ", "
              + report[1]
              + " ms, "
              + report[2]
              + " MiB: "
              + said.substring(0, Math.min(said.length(), LONGEST_LINE)));
    }
    return faults;
  }
}
