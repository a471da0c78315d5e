package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changed jobs after the order: the demo's order, its jobs, and its jobs as revised. */
class ReviseCommandTest extends CommandRuns {

  private static final Path JOBS = Path.of("demo-data/jobs");
  private static final Path REVISED = Path.of("demo-data/revised");

  @TempDir static Path orders;
  private static Path order;
  private static Path orderFolder;

  @TempDir Path folder;

  @BeforeAll
  static void estimateTheDemo() {
    order = orders.resolve("order.xlsx");
    orderFolder = orders.resolve("order");
    for (Path target : List.of(order, orderFolder)) {
      StringWriter err = new StringWriter();
      int status =
          Main.commandLine()
              .setOut(new PrintWriter(new StringWriter()))
              .setErr(new PrintWriter(err))
              .execute(
                  "estimate",
                  JOBS.toString(),
                  "--prices",
                  "demo-data/prices",
                  "-o",
                  target.toString());
      assertEquals(0, status, err.toString());
    }
  }

  private int revise(Path earlier, Path jobs) {
    return run("revise", earlier, jobs, "-o", folder.resolve("found"), "--overwrite");
  }

  private List<CSVRecord> sheet(String name) throws IOException {
    return sheet(folder.resolve("found"), name);
  }

  static List<CSVRecord> sheet(Path book, String name) throws IOException {
    CSVFormat headed = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in = Files.newBufferedReader(book.resolve(name + ".csv"));
        CSVParser parser = CSVParser.parse(in, headed)) {
      return parser.getRecords();
    }
  }

  private static BigDecimal sum(List<CSVRecord> rows, String heading) {
    return rows.stream()
        .map(row -> row.get(heading))
        .filter(cell -> !cell.isEmpty())
        .map(BigDecimal::new)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Returns a copy of a folder of CSV files with one text replaced in one of them. */
  private Path changed(Path from, String file, String text, String by) throws IOException {
    Path to = Files.createDirectories(folder.resolve("changed"));
    try (Stream<Path> files = Files.list(from)) {
      for (Path one : files.toList()) {
        Files.copy(one, to.resolve(one.getFileName().toString()));
      }
    }
    Path target = to.resolve(file);
    String before = Files.readString(target);
    assertTrue(before.contains(text), text);
    Files.writeString(target, before.replaceFirst(Pattern.quote(text), by));
    return to;
  }

  private List<String> rowsOf(String job) throws IOException {
    return sheet("Materials").stream()
        .filter(row -> row.get("Job").equals(job))
        .map(row -> row.get("Order besides") + row.get("Send back") + row.get("Standing"))
        .distinct()
        .toList();
  }

  @Test
  void unchangedJobsOrderNothing() throws IOException {
    assertEquals(0, revise(order, JOBS), err);
    assertEquals("", err);
    assertTrue(out.startsWith("0 changes, 0.00 ordered besides, 0.00 to send back"), out);
    assertEquals(List.of(), sheet("Changes found"));
    assertEquals(List.of(), sheet("Orders"));
    assertEquals(List.of(), sheet("Loads"));
    assertEquals(List.of(), sheet("Cut list"));
    assertEquals(List.of(), sheet("Bolts"));
    assertTrue(sheet("Materials").size() > 100);
    for (CSVRecord row : sheet("Materials")) {
      assertEquals(row.get("Ordered before"), row.get("Needed now"), row.toString());
    }
    List<CSVRecord> summary = sheet(orderFolder, "Summary");
    assertEquals(sum(summary, "Total"), sum(sheet("Summary"), "Total"));
  }

  @Test
  void theLateChangesOfTheDemoAreFoundWithWhoAskedForThem() throws IOException {
    assertEquals(0, revise(order, REVISED), err);
    List<String> cells =
        sheet("Changes found").stream()
            .filter(row -> !row.get("What").equals("added"))
            .map(
                row ->
                    Stream.of("Job", "Section", "What", "Before", "Now", "Change")
                        .map(row::get)
                        .collect(Collectors.joining("|")))
            .toList();
    assertEquals(
        List.of(
            "TERRACE|TERRACE|Length|20'|24'"
                + "|C1: Terrace four feet longer for a second table (taken up)",
            "BARN|APRON|Count|2|1|C1: One door less (taken up)",
            "EXTENSION|FLOOR|Width|12'|14'|C1: Kitchen two feet wider (taken up)",
            "EXTENSION|FLOOR|Length|11'-6 1/2\"|13'-6 1/2\"|C1: Kitchen two feet wider (taken up)"),
        cells);
    assertEquals(List.of("00not changed"), rowsOf("BAKERY"));
    assertEquals(List.of("00not changed"), rowsOf("PAVILION"));
  }

  @Test
  void moneyAgreesToTheCent() throws IOException {
    assertEquals(0, revise(order, REVISED), err);
    List<CSVRecord> summary = sheet("Summary");
    BigDecimal besides =
        sum(summary, "Goods besides")
            .add(sum(summary, "Fees besides"))
            .add(sum(summary, "Tax besides"));
    BigDecimal back = sum(summary, "Sent back").add(sum(summary, "Tax on it"));
    assertEquals(besides, sum(sheet("Order totals"), "Total"));
    assertEquals(sum(sheet("Materials"), "Amount"), sum(summary, "Goods besides"));
    assertEquals(sum(sheet("Materials"), "Credit"), sum(summary, "Sent back"));
    assertEquals(sum(summary, "Earlier total").add(besides).subtract(back), sum(summary, "Total"));
    assertEquals(sum(sheet(orderFolder, "Summary"), "Total"), sum(summary, "Earlier total"));
  }

  @Test
  void earlierAndSupplementHoldWhatAFreshEstimateNeeds() throws IOException {
    assertEquals(0, revise(order, REVISED), err);
    Path fresh = folder.resolve("fresh");
    assertEquals(0, run("estimate", REVISED, "--prices", "demo-data/prices", "-o", fresh), err);
    Map<String, Double> inAll = new TreeMap<>();
    for (CSVRecord row : sheet("Materials")) {
      double packs = Double.parseDouble(row.get("Packs"));
      inAll.merge(key(row), packs * Double.parseDouble(row.get("Pack holds")), Double::sum);
    }
    int compared = 0;
    for (CSVRecord row : sheet(fresh, "Materials")) {
      boolean cut = row.get("Material").equals("form board") || row.get("Material").equals("bar");
      boolean first = !row.get("Net").isEmpty();
      boolean shared = row.get("Job").equals("GARAGE") || row.get("Job").equals("TERRACE");
      if (!cut && first && !shared) {
        double net = Double.parseDouble(row.get("Net"));
        assertTrue(inAll.getOrDefault(key(row), 0.0) >= net - 1e-9, row.toString());
        compared++;
      }
      if (row.get("Material").equals("concrete")) {
        assertEquals(Double.parseDouble(row.get("Packs")), inAll.get(key(row)), row.toString());
      }
    }
    assertTrue(compared > 40, "only " + compared);
  }

  private static String key(CSVRecord row) {
    return row.get("Job") + " " + row.get("Material") + " " + row.get("Size");
  }

  @Test
  void aSupplementCanBeRevisedAgain() throws IOException {
    Path first = folder.resolve("first.xlsx");
    assertEquals(0, run("revise", order, REVISED, "-o", first), err);
    String total = out.replaceAll(".*new total ([0-9.]+).*\\R?", "$1");
    assertEquals(0, revise(first, REVISED), err);
    assertTrue(out.startsWith("0 changes, 0.00 ordered besides, 0.00 to send back"), out);
    assertTrue(out.contains("new total " + total), out + total);
    assertEquals(0, revise(first, JOBS), err);
    assertTrue(sheet("Orders").get(0).get("Order").compareTo("PB-0") > 0);
    List<CSVRecord> concrete =
        sheet("Materials").stream()
            .filter(row -> row.get("Material").equals("concrete"))
            .filter(row -> row.get("Job").equals("TERRACE"))
            .toList();
    assertEquals("5", concrete.get(0).get("Ordered before"));
    assertEquals("4.25", concrete.get(0).get("Needed now"));
    assertEquals("0.75", concrete.get(0).get("Send back"));
  }

  @Test
  void numbersOfOrdersGoOnWhereTheEarlierOnesEnd() throws IOException {
    assertEquals(0, revise(order, REVISED), err);
    List<CSVRecord> earlier = sheet(orderFolder, "Orders");
    String last = earlier.get(earlier.size() - 1).get("Order");
    int next = Integer.parseInt(last.substring(3)) + 1;
    assertEquals(String.format("PB-%03d", next), sheet("Orders").get(0).get("Order"));
  }

  @Test
  void packsThatTheOfficeChangedAreWhatWasOrdered() throws IOException {
    List<CSVRecord> rows = sheet(orderFolder, "Materials");
    CSVRecord concrete =
        rows.stream().filter(row -> row.get("Material").equals("concrete")).findFirst().get();
    String cells = concrete.get("Packs") + "," + concrete.get("Order unit");
    Path edited = changed(orderFolder, "Materials.csv", cells, "99,yd3");
    assertEquals(0, revise(edited, JOBS), err);
    CSVRecord row =
        sheet("Materials").stream().filter(one -> key(one).equals(key(concrete))).findFirst().get();
    assertEquals("99", row.get("Ordered before"));
    assertEquals("0", row.get("Send back"));
    assertEquals(List.of(), sheet("Orders"));
  }

  @Test
  void anOrderThatCannotBeReadLeavesItsJobAsOrdered() throws IOException {
    CSVRecord barn =
        sheet(orderFolder, "Materials").stream()
            .filter(row -> row.get("Job").equals("BARN"))
            .findFirst()
            .get();
    String cells = barn.get("Packs") + "," + barn.get("Order unit") + "," + barn.get("Unit price");
    Path damaged = changed(orderFolder, "Materials.csv", cells, "#REF!,m3,214");
    assertEquals(3, revise(damaged, REVISED));
    assertTrue(err.contains("Materials.csv!"), err);
    assertTrue(err.contains("#REF!"), err);
    assertEquals(List.of("00left as ordered, see Problems"), rowsOf("BARN"));
    assertTrue(rowsOf("EXTENSION").size() > 1);
    assertTrue(
        sheet("Problems").stream()
            .anyMatch(
                row -> row.get("Job").equals("BARN") && row.get("Effect").equals("job left out")));
  }

  @Test
  void aJobThatCannotBeReadNowIsLeftAsOrdered() throws IOException {
    Path bad =
        changed(
            REVISED, "Sections.csv", "BARN,APRON,slab,outside,1", "BARN,APRON,slab,outside,none");
    assertEquals(3, revise(order, bad));
    assertTrue(err.contains("Sections.csv!"), err);
    assertEquals(List.of("00left as ordered, see Problems"), rowsOf("BARN"));
    List<CSVRecord> barn =
        sheet("Summary").stream().filter(row -> row.get("Job").equals("BARN")).toList();
    assertEquals(barn.get(0).get("Earlier total"), barn.get(0).get("Total"));
  }

  @Test
  void aJobThatIsPouredOnAnotherDayTellsWhomToAskToMoveTheirOrders() throws IOException {
    assertEquals(
        0,
        revise(order, changed(JOBS, "Jobs.csv", "Fennick\",2027-05-11", "Fennick\",2027-05-18")),
        err);
    assertEquals(
        "Jobs.csv!A6: found poured 2027-05-11 when it was ordered, 2027-05-18 now; expected its"
            + " orders moved to the new day: ask Anvil and Oak Supply, Quarrel Creek Concrete,"
            + " Three Gables Lumber (note)",
        err.strip());
    assertEquals(List.of(), sheet("Orders"));
  }

  @Test
  void aJobUnderANewCodeIsToldToBeLikeTheOneThatIsGone() throws IOException {
    Path renamed = changed(JOBS, "Jobs.csv", "TERRACE,", "PATIO,");
    for (String sheet : List.of("Sections.csv", "Joints.csv", "Plates.csv", "Pours.csv")) {
      Path file = renamed.resolve(sheet);
      Files.writeString(file, Files.readString(file).replaceAll("(?m)^TERRACE,", "PATIO,"));
    }
    assertEquals(0, revise(order, renamed), err);
    assertTrue(
        err.contains("found job TERRACE is gone, and new job PATIO has the same sections"), err);
  }

  @Test
  void stockThatWasOnHandIsToldForItIsNotCountedAgain() throws IOException {
    Path yard = folder.resolve("yard.csv");
    Files.writeString(yard, "Material,Size,Stock length,Pieces\nbar,#4,30',3\n");
    Path with = folder.resolve("with");
    assertEquals(
        0,
        run("estimate", JOBS, "--prices", "demo-data/prices", "--offcuts", yard, "-o", with),
        err);
    assertEquals(0, revise(with, JOBS), err);
    assertTrue(err.contains("pieces of bar #4 on hand"), err);
    assertEquals(1, err.lines().count(), err);
  }

  @Test
  void aSupplementIsReconciledAsAllThatIsOrderedThen() throws IOException {
    assertEquals(0, revise(order, REVISED), err);
    Path tickets = folder.resolve("tickets.csv");
    Files.writeString(
        tickets,
        "Ticket,Date,Supplier,Job,Material,Size,Item,Quantity,Unit,Unit price,Amount\n"
            + "T1,2027-05-13,Anvil and Oak Supply,EXTENSION,anchor bolt,5/8 x 12,AO-AB5812,17,each,"
            + "3.60,61.20\n"
            + "T2,2027-05-04,Sallow Vale Batch Plant,BARN,concrete,25 MPa,SV-25,35.5,m3,214,7597\n");
    assertEquals(
        0, run("reconcile", folder.resolve("found"), tickets, "-o", folder.resolve("bills")), err);
    // 15 bolts were ordered and 2 besides; 36.5 m3 were ordered and 1 sent back.
    assertEquals(
        List.of("BARN 35.5 35.5 7597 0 as ordered", "EXTENSION 17 17 61.2 0 as ordered"),
        sheet(folder.resolve("bills"), "Matched").stream()
            .filter(row -> !row.get("Delivered").equals("0"))
            .map(
                row ->
                    String.join(
                        " ",
                        row.get("Job"),
                        row.get("Ordered"),
                        row.get("Delivered"),
                        row.get("Ordered amount"),
                        row.get("Difference"),
                        row.get("Standing")))
            .sorted()
            .toList());
    assertEquals(
        "17",
        sheet(folder.resolve("bills"), "Matched").stream()
            .filter(row -> row.get("Material").equals("anchor bolt"))
            .filter(row -> row.get("Job").equals("EXTENSION"))
            .map(row -> row.get("Estimated"))
            .findFirst()
            .orElseThrow());
  }

  @Test
  void columnsThatOnlyProgramsReadAreNotPrinted() throws IOException {
    Path target = folder.resolve("supplement.xlsx");
    assertEquals(0, run("revise", order, REVISED, "-o", target), err);
    try (Workbook book = WorkbookFactory.create(target.toFile(), null, true)) {
      String area = book.getPrintArea(book.getSheetIndex("Materials"));
      // Job to Item: columns A to N; Packs and what follows stand outside.
      assertTrue(area.startsWith("Materials!$A$1:$N$"), area);
    }
  }

  @Test
  void jobsWithoutOneThatIsUsableAreStatusFour() throws IOException {
    Path bad = changed(REVISED, "Sections.csv", "Thickness (in)", "Thickness (cm)");
    assertEquals(4, revise(order, bad));
    assertTrue(err.contains("no job was usable"), err);
    assertEquals("", out);
    assertTrue(Files.notExists(folder.resolve("found")));
  }

  @Test
  void anOrderWithLearntPracticeIsRevisedWithIt() throws IOException {
    Path learnt =
        Files.writeString(folder.resolve("learnt.csv"), "Job,Setting,Value\n,Waste allowance,15\n");
    Path with = folder.resolve("with.xlsx");
    String prices = "demo-data/prices";
    assertEquals(
        0, run("estimate", JOBS, "--prices", prices, "--practice", learnt, "-o", with), err);
    Path found = folder.resolve("found");
    assertEquals(0, run("revise", with, JOBS, "--practice", learnt, "-o", found), err);
    assertTrue(out.startsWith("0 changes, 0.00 ordered besides, 0.00 to send back"), out);
    assertEquals(0, revise(with, JOBS), err);
    assertEquals("Practice", sheet("Changes found").get(0).get("Sheet"));
  }

  @Test
  void sheetsThatTheOfficeAddedAreSkippedWithANote() throws IOException {
    Path more = folder.resolve("more.xlsx");
    try (InputStream from = Files.newInputStream(order);
        Workbook workbook = WorkbookFactory.create(from);
        OutputStream to = Files.newOutputStream(more)) {
      workbook.createSheet("Phone list").createRow(0).createCell(0).setCellValue("plant");
      workbook.write(to);
    }
    assertEquals(0, revise(more, JOBS), err);
    assertTrue(err.contains("Phone list"), err);
    assertTrue(!err.contains("older version"), err);
  }

  @Test
  void anOrderOfAnOlderVersionIsReadAndToldApart() throws IOException {
    Path older = folder.resolve("older.xlsx");
    try (InputStream from = Files.newInputStream(order);
        Workbook workbook = WorkbookFactory.create(from);
        OutputStream to = Files.newOutputStream(older)) {
      workbook.removeSheetAt(workbook.getSheetIndex("Checks"));
      workbook.removeSheetAt(workbook.getSheetIndex("Read first"));
      workbook.write(to);
    }
    assertEquals(0, revise(older, JOBS), err);
    assertTrue(err.contains("older version"), err);
  }

  @Test
  void whatIsNoOrderWorkbookIsOneSentence() {
    assertEquals(4, revise(JOBS, REVISED));
    assertEquals(1, err.lines().count(), err);
    assertTrue(err.contains("is no order workbook"), err);
    assertEquals(4, revise(folder.resolve("nowhere.xlsx"), REVISED));
    assertEquals(1, err.lines().count(), err);
    assertEquals(2, run("revise", order));
    assertEquals("", out);
  }

  @Test
  void anInputIsNeverWrittenOver() throws IOException {
    byte[] before = Files.readAllBytes(order);
    assertEquals(4, run("revise", order, REVISED, "-o", order, "--overwrite"));
    assertTrue(Arrays.equals(before, Files.readAllBytes(order)));
  }

  @Test
  void anOrderSavedByAnotherProgramGivesTheSame() throws IOException, InterruptedException {
    Path office = Path.of("/usr/bin/soffice");
    assumeTrue(Files.isExecutable(office), "LibreOffice is not there");
    Path to = Files.createDirectory(folder.resolve("saved"));
    Process process =
        new ProcessBuilder(
                office.toString(),
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                "xlsx",
                "--outdir",
                to.toString(),
                order.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("office.log").toFile())
            .start();
    boolean ended = process.waitFor(3, TimeUnit.MINUTES);
    if (!ended) {
      process.destroyForcibly();
    }
    Path saved = to.resolve("order.xlsx");
    assumeTrue(ended && Files.exists(saved), "LibreOffice did not save it");
    assertEquals(0, revise(order, REVISED), err);
    List<String> ours = rows();
    assertEquals(0, revise(saved, REVISED), err);
    assertEquals("", err);
    assertEquals(ours, rows());
  }

  /** The program keeps fifteen digits of a number. */
  private static String joined(CSVRecord row) {
    return row.stream()
        .map(
            cell ->
                cell.matches("-?\\d+\\.\\d+")
                    ? new BigDecimal(cell)
                        .setScale(6, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                    : cell)
        .collect(Collectors.joining("|"));
  }

  private List<String> rows() throws IOException {
    return Stream.of(
            "Changes found", "Materials", "Orders", "Loads", "Cut list", "Bolts", "Summary")
        .flatMap(
            name -> {
              try {
                return sheet(name).stream().map(ReviseCommandTest::joined);
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            })
        .toList();
  }
}
