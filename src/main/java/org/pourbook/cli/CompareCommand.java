package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pourbook.book.in.QuotationReader;
import org.pourbook.book.in.UnreadableFile;
import org.pourbook.book.out.ComparisonWorkbook;
import org.pourbook.buy.Compared;
import org.pourbook.buy.Quotation;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Compare;
import org.pourbook.desk.Comparison;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code pourbook compare}: several quotations of one request in, the cheapest way to buy out. */
@Command(
    name = "compare",
    description = "Lays quotations of one request side by side and finds the cheapest way to buy.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CompareCommand implements Callable<Integer> {

  @Mixin private Messages messages;
  @Mixin private Output output;

  @Parameters(
      arity = "2..*",
      paramLabel = "QUOTATION",
      description = "Quotation workbooks, or their folders of CSV files; two or more.")
  private List<Path> quotations;

  @Override
  public Integer call() throws IOException {
    Path target = output.resolve(quotations.get(0), "-comparison.xlsx", quotations);
    List<Quotation> read = new ArrayList<>();
    List<Batch.InputFile> files = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Path path : quotations) {
      Checked<QuotationReader.Read> one = QuotationReader.read(path);
      read.add(one.value().quotation());
      files.addAll(one.value().files());
      problems.addAll(one.problems());
    }
    List<String> names = quotations.stream().map(Path::toString).toList();
    Optional<String> hindrance = Compare.hindrance(read, names);
    if (hindrance.isPresent()) {
      throw new UnreadableFile(hindrance.get());
    }
    Comparison comparison = Compare.compare(read, files, problems, Version.number());
    messages.problems(problems);
    ComparisonWorkbook.write(comparison, target, output.isOverwrite());
    messages.result(told(comparison, target));
    return problems.stream().anyMatch(Problem::refused) ? ExitStatus.PARTLY : ExitStatus.DONE;
  }

  private static String told(Comparison comparison, Path target) {
    Compared compared = comparison.compared();
    Compared.Way best = compared.best();
    return Told.count(compared.suppliers().size(), "quotation")
        + ", "
        + Told.count(compared.lines().size(), "line")
        + ", cheapest: "
        + best.name()
        + ", total "
        + best.total()
        + (best.missing() == 0 ? "" : " (" + Told.count(best.missing(), "line") + " missing)")
        + ", written to "
        + target
        + ".";
  }
}
