package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stakes that are cut from offcuts, from estimate to revision; prices changed for it. */
class CutStakesCommandTest extends CommandRuns {

  private static final String CUT = "stakes cut from 2x4, not bought";

  @TempDir Path folder;
  private Path order;

  /** The demo with stakes at 0.72 each, which no foot of 2x4 is as cheap as. */
  @BeforeEach
  void estimate() throws IOException {
    Path prices = copy("demo-data/prices", "prices", "bundle,25,31.00", "bundle,25,18.00");
    order = folder.resolve("order");
    assertEquals(0, run("estimate", "demo-data/jobs", "--prices", prices, "-o", order), err);
  }

  private Path copy(String from, String to, String text, String by) throws IOException {
    Path target = Files.createDirectories(folder.resolve(to));
    try (Stream<Path> files = Files.list(Path.of(from))) {
      for (Path file : files.toList()) {
        String all = Files.readString(file).replace(text, by);
        Files.writeString(target.resolve(file.getFileName().toString()), all);
      }
    }
    return target;
  }

  private List<CSVRecord> rows(Path book, String name, String job, String heading, String text)
      throws IOException {
    return ReviseCommandTest.sheet(book, name).stream()
        .filter(row -> row.get("Job").equals(job))
        .filter(row -> row.get(heading).startsWith(text))
        .toList();
  }

  private static double sum(List<CSVRecord> rows, String heading) {
    return rows.stream()
        .filter(row -> !row.get(heading).isEmpty())
        .mapToDouble(row -> Double.parseDouble(row.get(heading)))
        .sum();
  }

  @Test
  void everySheetSaysHowManyAreCut() throws IOException {
    List<CSVRecord> cut = rows(order, "Takeoff", "EXTENSION", "Quantity", CUT);
    assertEquals(1, cut.size());
    double count = -Double.parseDouble(cut.get(0).get("Amount"));
    assertTrue(count > 0, "stakes are cut");
    // Takeoff adds up to Materials' Net of what is bought.
    double listed = 0;
    for (CSVRecord row : ReviseCommandTest.sheet(order, "Takeoff")) {
      boolean stake = row.get("Job").equals("EXTENSION") && row.get("Material").equals("stake");
      listed +=
          stake && row.get("Size").equals("24 in") ? Double.parseDouble(row.get("Amount")) : 0;
    }
    List<CSVRecord> bought = rows(order, "Materials", "EXTENSION", "Size", "24 in");
    assertEquals(listed, sum(bought, "Net"), 1e-9);
    // The cut list has them, and a caution says what is to be done with them.
    assertTrue(
        rows(order, "Cut list", "EXTENSION", "Size", "2x4").stream()
            .anyMatch(row -> row.get("Goes to").contains("FLOOR stakes")),
        "stakes are on the cut list");
    String caution =
        rows(order, "Cautions", "EXTENSION", "Caution", "stake 24 in").get(0).get("Caution");
    assertTrue(caution.startsWith("stake 24 in: " + (int) count + " "), caution);
    assertTrue(caution.endsWith("What is cut has no point yet: make one."), caution);
  }

  @Test
  void aRevisionOfTheSameJobsOrdersNothing() throws IOException {
    Path found = folder.resolve("found");
    assertEquals(0, run("revise", order, "demo-data/jobs", "-o", found), err);
    for (CSVRecord row : ReviseCommandTest.sheet(found, "Materials")) {
      assertEquals("0", row.get("Order besides"), row.toString());
      assertEquals("0", row.get("Send back"), row.toString());
    }
  }

  @Test
  void aRevisionHasAsManyCutAsTheOrder() throws IOException {
    // A section more with 12 ft of L1, so ⌈12 ÷ 3⌉ + 1 = 5 stakes more: bought, none cut besides.
    Path jobs =
        copy(
            "demo-data/jobs",
            "jobs",
            "PAVILION,PIERS,",
            "EXTENSION,PATH,slab,outside,1,1,\"12'-0\"\"\",\"3'-0\"\"\",,4,,,,,,,,,,,,,,,L1,,broom,,,\n"
                + "PAVILION,PIERS,");
    Path found = folder.resolve("found");
    assertEquals(0, run("revise", order, jobs, "-o", found), err);
    double before = sum(rows(order, "Materials", "EXTENSION", "Size", "24 in"), "Net");
    double now = sum(rows(found, "Materials", "EXTENSION", "Size", "24 in"), "Net");
    assertEquals(before + 5, now, 1e-9);
  }
}
