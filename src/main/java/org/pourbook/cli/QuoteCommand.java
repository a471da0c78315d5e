package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.JobsReader;
import org.pourbook.book.in.UnreadableFile;
import org.pourbook.book.out.QuotationWorkbook;
import org.pourbook.buy.Order;
import org.pourbook.desk.Batch;
import org.pourbook.desk.JobsWithin;
import org.pourbook.desk.Quote;
import org.pourbook.desk.Quotes;
import org.pourbook.measure.Money;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code pourbook quote}: a builder's jobs and a supplier's list in, a quotation out. */
@Command(
    name = "quote",
    description = "Quotes a builder's jobs from one supplier's own list.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class QuoteCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private Messages messages;
  @Mixin private Output output;
  @Mixin private Cutting cutting;

  @Parameters(
      paramLabel = "JOBS",
      description = "Jobs workbook, folder of CSV files, or order workbook.")
  private Path jobs;

  @Option(
      names = "--prices",
      paramLabel = "LIST",
      required = true,
      description = "The supplier's list: a workbook, a folder or a prices.csv.")
  private Path prices;

  @Option(
      names = "--supplier",
      paramLabel = "NAME",
      description = "Whose prices are quoted, where the list holds several suppliers.")
  private @Nullable String supplier;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "Day of the quotation, such as 2026-11-25; default today.")
  private @Nullable LocalDate date;

  @Override
  public Integer call() throws IOException {
    Checked<Batch> read = JobsWithin.of(JobsReader.readRequest(jobs, prices));
    String from = supplierOf(Quotes.suppliers(read.value().prices()));
    Path target =
        output.resolve(jobs, "-quote-" + inFileName(from) + ".xlsx", List.of(jobs, prices));
    if (read.value().jobs().isEmpty()) {
      messages.problems(read.problems());
      messages.tell("pourbook: no job was usable, nothing is written.");
      return ExitStatus.NOTHING;
    }
    Quote quote =
        Quotes.quote(
            read.value(),
            from,
            date == null ? LocalDate.now() : date,
            read.problems(),
            cutting.planner(),
            Version.number());
    messages.problems(quote.problems());
    QuotationWorkbook.write(quote, target, output.isOverwrite());
    messages.result(told(quote, target));
    return quote.problems().stream().anyMatch(Problem::refused)
        ? ExitStatus.PARTLY
        : ExitStatus.DONE;
  }

  /** Returns whose prices are quoted; several are a matter for the command line. */
  private String supplierOf(List<String> names) throws UnreadableFile {
    if (names.isEmpty()) {
      throw new UnreadableFile(prices + " holds no price that can be used");
    }
    if (supplier == null) {
      if (names.size() == 1) {
        return names.get(0);
      }
      throw wrong("The list holds several suppliers; say whose prices with --supplier", names);
    }
    String same = MaterialKey.normal(supplier);
    return names.stream()
        .filter(name -> MaterialKey.normal(name).equals(same))
        .findFirst()
        .orElseThrow(() -> wrong("The list has no supplier '" + supplier + "'", names));
  }

  private ParameterException wrong(String says, List<String> names) {
    return new ParameterException(spec.commandLine(), says + ": " + String.join(", ", names));
  }

  /** Returns a name as a part of a file's name: what no file system takes is left out. */
  private static String inFileName(String supplier) {
    return supplier.replaceAll("[\\p{Cntrl}\\\\/:*?\"<>|]+", " ").strip().replaceAll("[. ]+$", "");
  }

  private static String told(Quote quote, Path target) {
    long asked = quote.quoted().asked().size();
    long missing = quote.quoted().missing();
    Money total = Money.sum(quote.quoted().deliveries().stream().map(Order::total).toList());
    return Told.count(asked, "line")
        + " asked for, "
        + missing
        + " not offered, total "
        + total
        + " "
        + quote.batch().prices().currency()
        + ", valid until "
        + quote.validUntil()
        + ", written to "
        + target
        + ".";
  }
}
