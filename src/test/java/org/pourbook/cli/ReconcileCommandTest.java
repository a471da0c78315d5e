package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.pourbook.ForkedJava;

/** The bookkeeper's desk over the demo: its order, its month of tickets with planted faults. */
class ReconcileCommandTest extends BookkeepersDesk {

  private static final List<String> PLANTED =
      List.of(
          "doubled ticket",
          "not ordered",
          "short-load fee not due",
          "wrong extension",
          "late discharge");

  /** A plant's headings, and ours for the same. */
  private static final Map<String, String> OURS =
      Map.ofEntries(
          Map.entry("Docket no", "Ticket"),
          Map.entry("Docket date (m/d/y)", "Date (m/d/y)"),
          Map.entry("Plant", "Supplier"),
          Map.entry("Order job", "Job"),
          Map.entry("Product", "Material"),
          Map.entry("Mix", "Size"),
          Map.entry("Product code", "Item"),
          Map.entry("Qty", "Quantity"),
          Map.entry("U/M", "Unit"),
          Map.entry("Truck no", "Truck"),
          Map.entry("Load time", "Batched"),
          Map.entry("On job", "Arrived"),
          Map.entry("Unload end", "Discharged"),
          Map.entry("Site water", "Water added"),
          Map.entry("Price", "Unit price"),
          Map.entry("Ext. price", "Amount"),
          Map.entry("Fee", "Charge"));

  @Test
  void thePlantedFaultsAreFoundAllAndOnlyThey() throws IOException {
    assertEquals(0, reconcile(order, tickets()), err);
    assertEquals(PLANTED, column("Findings", "Finding"));
    assertEquals(
        List.of("1645", "126", "90", "90", ""), column("Findings", "Money"), "dearest first");
    assertEquals("", err);
  }

  @Test
  void whatWasBilledAgreesToTheCentWithTheTicketRows() throws IOException {
    assertEquals(0, reconcile(order, tickets()), err);
    BigDecimal rows = BigDecimal.ZERO;
    for (Path file : tickets()) {
      for (String line : Files.readAllLines(file)) {
        String[] cells = line.split(",", -1);
        rows = cells[15].matches("[0-9.]+") ? rows.add(new BigDecimal(cells[15])) : rows;
      }
    }
    BigDecimal doubled = new BigDecimal("1645.00");
    String told =
        sheet("Basis").stream()
            .filter(row -> row.get("Setting").equals("Billed in all"))
            .map(row -> row.get("Value"))
            .findFirst()
            .orElseThrow();
    assertEquals(0, rows.subtract(doubled).compareTo(new BigDecimal(told)), told);
  }

  @Test
  void rowsInAnyOrderAndInEitherHeadingsGiveTheSame() throws IOException {
    assertEquals(0, reconcile(order, tickets()), err);
    List<List<String>> before = found();
    for (int seed = 1; seed <= 3; seed++) {
      List<Path> others = new ArrayList<>();
      for (Path file : tickets()) {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        List<String> rows = lines.subList(1, lines.size());
        Collections.shuffle(rows, new Random(seed));
        List<String> headings = new ArrayList<>();
        for (String heading : lines.get(0).split(",")) {
          headings.add(OURS.getOrDefault(heading, heading));
        }
        lines.set(0, String.join(",", headings));
        others.add(Files.write(folder.resolve(file.getFileName().toString()), lines));
      }
      Collections.shuffle(others, new Random(seed));
      assertEquals(0, reconcile(order, others), err);
      assertEquals(before, found(), "seed " + seed);
    }
  }

  @Test
  void anUnreadableRowIsToldWithItsLineAndTheOthersAreMatched() throws IOException {
    List<Path> files = new ArrayList<>(tickets());
    Path bad =
        Files.writeString(
            folder.resolve("bad.csv"),
            "Ticket,Supplier,Job,Material,Quantity\n"
                + "1,Anvil and Oak Supply,BARN,sand bag,2\n"
                + "2,Anvil and Oak Supply,BARN,sand bag,many\n");
    files.add(bad);
    assertEquals(3, reconcile(order, files));
    assertTrue(err.contains("bad.csv!E3: found many; expected a number (row left out)"), err);
    assertEquals(6, sheet("Findings").size());
  }

  @Test
  void aMissingColumnIsAskedForByNameAndMayBeNamedByAFile() throws IOException {
    Path odd =
        Files.writeString(folder.resolve("odd.csv"), "Chit,Who,Docket,Qty\n77,PAVILION,1,4\n");
    assertEquals(3, reconcile(order, List.of(odd)));
    assertTrue(err.contains("odd.csv!A1: found no column for Supplier, Job"), err);
    Path columns =
        Files.writeString(
            folder.resolve("columns.csv"),
            "Ours,Theirs,Always\nTicket,Chit,\nJob,Who,\nItem,,AO-PB\n"
                + "Supplier,,Anvil and Oak Supply\n");
    assertEquals(0, reconcile(order, List.of(odd), "--columns", columns), err);
    List<CSVRecord> came =
        sheet("Matched").stream().filter(row -> row.get("Delivered").equals("4")).toList();
    assertEquals(List.of("post base"), came.stream().map(row -> row.get("Material")).toList());
  }

  @Test
  void whatWasLearntIsTakenByTheNextEstimate() throws IOException {
    Path learned = folder.resolve("learned.csv");
    assertEquals(0, reconcile(order, tickets(), "--learned", learned), err);
    assertTrue(Files.readString(learned).contains("Waste allowance,11.8,"), "7 pours");
    Path next = folder.resolve("next");
    assertEquals(
        0,
        run(
            "estimate",
            "demo-data/jobs",
            "--prices",
            "demo-data/prices",
            "--practice",
            learned,
            "-o",
            next),
        err);
    String basis = Files.readString(next.resolve("Basis.csv"));
    assertTrue(basis.contains("BARN,Waste allowance,11.8,%,learned.csv!C2"), basis);
    assertTrue(basis.contains("EXTENSION,Waste allowance,12,%,Practice.csv!C3"), "own row wins");
    assertEquals(0, reconcile(next, tickets(), "--learned", folder.resolve("again.xlsx")), err);
  }

  @Test
  void aJobsWorkbookIsNoOrderWorkbook() throws IOException {
    assertEquals(
        4, run("reconcile", "demo-data/jobs", tickets().get(0), "-o", folder.resolve("x")));
    assertEquals(1, err.lines().count(), err);
    assertTrue(err.contains("no order workbook"), err);
  }

  @Test
  void anOrderSavedByAnotherProgramReadsBackWhole() throws Exception {
    assertEquals(0, reconcile(order, tickets()), err);
    List<List<String>> before = rounded(found());
    Path saved = savedByOffice();
    assertEquals(0, reconcile(saved, tickets()), err);
    assertEquals(before, rounded(found()));
    assertEquals("", err);
  }

  /** LibreOffice keeps 15 figures of a number, so that six decimals are left of any here. */
  private static List<List<String>> rounded(List<List<String>> rows) {
    return rows.stream()
        .map(
            row ->
                row.stream()
                    .map(
                        cell ->
                            cell.matches("-?[0-9]+\\.[0-9]+")
                                ? new BigDecimal(cell)
                                    .setScale(6, RoundingMode.HALF_UP)
                                    .stripTrailingZeros()
                                    .toPlainString()
                                : cell)
                    .toList())
        .toList();
  }

  /** The office types over a price of Materials and packs of Orders, adds a sheet, and saves. */
  @Test
  void anOrderEditedInAnotherProgramReadsBackAsItWasLeft() throws Exception {
    assertEquals(0, reconcile(order, tickets()), err);
    Path flat = converted(order, "fods");
    String text = Files.readString(flat);
    int from = text.indexOf("<table:table table:name=\"Materials\"");
    int concrete = text.indexOf("<text:p>25 MPa</text:p>", text.indexOf("<text:p>BARN</", from));
    int price = text.indexOf("office:value=\"214\"", concrete);
    String edited =
        text.substring(0, price)
            + "office:value=\"200\""
            + text.substring(price + "office:value=\"214\"".length());
    int orders = edited.indexOf("<table:table table:name=\"Orders\"");
    int line = edited.indexOf("<text:p>SV-25</text:p>", orders);
    edited =
        edited.substring(0, line)
            + edited
                .substring(line)
                .replaceFirst("table:formula=\"[^\"]*\"([^>]*)\"36.5\"", "$1\"40\"");
    String formula = "(table:formula=\"[^\"]*\")[^>]*(?<!/)>(\\s*<text:p>[^<]*</text:p>)?";
    edited = edited.replaceAll(formula, "$1>"); // so that the program works them out again
    edited =
        edited.replaceFirst(
            "<table:table table:name=\"Summary\"",
            "<table:table table:name=\"Office notes\"><table:table-row><table:table-cell"
                + " office:value-type=\"string\"><text:p>Rang the plant</text:p>"
                + "</table:table-cell></table:table-row></table:table>$0");
    Path saved = converted(Files.writeString(folder.resolve("edited.fods"), edited), "xlsx");
    assertEquals(0, reconcile(saved, tickets()), err);
    // 36.5 m3 ordered at 200 now; the five BARN loads are billed at 214.
    CSVRecord barn =
        sheet("Matched").stream()
            .filter(row -> row.get("Job").equals("BARN") && row.get("Size").equals("25 MPa"))
            .findFirst()
            .orElseThrow();
    assertEquals("7300", barn.get("Ordered amount"));
    assertTrue(barn.get("Standing").contains("price differs"), barn.toString());
    assertTrue(err.contains("Office notes"), err);
    assertTrue(err.contains("found Packs 40; expected 36.5, as on Materials"), err);
    assertEquals(2, err.lines().count(), err);
  }

  private Path savedByOffice() throws IOException, InterruptedException {
    return converted(order, "xlsx");
  }

  private Path converted(Path from, String format) throws IOException, InterruptedException {
    Path office = Path.of("/usr/bin/soffice");
    assumeTrue(Files.isExecutable(office), "LibreOffice is not there");
    Path to = Files.createDirectories(folder.resolve("saved"));
    Process process =
        new ProcessBuilder(
                office.toString(),
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                format,
                "--outdir",
                to.toString(),
                from.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("office.log").toFile())
            .start();
    boolean ended = process.waitFor(3, TimeUnit.MINUTES);
    if (!ended) {
      process.destroyForcibly();
    }
    Path saved = to.resolve(from.getFileName().toString().replaceFirst("\\.[^.]+$", "." + format));
    assumeTrue(ended && Files.exists(saved), "LibreOffice did not save it");
    return saved;
  }

  @Test
  void eachJobsOwnToleranceIsInForce() throws IOException {
    assertEquals(0, reconcile(order, tickets()), err);
    Path jobs = Files.createDirectory(folder.resolve("jobs"));
    try (Stream<Path> files = Files.list(Path.of("demo-data/jobs"))) {
      for (Path file : files.toList()) {
        Files.copy(file, jobs.resolve(file.getFileName().toString()));
      }
    }
    Path practice = jobs.resolve("Practice.csv");
    Files.writeString(
        practice, Files.readString(practice).stripTrailing() + "\nBARN,Discharge limit,30,,,\n");
    Path own = folder.resolve("own.xlsx");
    assertEquals(0, run("estimate", jobs, "--prices", "demo-data/prices", "-o", own), err);
    assertEquals(0, reconcile(own, tickets()), err);
    Set<String> late = new TreeSet<>();
    sheet("Findings").stream()
        .filter(row -> row.get("Finding").equals("late discharge"))
        .filter(row -> !row.get("Says").contains("at most 90"))
        .forEach(row -> late.add(row.get("Job") + " " + row.get("Says").contains("at most 30")));
    assertEquals(Set.of("BARN true"), late);
    List<String> limits =
        sheet("Basis").stream()
            .filter(row -> row.get("Setting").equals("Discharge limit"))
            .filter(row -> row.get("Job").equals("BARN"))
            .map(row -> row.get("Value"))
            .toList();
    assertEquals(List.of("30"), limits);
  }

  /**
   * Rows of tickets are held, what they were read from is not; so 128 MB do for 100,000 lines that
   * hold 90 MB.
   */
  @Test
  void aHundredThousandLinesStreamThroughASmallHeap() throws Exception {
    Path file = folder.resolve("long.csv");
    String remark = "said by the driver at the gate of the site ".repeat(20);
    try (BufferedWriter writer = Files.newBufferedWriter(file)) {
      writer.write("Ticket,Supplier,Job,Size,Quantity,Unit,Remark\n");
      for (int i = 0; i < 100_000; i++) {
        writer.write(i + ",Sallow Vale Batch Plant,BARN,25 MPa,0.000365,m3," + remark + i + "\n");
      }
    }
    ForkedJava.Ended run =
        ForkedJava.of(Main.class, "-Xmx128m", "-XX:+UseSerialGC")
            .run("reconcile", order, file, "-o", folder.resolve("found"));
    assertEquals(0, run.status(), run.said());
    assertTrue(run.said().startsWith("100000 ticket rows"), run.said());
  }

  @Test
  void aHundredThousandLinesAreMatched() throws IOException {
    Path file = folder.resolve("long.csv");
    int lines = 100_000;
    try (BufferedWriter writer = Files.newBufferedWriter(file)) {
      writer.write(
          "Docket,Plant,Order job,Mix,Qty,U/M,Load time,Unload end,Price,Ext. price,Fee\n");
      for (int i = 0; i < lines; i += 2) {
        writer.write(i + ",Sallow Vale Batch Plant,BARN,25 MPa,0.00073,m3,7:00,8:00,214,0.16,\n");
        writer.write(i + ",Sallow Vale Batch Plant,BARN,,,,,,,1.00,fuel\n");
      }
    }
    assertEquals(0, reconcile(order, List.of(file)), err);
    assertEquals(lines / 2, sheet("Concrete loads").size());
    assertEquals(
        lines / 2, column("Findings", "Finding").stream().filter("fee not listed"::equals).count());
    CSVRecord barn =
        sheet("Matched").stream()
            .filter(row -> row.get("Job").equals("BARN") && row.get("Material").equals("concrete"))
            .findFirst()
            .orElseThrow();
    assertEquals("as ordered", barn.get("Standing"));
    assertEquals(36.5, Double.parseDouble(barn.get("Delivered")), 1e-6, "sum of 50,000 doubles");
    assertTrue(out.startsWith("100000 ticket rows"), out);
  }
}
