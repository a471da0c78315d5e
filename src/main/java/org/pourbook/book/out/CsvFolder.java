package org.pourbook.book.out;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.pourbook.book.FormulaGuard;

/** Writes declared sheets as CSV files, one a sheet: headings and values, no formulas. */
final class CsvFolder {

  private CsvFolder() {}

  /** Writes the tables among the sheets into an existing folder. */
  static void write(List<Sheet> sheets, Path folder) throws IOException {
    for (Sheet sheet : sheets) {
      if (sheet instanceof SheetSpec<?> spec) {
        write(spec, folder.resolve(spec.name() + ".csv"));
      }
    }
  }

  private static <R> void write(SheetSpec<R> spec, Path file) throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      write(spec, out);
    }
  }

  /** Returns the whole file of a short sheet. */
  static String text(SheetSpec<?> spec) throws IOException {
    StringWriter out = new StringWriter();
    write(spec, out);
    return out.toString();
  }

  private static <R> void write(SheetSpec<R> spec, Writer out) throws IOException {
    out.write(
        record(spec.columns().stream().map(column -> FormulaGuard.guarded(column.heading()))));
    for (int i = 0; i < spec.rows().size(); i++) {
      At<R> at = spec.at(i);
      out.write(record(spec.columns().stream().map(column -> text(column.value().apply(at)))));
    }
  }

  private static String record(Stream<String> values) {
    return CSVFormat.RFC4180.format(values.toArray()) + CSVFormat.RFC4180.getRecordSeparator();
  }

  private static String text(Cell cell) {
    if (cell instanceof Cell.Text text) {
      return FormulaGuard.guarded(text.text());
    } else if (cell instanceof Cell.Number number) {
      return plain(number.number());
    } else if (cell instanceof Cell.Day day) {
      return day.day().toString();
    } else if (cell instanceof Cell.Clock clock) {
      return clock.time().toString();
    } else if (cell instanceof Cell.YesNo yesNo) {
      return yesNo.yes() ? "yes" : "no";
    } else if (cell instanceof Cell.Formula formula) {
      return text(formula.stored());
    }
    return "";
  }

  private static String plain(double number) {
    BigDecimal exact = new BigDecimal(Double.toString(number));
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }
}
