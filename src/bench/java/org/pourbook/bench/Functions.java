package org.pourbook.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.pourbook.book.in.JobsReader;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.CutPlanner;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimates;
import org.pourbook.job.Job;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.Unit;
import org.pourbook.problem.Checked;
import org.pourbook.takeoff.TakeOffs;

/** Functions timed alone, on the demo's six jobs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class Functions {

  private static final Path JOBS = Path.of("demo-data/jobs.xlsx");
  private static final Path PRICES = Path.of("demo-data/prices.xlsx");

  private final Batch batch;
  private final List<CutJob> cuts;

  /** Reads the demo, and keeps what cut plans it asks for. */
  public Functions() {
    try {
      Checked<Batch> read = JobsReader.read(JOBS, Optional.of(PRICES));
      batch = read.value();
      List<CutJob> asked = Collections.synchronizedList(new ArrayList<>());
      CutPlanner planner = OptimalPlanner.usual();
      Estimates.estimate(
          batch,
          read.problems(),
          job -> {
            asked.add(job);
            return planner.plan(job);
          },
          "bench",
          done -> {});
      cuts = List.copyOf(asked);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Reads a length as builders write it. */
  @Benchmark
  public Optional<?> readLength() {
    return LengthText.read("24'-6 1/2\"", Unit.FT);
  }

  /** Takes the demo's jobs off. */
  @Benchmark
  public void takeOff(Blackhole hole) {
    for (Job job : batch.jobs()) {
      hole.consume(TakeOffs.of(job, batch.prices()));
    }
  }

  /** Makes every cut plan of the demo. */
  @Benchmark
  public void cutPlans(Blackhole hole) {
    CutPlanner planner = OptimalPlanner.usual();
    for (CutJob job : cuts) {
      hole.consume(planner.plan(job));
    }
  }

  /** Reads the demo's workbooks. */
  @Benchmark
  public Checked<Batch> read() throws IOException {
    return JobsReader.read(JOBS, Optional.of(PRICES));
  }
}
