package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.JobsReader;
import org.pourbook.desk.Batch;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Checked;

/**
 * The demo's workbooks hold what its CSV files hold. {@code mvn test -Dtest=DemoWorkbooksTest
 * -Ddemo.update=true} writes the workbooks anew.
 */
class DemoWorkbooksTest {

  private static final Path DEMO = Path.of("demo-data");

  @TempDir Path folder;

  @Test
  void theDemoWorkbooksHoldWhatTheCsvFilesHold() throws IOException {
    for (String name :
        List.of("jobs", "prices", "revised", "lists/tallow-bridge", "lists/nettle-row")) {
      Path kept = DEMO.resolve(name + ".xlsx");
      Path written = folder.resolve(name.replace('/', '-') + ".xlsx");
      write(name, written);
      if (Boolean.getBoolean("demo.update")) {
        write(name, kept);
      }
      WorkbookParts.assertSame(written, kept);
    }
  }

  @Test
  void theDemoIsReadWithoutAProblemFromEitherForm() throws IOException {
    Checked<Batch> books =
        JobsReader.read(DEMO.resolve("jobs.xlsx"), Optional.of(DEMO.resolve("prices.xlsx")));
    Checked<Batch> files =
        JobsReader.read(DEMO.resolve("jobs"), Optional.of(DEMO.resolve("prices")));
    assertEquals(List.of(), books.problems());
    assertEquals(List.of(), files.problems());
    assertEquals(6, books.value().jobs().size());
    assertTrue(books.value().prices().prices().size() >= 60);
    assertEquals(
        files.value().jobs().stream().map(job -> job.sections().size()).toList(),
        books.value().jobs().stream().map(job -> job.sections().size()).toList());
  }

  private static void write(String name, Path target) throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    List<InputSheet> present =
        Stream.of(InputSheet.values()).filter(input -> Files.exists(csv(name, input))).toList();
    InputCells cells = new InputCells(Set.copyOf(present));
    for (InputSheet input : present) {
      sheets.add(new TemplateSheet(input, UnitSystem.FT_IN, cells, rows(input, csv(name, input))));
    }
    String title =
        name.equals("prices")
            ? "Demo prices, all invented"
            : name.equals("jobs") ? "Demo jobs, all invented" : "Demo jobs revised, all invented";
    WorkbookFile.writeWorkbook(sheets, new Paper(false, title), title, target, true);
  }

  private static Path csv(String name, InputSheet input) {
    return DEMO.resolve(name).resolve(input.label() + ".csv");
  }

  private static List<Map<String, Cell>> rows(InputSheet input, Path file) throws IOException {
    List<Map<String, Cell>> rows = new ArrayList<>();
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8);
        CSVParser records = CSVParser.parse(reader, format)) {
      for (CSVRecord record : records) {
        Map<String, Cell> row = new LinkedHashMap<>();
        record
            .toMap()
            .forEach(
                (heading, text) -> {
                  InputColumn column = input.column(heading).orElseThrow();
                  row.put(column.heading(), FilledCell.of(column, text));
                });
        rows.add(row);
      }
    }
    return rows;
  }
}
