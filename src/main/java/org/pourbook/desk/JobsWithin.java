package org.pourbook.desk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.buy.LineLimits;
import org.pourbook.buy.PriceBook;
import org.pourbook.job.Job;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.NumberText;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.TakeOff;
import org.pourbook.takeoff.TakeOffs;

/**
 * Leaves out jobs with more money or pieces than can be counted, whose every cell is within its
 * bounds: each line by itself, then all lines of the jobs before and this one. What is left is
 * bought without a thought of overflow.
 */
public final class JobsWithin {

  private final PriceBook prices;
  private final List<Problem> problems = new ArrayList<>();
  private double money;
  private double pieces;
  private double metres;

  private JobsWithin(PriceBook prices) {
    this.prices = prices;
  }

  /** Returns the take-offs of jobs that can be bought, and why the others cannot. */
  static Checked<List<TakeOff>> of(List<TakeOff> takeOffs, PriceBook prices) {
    JobsWithin within = new JobsWithin(prices);
    return new Checked<>(takeOffs.stream().filter(within::takes).toList(), within.problems);
  }

  /** Returns a batch with those of its jobs that can be bought, and the problems of all. */
  public static Checked<Batch> of(Checked<Batch> read) {
    Batch batch = read.value();
    JobsWithin within = new JobsWithin(batch.prices());
    List<Job> jobs =
        batch.jobs().stream()
            .filter(job -> within.takes(TakeOffs.of(job, batch.prices())))
            .toList();
    List<Problem> problems = new ArrayList<>(read.problems());
    problems.addAll(within.problems);
    return new Checked<>(batch.of(jobs), problems);
  }

  private boolean takes(TakeOff takeOff) {
    List<LineLimits.Line> lines = LineLimits.of(takeOff, prices);
    double moneySoFar = money + lines.stream().mapToDouble(LineLimits.Line::money).sum();
    double piecesSoFar = pieces + lines.stream().mapToDouble(LineLimits.Line::pieces).sum();
    double metresSoFar = metres + lines.stream().mapToDouble(LineLimits.Line::metres).sum();
    Job job = takeOff.job();
    Optional<Problem> refused =
        lines.stream()
            .flatMap(line -> refusal(job, line).stream())
            .findFirst()
            .or(() -> together(job, moneySoFar, " of money", Greatest.BATCH))
            .or(() -> together(job, piecesSoFar, " pieces or packs", Greatest.BATCH_PIECES))
            .or(() -> together(job, metresSoFar, " m of pieces", Greatest.BATCH_M));
    refused.ifPresent(problems::add);
    money = refused.isPresent() ? money : moneySoFar;
    pieces = refused.isPresent() ? pieces : piecesSoFar;
    metres = refused.isPresent() ? metres : metresSoFar;
    return refused.isEmpty();
  }

  private static Optional<Problem> together(Job job, double found, String what, BigDecimal most) {
    return found <= most.doubleValue()
        ? Optional.empty()
        : Optional.of(
            refusal(
                job,
                "all jobs down to this one, which may come to " + text(found) + what,
                "jobs that come to at most " + NumberText.text(most) + " in one batch"));
  }

  private static Optional<Problem> refusal(Job job, LineLimits.Line line) {
    if (line.pieces() > Greatest.PIECES.doubleValue()) {
      return Optional.of(tooMany(job, line, line.pieces(), " pieces or packs", Greatest.PIECES));
    }
    if (line.loads() > Greatest.COUNT.doubleValue()) {
      return Optional.of(tooMany(job, line, line.loads(), " loads", Greatest.COUNT));
    }
    return line.money() > Greatest.LINE.doubleValue()
        ? Optional.of(
            refusal(
                job,
                line.key() + ", which may come to " + text(line.money()),
                "at most " + NumberText.text(Greatest.LINE) + " for one material in a size"))
        : Optional.empty();
  }

  private static Problem tooMany(
      Job job, LineLimits.Line line, double found, String what, BigDecimal most) {
    return refusal(
        job,
        line.key() + " in " + text(found) + what,
        "at most " + NumberText.text(most) + " of one material in a size");
  }

  private static Problem refusal(Job job, String found, String expected) {
    return new Problem(job.place(), job.code(), found, expected, Problem.Effect.JOB_LEFT_OUT);
  }

  private static String text(double number) {
    return new BigDecimal(number).setScale(0, RoundingMode.HALF_UP).toPlainString();
  }
}
