package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** Runs {@code reconcile} over the demo's order. */
abstract class BookkeepersDesk extends CommandRuns {

  @TempDir static Path orders;
  static Path order;

  @TempDir Path folder;

  @BeforeAll
  static void estimateTheDemo() {
    order = orders.resolve("order.xlsx");
    StringWriter err = new StringWriter();
    int status =
        Main.commandLine()
            .setOut(new PrintWriter(new StringWriter()))
            .setErr(new PrintWriter(err))
            .execute(
                "estimate",
                "demo-data/jobs",
                "--prices",
                "demo-data/prices",
                "-o",
                order.toString());
    assertEquals(0, status, err.toString());
  }

  static List<Path> tickets() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-data/tickets"))) {
      return files.sorted().toList();
    }
  }

  int reconcile(Path from, List<Path> tickets, Object... more) {
    List<Object> args = new ArrayList<>(List.of("reconcile", from));
    args.addAll(tickets);
    args.addAll(List.of("-o", folder.resolve("found"), "--overwrite"));
    args.addAll(List.of(more));
    return run(args.toArray());
  }

  List<CSVRecord> sheet(String name) throws IOException {
    CSVFormat headed = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in = Files.newBufferedReader(folder.resolve("found").resolve(name + ".csv"));
        CSVParser parser = CSVParser.parse(in, headed)) {
      return parser.getRecords();
    }
  }

  List<String> column(String sheet, String heading) throws IOException {
    return sheet(sheet).stream().map(row -> row.get(heading)).toList();
  }

  /** All that was found; only where the other row of a double stands depends on the rows' order. */
  List<List<String>> found() throws IOException {
    List<List<String>> rows = new ArrayList<>();
    for (String name : List.of("Findings", "Matched", "Concrete loads", "Learned")) {
      for (CSVRecord row : sheet(name)) {
        rows.add(row.toList().stream().filter(cell -> !cell.startsWith("Also at ")).toList());
      }
    }
    return rows;
  }
}
