package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.EarlierOrders;
import org.pourbook.book.in.GivenChanges;
import org.pourbook.book.in.JobsReader;
import org.pourbook.book.out.SupplementWorkbook;
import org.pourbook.desk.Batch;
import org.pourbook.desk.EarlierOrder;
import org.pourbook.desk.JobsWithin;
import org.pourbook.desk.Revise;
import org.pourbook.desk.Revised;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pourbook revise}: an order and its changed jobs in, what to order besides out. */
@Command(
    name = "revise",
    description = "Works out what changed jobs need besides an earlier order.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class ReviseCommand implements Callable<Integer> {

  @Mixin private Messages messages;
  @Mixin private Output output;
  @Mixin private Cutting cutting;

  @Parameters(
      index = "0",
      paramLabel = "ORDER",
      description = "Earlier order workbook, or the supplement of an earlier revision.")
  private Path order;

  @Parameters(
      index = "1",
      paramLabel = "JOBS",
      description = "Changed jobs workbook, or a folder of CSV files.")
  private Path jobs;

  @Option(
      names = "--prices",
      paramLabel = "BOOK",
      description = "Price book that holds now; else the one in JOBS, else the earlier order's.")
  private @Nullable Path prices;

  @Option(
      names = "--practice",
      paramLabel = "FILE",
      description = "Learnt waste allowances, where the earlier order took them.")
  private @Nullable Path practice;

  @Override
  public Integer call() throws IOException {
    List<Path> inputs = new ArrayList<>(List.of(order, jobs));
    Optional.ofNullable(prices).ifPresent(inputs::add);
    Optional.ofNullable(practice).ifPresent(inputs::add);
    Path target = output.resolve(jobs, "-supplement.xlsx", inputs);
    Checked<EarlierOrder> earlier = EarlierOrders.read(order);
    Checked<Batch> now = JobsWithin.of(now(earlier.value().book().batch()));
    List<Problem> problems = new ArrayList<>(earlier.problems());
    problems.addAll(now.problems());
    if (now.value().jobs().isEmpty()) {
      messages.problems(problems);
      messages.tell("pourbook: no job was usable, nothing is written.");
      return ExitStatus.NOTHING;
    }
    Revised revised =
        Revise.revise(
            earlier.value(),
            now.value(),
            unsound(now.value()),
            GivenChanges.between(earlier.value().book().batch().given(), now.value().given()),
            problems,
            cutting.planner(),
            Version.number());
    messages.problems(revised.estimate().problems());
    SupplementWorkbook.write(revised, target, output.isOverwrite());
    messages.result(Told.of(revised, target));
    return revised.estimate().problems().stream().anyMatch(Problem::refused)
        ? ExitStatus.PARTLY
        : ExitStatus.DONE;
  }

  /**
   * Returns the jobs as they are now, with the earlier order's prices where there are no others.
   */
  private Checked<Batch> now(Batch before) throws IOException {
    Checked<Batch> read = read(Optional.ofNullable(prices));
    return prices == null && !hasPrices(read.value()) && hasPrices(before)
        ? read(Optional.of(order))
        : read;
  }

  private Checked<Batch> read(Optional<Path> book) throws IOException {
    return JobsReader.read(jobs, book, Optional.ofNullable(practice));
  }

  private static boolean hasPrices(Batch batch) {
    return batch.given().stream()
        .anyMatch(
            sheet -> sheet.name().equals(InputSheet.PRICES.label()) && !sheet.rows().isEmpty());
  }

  /** Returns the jobs that the input names and that could not be used. */
  private static Set<String> unsound(Batch batch) {
    Set<String> named = new HashSet<>(GivenChanges.jobs(batch.given()));
    batch.jobs().forEach(job -> named.remove(job.code()));
    return named;
  }
}
