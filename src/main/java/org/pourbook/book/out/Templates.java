package org.pourbook.book.out;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.pourbook.book.InputSheet;
import org.pourbook.book.TicketColumn;
import org.pourbook.measure.UnitSystem;

/** Blank input files, each with an invented example that may be deleted. */
public final class Templates {

  /** Headings of a list of delivery tickets, with what an example row holds. */
  private static final List<List<String>> TICKETS =
      List.of(
          Arrays.stream(TicketColumn.values()).map(TicketColumn::label).toList(),
          List.of(
              "1001",
              "2027-05-11",
              "Example Ready-Mix",
              "EXAMPLE",
              "concrete",
              "3000 psi",
              "RM30",
              "10",
              "yd3",
              "7",
              "06:35",
              "07:00",
              "07:40",
              "0",
              "150.00",
              "1500.00",
              "",
              "A-77"));

  private Templates() {}

  /**
   * Writes a jobs workbook with every input sheet and every setting.
   *
   * @throws java.nio.file.FileAlreadyExistsException if it exists and may not be replaced
   */
  public static void writeJobs(Path target, UnitSystem units, boolean overwrite)
      throws IOException {
    write(List.of(InputSheet.values()), "Jobs workbook", target, units, overwrite);
  }

  /**
   * Writes a price book.
   *
   * @throws java.nio.file.FileAlreadyExistsException if it exists and may not be replaced
   */
  public static void writePrices(Path target, UnitSystem units, boolean overwrite)
      throws IOException {
    write(List.of(InputSheet.PRICES, InputSheet.SUPPLIERS), "Price book", target, units, overwrite);
  }

  /**
   * Writes a list of delivery tickets as CSV.
   *
   * @throws java.nio.file.FileAlreadyExistsException if it exists and may not be replaced
   */
  public static void writeTickets(Path target, boolean overwrite) throws IOException {
    StringBuilder text = new StringBuilder();
    for (List<String> row : TICKETS) {
      text.append(CSVFormat.RFC4180.format(row.toArray()))
          .append(CSVFormat.RFC4180.getRecordSeparator());
    }
    WholeOutput.file(
        target, overwrite, out -> out.write(text.toString().getBytes(StandardCharsets.UTF_8)));
  }

  private static void write(
      List<InputSheet> inputs, String title, Path target, UnitSystem units, boolean overwrite)
      throws IOException {
    ExampleRows examples = new ExampleRows(units.isMetric());
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(Welcome.template(title, inputs, units));
    InputCells cells = new InputCells(Set.copyOf(inputs));
    for (InputSheet input : inputs) {
      sheets.add(
          new TemplateSheet(
              input,
              units,
              cells,
              input == InputSheet.PRACTICE ? PracticeRows.of(units) : examples.of(input)));
    }
    WorkbookFile.writeWorkbook(
        sheets, new Paper(units.isMetric(), title), title, target, overwrite);
  }
}
