package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.OrderReader;
import org.pourbook.book.in.TicketFiles;
import org.pourbook.book.out.LearnedPractice;
import org.pourbook.book.out.ReconciliationWorkbook;
import org.pourbook.desk.OrderBook;
import org.pourbook.desk.Reconcile;
import org.pourbook.desk.Reconciled;
import org.pourbook.measure.Money;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import org.pourbook.ticket.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pourbook reconcile}: an order and its tickets in, what to take up with suppliers out. */
@Command(
    name = "reconcile",
    description = "Matches delivery tickets and invoices with an order workbook.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class ReconcileCommand implements Callable<Integer> {

  @Mixin private Messages messages;
  @Mixin private Output output;

  @Parameters(index = "0", paramLabel = "ORDER", description = "Order workbook.")
  private Path order;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "TICKETS",
      description = "Tickets and invoices: CSV files and workbooks.")
  private List<Path> tickets;

  @Option(
      names = "--columns",
      paramLabel = "FILE",
      description = "What headings of the tickets mean: a table with Ours, Theirs.")
  private @Nullable Path columns;

  @Option(
      names = "--learned",
      paramLabel = "FILE",
      description = "Where to write the waste that was learnt, for estimate --practice.")
  private @Nullable Path learned;

  @Override
  public Integer call() throws IOException {
    List<Path> inputs = new ArrayList<>(List.of(order));
    inputs.addAll(tickets);
    Optional.ofNullable(columns).ifPresent(inputs::add);
    Path target = output.resolve(order, "-reconciliation.xlsx", inputs);
    if (learned != null) {
      output.checked(learned, inputs);
    }
    Checked<OrderBook> book = OrderReader.read(order);
    Checked<TicketFiles.Tickets> read =
        TicketFiles.read(tickets, order, Optional.ofNullable(columns));
    List<Problem> problems = new ArrayList<>(book.problems());
    problems.addAll(read.problems());
    Reconciled reconciled =
        Reconcile.reconcile(
            book.value(), read.value().tickets(), read.value().files(), problems, Version.number());
    messages.problems(reconciled.result().problems());
    ReconciliationWorkbook.write(reconciled, target, output.isOverwrite());
    if (learned != null) {
      LearnedPractice.write(reconciled.result().learned(), learned, output.isOverwrite());
    }
    messages.result(told(reconciled, read.value().tickets().size(), target));
    return reconciled.result().problems().stream().anyMatch(Problem::refused)
        ? ExitStatus.PARTLY
        : ExitStatus.DONE;
  }

  private static String told(Reconciled reconciled, int rows, Path target) {
    List<Finding> findings = reconciled.result().findings();
    Money money =
        Money.sum(findings.stream().map(Finding::money).flatMap(Optional::stream).toList());
    return Told.count(rows, "ticket row")
        + ", "
        + Told.count(findings.size(), "finding")
        + " worth "
        + money
        + " "
        + reconciled.order().batch().prices().currency()
        + ", written to "
        + target
        + ".";
  }
}
