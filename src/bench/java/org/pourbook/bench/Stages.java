package org.pourbook.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.pourbook.book.in.JobsReader;
import org.pourbook.book.out.OrderWorkbook;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.CutPlanner;
import org.pourbook.cut.CutResult;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimate;
import org.pourbook.desk.Estimates;
import org.pourbook.problem.Checked;

/** One estimate in a process of its own that tells how long each stage of it took. */
final class Stages {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final OperatingSystemMXBean PROCESS =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private final AtomicLong plans = new AtomicLong();
  private final AtomicLong planNanos = new AtomicLong();
  private long wall = System.nanoTime();
  private long cpu = PROCESS.getProcessCpuTime();

  private Stages() {}

  /**
   * Prints a line a stage: name, nanoseconds, nanoseconds of CPU of all threads (garbage collection
   * and compiling among them); then how many cut plans there were with their own CPU, and the whole
   * process.
   *
   * @param args the jobs workbook, the price book, the order workbook to be written
   */
  public static void main(String[] args) throws IOException {
    Stages stages = new Stages();
    stages.estimate(Path.of(args[0]), Path.of(args[1]), Path.of(args[2]));
  }

  private void estimate(Path jobs, Path prices, Path order) throws IOException {
    long start = System.nanoTime();
    Checked<Batch> read = JobsReader.read(jobs, Optional.of(prices));
    stage("read");
    int total = read.value().jobs().size();
    Estimate estimate =
        Estimates.estimate(
            read.value(),
            read.problems(),
            this::plan,
            "bench",
            done -> {
              if (done == total) {
                stage("take-off");
              }
            });
    stage("buy and plan");
    OrderWorkbook.write(estimate, order, true);
    stage("write");
    print("plans", plans.get(), planNanos.get());
    print("all", System.nanoTime() - start, PROCESS.getProcessCpuTime());
    if (total == 0) {
      throw new IllegalStateException("no job was usable: " + read.problems().get(0));
    }
  }

  private synchronized void stage(String name) {
    long wallNow = System.nanoTime();
    long cpuNow = PROCESS.getProcessCpuTime();
    print(name, wallNow - wall, cpuNow - cpu);
    wall = wallNow;
    cpu = cpuNow;
  }

  private static void print(String name, long first, long second) {
    System.out.println(name + "\t" + first + "\t" + second);
  }

  private CutResult plan(CutJob job) {
    CutPlanner planner = OptimalPlanner.usual();
    long before = THREADS.getCurrentThreadCpuTime();
    CutResult result = planner.plan(job);
    planNanos.addAndGet(THREADS.getCurrentThreadCpuTime() - before);
    plans.incrementAndGet();
    return result;
  }
}
