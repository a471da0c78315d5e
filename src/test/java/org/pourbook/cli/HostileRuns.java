package org.pourbook.cli;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Runs {@code estimate} on one file after the other; a test gives its JVM little memory. */
final class HostileRuns {

  private static final OperatingSystemMXBean PROCESS =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private HostileRuns() {}

  /**
   * Estimates each input named in a file.
   *
   * @param args the file of inputs, the price book, the folder of outputs, the file of reports: of
   *     each input its exit status, milliseconds of CPU, most MiB of heap, and what it said
   */
  public static void main(String[] args) throws IOException {
    StringBuilder report = new StringBuilder();
    for (String input : Files.readAllLines(Path.of(args[0]))) {
      report.append(estimate(input, args[1], Path.of(args[2]))).append('\n');
      Files.writeString(Path.of(args[3]), report);
    }
  }

  private static String estimate(String input, String prices, Path outputs) {
    Path target = outputs.resolve(Path.of(input).getFileName() + "-order.xlsx");
    StringWriter said = new StringWriter();
    List<MemoryPoolMXBean> pools =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .toList();
    pools.forEach(MemoryPoolMXBean::resetPeakUsage);
    long start = PROCESS.getProcessCpuTime();
    int status =
        Main.commandLine()
            .setOut(new PrintWriter(new StringWriter()))
            .setErr(new PrintWriter(said))
            .execute("estimate", input, "--prices", prices, "-o", target.toString());
    long millis = (PROCESS.getProcessCpuTime() - start) / 1_000_000;
    long bytes = pools.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    String words = said.toString().strip().replace("\r", "").replace("\n", "\\n");
    return status + "\t" + millis + "\t" + (bytes >> 20) + "\t" + words;
  }
}
