package org.pourbook.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A program run to its end; the shell tells its processor time.
 *
 * @param whole of the process
 * @param stages what it printed of its own stages
 */
record Run(Figure whole, Map<String, Figure> stages) {

  private static final Pattern TIME = Pattern.compile("(\\d+)m([0-9.]+)s");

  private static final String SCRIPT = "\"$@\" >\"$0\" 2>&1; status=$?; times; exit $status";

  /**
   * Runs a command.
   *
   * @param said the file for what it prints
   */
  static Run of(Path said, List<String> command) throws IOException, InterruptedException {
    List<String> whole = new ArrayList<>(List.of("sh", "-c", SCRIPT, said.toString()));
    whole.addAll(command);
    long start = System.nanoTime();
    Process process = new ProcessBuilder(whole).start();
    String times = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int status = process.waitFor();
    long wall = System.nanoTime() - start;
    if (status != 0) {
      throw new IllegalStateException(
          "status " + status + " of " + command + ": " + Files.readString(said));
    }
    return new Run(new Figure(wall, cpu(times)), stages(said));
  }

  /** Returns what the program printed of a stage. */
  Figure stage(String name) {
    return Objects.requireNonNull(stages.get(name), name);
  }

  private static double cpu(String times) {
    double seconds = 0;
    Matcher time = TIME.matcher(times);
    while (time.find()) {
      seconds += 60 * Double.parseDouble(time.group(1)) + Double.parseDouble(time.group(2));
    }
    return seconds * 1e9;
  }

  private static Map<String, Figure> stages(Path said) throws IOException {
    Map<String, Figure> stages = new LinkedHashMap<>();
    for (String line : Files.readAllLines(said)) {
      String[] parts = line.split("\t", -1);
      if (parts.length == 3) {
        stages.put(
            parts[0], new Figure(Double.parseDouble(parts[1]), Double.parseDouble(parts[2])));
      }
    }
    return stages;
  }
}
