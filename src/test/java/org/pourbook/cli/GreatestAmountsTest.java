package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Amounts beyond anything that is built: a sentence with the cell, or at least job and line. */
class GreatestAmountsTest extends CommandRuns {

  private static final String PRICES =
      """
      Material,Size,Supplier,Unit,Price
      concrete,3000 psi,Plant,yd3,150
      gizmo,,Plant,each,10000000
      sinker,,Plant,each,9000
      """;

  @TempDir Path folder;

  @BeforeEach
  void jobs() throws IOException {
    write("in/Jobs.csv", "Job,Mix\nA,3000 psi\nB,3000 psi\n");
    write(
        "in/Sections.csv",
        "Job,Section,Length,Width,Thickness (in)\nA,F,20',20',4\nB,F,20',20',4\n");
    write("prices/Prices.csv", PRICES);
  }

  private void write(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  private int estimate() {
    return run(
        "estimate",
        folder.resolve("in"),
        "--prices",
        folder.resolve("prices"),
        "--overwrite",
        "-o",
        folder.resolve("order.xlsx"));
  }

  private void refusedAt(String cell, String bound) throws IOException {
    assertEquals(ExitStatus.PARTLY, estimate(), err);
    assertTrue(err.contains(cell + ": found "), err);
    assertTrue(err.contains(bound), err);
    jobs();
    Files.deleteIfExists(folder.resolve("in/Extras.csv"));
    Files.deleteIfExists(folder.resolve("in/Practice.csv"));
  }

  @Test
  void aCellOverTheGreatestIsNamedWithTheBound() throws IOException {
    write("in/Extras.csv", "Job,What,Quantity,Unit\nA,gizmo,\"999,999,999\",each\n");
    refusedAt("Extras.csv!C2", "at most 1000000 (job left out)");
    write("prices/Prices.csv", PRICES.replace("150", "\"99,999,999,999\""));
    refusedAt("Prices.csv!E2", "at most 10000000000 (row left out)");
    write("in/Sections.csv", sections("20',20',4", "7000',20',4"));
    refusedAt("Sections.csv!C2", "at most 6000'-0\" (job left out)");
    write("in/Sections.csv", sections("20',20',4", "20',20',0.001"));
    refusedAt("Sections.csv!E2", "at least 0'-3/16\" (job left out)");
    write("in/Practice.csv", "Job,Setting,Value\nA,Cost of another stop,99999999999999999999\n");
    refusedAt("Practice.csv!C2", "at most 10000000000 (job left out)");
    write("in/Practice.csv", "Job,Setting,Value\nA,Stake spacing,0.001 in\n");
    refusedAt("Practice.csv!C2", "at least 1\", at most 6000'-0\" (job left out)");
    write("in/Practice.csv", "Job,Setting,Value\nA,Order step,0.00001\n");
    refusedAt("Practice.csv!C2", "at least 0.01 and at most 10000 yd3 (job left out)");
  }

  /**
   * A pier under a post in deep frost takes a tube, which is sold longer than boards are stacked.
   */
  @Test
  void aTubeMayBeHigherThanBoards() throws IOException {
    write(
        "in/Sections.csv",
        """
        Job,Section,Kind,Length,Width,Diameter,Thickness (in),Formed sides
        A,P,pier,,,12 in,144,all
        B,P,pier,1',1',,144,all
        """);
    refusedAt("Sections.csv!G3", "at most 10'-0\" high; higher ones need other forms");
    assertFalse(err.contains("Sections.csv!G2"), err);
  }

  /** Surveyors give a site's corner round numbers, so that none in its plan is below zero. */
  @Test
  void placesMayBeThoseOfASurveyorsGrid() throws IOException {
    write(
        "in/Sections.csv",
        "Job,Section,Length,Width,Thickness (in),X,Y\nA,F,20',20',4,10000',5000 m\nB,F,,,4,,\n");
    write(
        "in/Outlines.csv",
        "Job,Section,X,Y\nB,F,5000 m,10000 m\nB,F,5004 m,10000 m\nB,F,5000 m,10003 m\n");
    assertEquals(ExitStatus.DONE, estimate(), err);
    write("in/Sections.csv", "Job,Section,Length,Width,Thickness (in),X\nA,F,20',20',4,99999'\n");
    assertEquals(ExitStatus.NOTHING, estimate(), err);
    assertTrue(err.contains("Sections.csv!F2: found 99999'; expected a length"), err);
    assertTrue(err.contains("at most 50000'-0\""), err);
  }

  /**
   * A rial is a millionth of a dollar or less: 200 m3 of concrete cost tens of thousands of
   * millions.
   */
  @Test
  void aCurrencyOfSmallUnitsIsCounted() throws IOException {
    write("in/Sections.csv", sections("20',20',4", "100',80',12"));
    write("prices/Prices.csv", PRICES.replace("150", "85000000"));
    assertEquals(ExitStatus.DONE, estimate(), err);
    write("prices/Prices.csv", PRICES.replace("150", "85000000").replace("9000", "4000000000"));
    assertEquals(ExitStatus.DONE, estimate(), err);
  }

  @Test
  void boundsOfLongLengthsAreToldInMetres() throws IOException {
    write("in/Jobs.csv", "Job,Mix,Units\nA,3000 psi,m\nB,3000 psi,m\n");
    write(
        "in/Sections.csv",
        "Job,Section,Length,Width,Thickness (in),Joint spacing\nA,F,2000,3,100 mm,\nB,F,3,3,100 mm,0.3\n");
    refusedAt("Sections.csv!C2", "at most 1828.8 m (job left out)");
    assertFalse(err.contains("Sections.csv!F3"), err);
  }

  @Test
  void wallsOfAMetricJobAreToldInMetres() throws IOException {
    write("in/Jobs.csv", "Job,Mix,Units\nA,3000 psi,m\nB,3000 psi,m\n");
    write("in/Sections.csv", "Job,Section,Length,Width,Thickness (in)\nA,F,3,3,99\nB,F,3,3,99\n");
    write("in/Plates.csv", "Job,Plate,Length,Count\nA,P,1000 m,305\n");
    refusedAt("Plates.csv!D2", "walls that are at most 304800 m long together (job left out)");
  }

  @Test
  void moreBarsThanLieInAnEdgeAreToldWithTheBound() throws IOException {
    write(
        "in/Sections.csv",
        "Job,Section,Length,Width,Thickness (in),Kind,Edge bars\nA,F,20',20',4,footing,120 #4\nB,F,20',20',4,slab,\n");
    refusedAt("Sections.csv!G2", "such as 2 #4, at most 100 (job left out)");
  }

  /** Returns the sections with the sizes of job A replaced. */
  private static String sections(String were, String are) {
    return "Job,Section,Length,Width,Thickness (in),Count\nA,F,"
        + "20',20',4".replace(were, are)
        + ",\nB,F,20',20',4,\n";
  }

  @Test
  void sizesThatAreTooGreatTogetherAreNamed() throws IOException {
    write("in/Sections.csv", sections("20',20',4", "6000',6000',4"));
    refusedAt("Sections.csv!C2", "at most 1000000 ft2 in plan (job left out)");
    write("in/Sections.csv", sections("20',20',4,", "20',20',4,").replace("4,\nB", "4,9999\nB"));
    refusedAt("Sections.csv!F2", "at most 1000000 ft2 in plan (job left out)");
    write("in/Sections.csv", sections("20',20',4", "900',900',60"));
    refusedAt("Sections.csv!C2", "at most 10000 yd3 of concrete (job left out)");
    write("in/Sections.csv", sections("20',20',4", "20',20',125"));
    refusedAt("Sections.csv!E2", "at most 10'-0\" high; higher ones need other forms");
  }

  @Test
  void aLineOfGreatCellsLeavesOutItsJobAlone() throws IOException {
    write("in/Extras.csv", "Job,What,Quantity,Unit\nA,gizmo,1000000,each\n");
    assertEquals(ExitStatus.PARTLY, estimate(), err);
    assertTrue(err.contains("Jobs.csv!A2: found gizmo, which may come to 10000010000000"), err);
    assertTrue(err.contains("at most 100000000000 for one material in a size (job left out)"), err);
    assertTrue(out.startsWith("1 job"), out);
  }

  @Test
  void jobsThatComeToTooMuchTogetherAreLeftOutFromTheOneThatPassesIt() throws IOException {
    StringBuilder jobs = new StringBuilder("Job,Mix\n");
    StringBuilder sections = new StringBuilder("Job,Section,Length,Width,Thickness (in)\n");
    StringBuilder extras = new StringBuilder("Job,What,Size,Quantity,Unit\n");
    for (int i = 0; i < 13; i++) {
      jobs.append("J").append(i).append(",3000 psi\n");
      sections.append("J").append(i).append(",F,20',20',4\n");
      for (int size = 0; size < 10; size++) {
        extras.append("J" + i + ",sinker," + size + " oz,1000000,each\n");
      }
    }
    write("in/Jobs.csv", jobs.toString());
    write("in/Sections.csv", sections.toString());
    write("in/Extras.csv", extras.toString());

    assertEquals(ExitStatus.PARTLY, estimate(), err);

    // 11 times 10 × 9,000 × 1,000,001 for the sinkers, and little concrete, is under 10^12.
    assertTrue(err.startsWith("Jobs.csv!A13: found all jobs down to this one"), err);
    assertEquals(2, err.lines().filter(line -> line.contains("job left out")).count(), err);
    assertTrue(out.startsWith("11 jobs"), out);
  }

  @Test
  void nothingIsWrittenWhereNoJobIsLeft() throws IOException {
    String extras = "Job,What,Quantity,Unit\nA,gizmo,1000000,each\nB,gizmo,1000000,each\n";
    write("in/Extras.csv", extras);
    assertEquals(ExitStatus.NOTHING, estimate(), err);
    assertTrue(err.endsWith("pourbook: no job was usable, nothing is written.\n"), err);
    assertFalse(Files.exists(folder.resolve("order.xlsx")));
    assertEquals(
        ExitStatus.NOTHING,
        run("quote", folder.resolve("in"), "--prices", folder.resolve("prices")),
        err);
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(2, files.count(), "the two folders of inputs");
    }
  }

  @Test
  void greatAmountsOfTicketsOrdersAndQuotationsAreNamed() throws IOException {
    Path order = Files.createDirectories(folder.resolve("order"));
    assertEquals(ExitStatus.DONE, run("estimate", "demo-data/jobs.xlsx", "-o", order), err);
    write(
        "tickets.csv",
        """
        Ticket,Supplier,Job,Material,Quantity,Unit price,Amount
        1,Plant,BAKERY,gizmo,1000001,1,1
        2,Plant,BAKERY,gizmo,1,10000000001,1
        3,Plant,BAKERY,gizmo,1,1,99999999999999999999
        4,Plant,BAKERY,gizmo,1000000,10000000,1
        """);
    Path tickets = folder.resolve("tickets.csv");
    Path out = folder.resolve("out.xlsx");
    assertEquals(ExitStatus.PARTLY, run("reconcile", order, tickets, "-o", out), err);
    for (String told :
        List.of(
            "tickets.csv!E2: found 1000001; expected a number, at most 1000000 (row",
            "tickets.csv!F3: found 10000000001; expected a number, at most 10000000000 (row",
            "tickets.csv!G4: found 99999999999999999999; expected a number",
            "tickets.csv!F5: found 10000000; expected a price that comes to at most 100000000000")) {
      assertTrue(err.contains(told), told + "\n" + err);
    }
    assertTrue(out.toFile().isFile());

    Path materials = order.resolve("Materials.csv");
    List<String> rows = new ArrayList<>(Files.readAllLines(materials));
    int at = List.of(rows.get(0).split(",")).indexOf("Packs");
    rows.set(1, with(rows.get(1), at, "999999999999"));
    Files.write(materials, rows);
    assertEquals(ExitStatus.PARTLY, run("reconcile", order, tickets, "--overwrite", "-o", out));
    assertTrue(err.contains("found 999999999999; expected a number, at most 100000000000"), err);
    assertEquals(
        ExitStatus.PARTLY,
        run("revise", order, "demo-data/revised.xlsx", "-o", folder.resolve("more.xlsx")),
        err);

    List<Path> quotes = new ArrayList<>();
    for (String supplier : List.of("Three Gables Lumber", "Anvil and Oak Supply")) {
      Path quote = Files.createDirectories(folder.resolve(supplier));
      quotes.add(quote);
      String prices = "demo-data/prices.xlsx";
      run("quote", "demo-data/jobs.xlsx", "--prices", prices, "--supplier", supplier, "-o", quote);
      Path sheet = quote.resolve("Quotation.csv");
      List<String> lines = new ArrayList<>(Files.readAllLines(sheet));
      int head = 0;
      while (!lines.get(head).contains("Packs")) {
        head++;
      }
      int amount = List.of(lines.get(head).split(",")).indexOf("Amount");
      for (int i = head + 1; i < head + 12 && lines.get(i).startsWith("BAKERY"); i++) {
        lines.set(i, with(lines.get(i), amount, "99999999999999999"));
      }
      Files.write(sheet, lines);
    }
    assertEquals(
        ExitStatus.PARTLY, run("compare", quotes.get(0), quotes.get(1), "--overwrite", "-o", out));
    assertTrue(err.contains("found 99999999999999999; expected a number"), err);
  }

  /** Returns a row of a CSV file without quotes before that cell, with the cell replaced. */
  private static String with(String row, int at, String cell) {
    String[] cells = row.split(",", -1);
    cells[at] = cell;
    return String.join(",", cells);
  }
}
