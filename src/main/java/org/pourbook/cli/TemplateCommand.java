package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pourbook.book.out.Templates;
import org.pourbook.measure.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code pourbook template}: writes a blank jobs workbook to fill in. */
@Command(
    name = "template",
    description = "Writes a jobs workbook to fill in, with a worked example and every default.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class TemplateCommand implements Callable<Integer> {

  @Mixin private Messages messages;
  @Mixin private Output output;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      defaultValue = "ft-in",
      converter = UnitsConverter.class,
      description = "ft-in (default), or m for millimetres and metres.")
  private UnitSystem units;

  @Option(names = "--price-book", description = "Write a price book instead of a jobs workbook.")
  private boolean priceBook;

  @Override
  public Integer call() throws IOException {
    Path target = output.resolve(Path.of(priceBook ? "prices.xlsx" : "jobs.xlsx"));
    if (priceBook) {
      Templates.writePrices(target, units, output.isOverwrite());
    } else {
      Templates.writeJobs(target, units, output.isOverwrite());
    }
    messages.result("Written to " + target + ".");
    return ExitStatus.DONE;
  }

  /** Reads {@code ft-in} and {@code m}. */
  static final class UnitsConverter implements ITypeConverter<UnitSystem> {
    @Override
    public UnitSystem convert(String text) {
      for (UnitSystem units : UnitSystem.values()) {
        if (units.label().equals(text)) {
          return units;
        }
      }
      throw new TypeConversionException("'" + text + "' is not ft-in or m");
    }
  }
}
