package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The supplier's counter over the demo, and the builder's desk when the quotations come back. */
class QuoteCommandTest extends CommandRuns {

  private static final Path JOBS = Path.of("demo-data/jobs");
  private static final Path TALLOW = Path.of("demo-data/lists/tallow-bridge");
  private static final Path NETTLE = Path.of("demo-data/lists/nettle-row");
  private static final String DAY = "2026-11-25";

  @TempDir Path folder;

  /** Quotes and returns the folder of CSV files. */
  private Path quoted(Path jobs, Path list, String name, String date) {
    Path target = folder.resolve(name);
    int status = run("quote", jobs, "--prices", list, "--date", date, "-o", target);
    assertEquals(0, status, err);
    return target;
  }

  private static List<CSVRecord> sheet(Path book, String name) throws IOException {
    CSVFormat headed = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in = Files.newBufferedReader(book.resolve(name + ".csv"));
        CSVParser parser = CSVParser.parse(in, headed)) {
      return parser.getRecords();
    }
  }

  private static BigDecimal sum(List<CSVRecord> rows, String heading, Predicate<CSVRecord> which) {
    return rows.stream()
        .filter(which)
        .map(row -> row.get(heading))
        .filter(text -> !text.isEmpty())
        .map(BigDecimal::new)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static void assertMoney(BigDecimal expected, String found) {
    assertEquals(0, expected.compareTo(new BigDecimal(found)), expected + " and " + found);
  }

  private static List<String> standings(Path quote, String material, String size)
      throws IOException {
    return sheet(quote, "Quotation").stream()
        .filter(row -> row.get("Material").equals(material) && row.get("Size").equals(size))
        .map(row -> row.get("Standing"))
        .distinct()
        .toList();
  }

  private static String request(Path quote) throws IOException {
    return sheet(quote, "Terms").get(0).get("Request");
  }

  @Test
  void aQuotationStandsBesideTheJobsUnderTheSuppliersName() throws IOException {
    Path jobs = folder.resolve("spring.xlsx");
    Files.copy(Path.of("demo-data/jobs.xlsx"), jobs);
    assertEquals(0, run("quote", jobs, "--prices", "demo-data/lists/tallow-bridge.xlsx"), err);
    Path written = folder.resolve("spring-quote-Tallow Bridge Yard.xlsx");
    assertTrue(Files.isRegularFile(written));
    assertTrue(out.endsWith("written to " + written + "." + System.lineSeparator()), out);
    assertTrue(out.startsWith("130 lines asked for, "), out);
    assertEquals("", err);
    assertEquals(4, run("quote", jobs, "--prices", TALLOW));
    assertTrue(err.contains("use --overwrite"), err);
    assertEquals(0, run("quote", jobs, "--prices", TALLOW, "--overwrite", "--quiet"), err);
    assertEquals("", out);
  }

  @Test
  void termsAddUpToTheCentFromTheLines() throws IOException {
    for (Path list : List.of(TALLOW, NETTLE)) {
      Path quote = quoted(JOBS, list, list.getFileName().toString(), DAY);
      List<CSVRecord> lines = sheet(quote, "Quotation");
      List<CSVRecord> stops = sheet(quote, "Deliveries");
      CSVRecord terms = sheet(quote, "Terms").get(0);
      assertMoney(sum(lines, "Amount", row -> true), terms.get("Goods"));
      BigDecimal total =
          List.of("Goods", "Delivery", "Tax").stream()
              .map(heading -> new BigDecimal(terms.get(heading)))
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      assertMoney(total, terms.get("Total"));
      for (CSVRecord stop : stops) {
        String number = stop.get("Delivery no.");
        assertMoney(
            sum(lines, "Amount", row -> row.get("Delivery no.").equals(number)), stop.get("Goods"));
      }
      // BUY-7: the fee for each delivery under the free limit.
      BigDecimal free = new BigDecimal(terms.get("Free from"));
      long charged =
          stops.stream()
              .filter(stop -> new BigDecimal(stop.get("Goods")).compareTo(free) < 0)
              .count();
      assertMoney(
          new BigDecimal(terms.get("Delivery fee")).multiply(BigDecimal.valueOf(charged)),
          sum(stops, "Fee due", stop -> true).toPlainString());
    }
  }

  @Test
  void packsAreWholeOfEachItemOverTheJobsThatShareIt() throws IOException {
    Path quote = quoted(JOBS, TALLOW, "tallow", DAY);
    for (CSVRecord stop : sheet(quote, "Deliveries")) {
      List<CSVRecord> lines =
          sheet(quote, "Quotation").stream()
              .filter(row -> row.get("Delivery no.").equals(stop.get("Delivery no.")))
              .toList();
      for (CSVRecord line : lines) {
        BigDecimal packs =
            sum(
                lines,
                "Packs",
                row ->
                    row.get("Item").equals(line.get("Item"))
                        && row.get("Size").equals(line.get("Size")));
        assertEquals(0, packs.stripTrailingZeros().scale() > 0 ? 1 : 0, line.toString());
      }
    }
  }

  @Test
  void linesAreAnsweredByTheListAndTheDay() throws IOException {
    Path late = quoted(JOBS, NETTLE, "late", DAY);
    assertEquals(List.of("price ran out"), standings(late, "curing compound", ""));
    assertEquals(List.of("instead"), standings(late, "anchor bolt", "1/2 x 10"));
    assertEquals(List.of("not stocked"), standings(late, "concrete", "3000 psi"));
    assertEquals(List.of("as asked"), standings(late, "tie wire", "16 ga"));
    Path early = quoted(JOBS, NETTLE, "early", "2026-10-31");
    assertEquals(List.of("as asked"), standings(early, "curing compound", ""));
    assertEquals("2026-10-31", sheet(early, "Terms").get(0).get("Valid until"));
    assertEquals("2026-12-25", sheet(late, "Terms").get(0).get("Valid until"), "30 days on");
  }

  @Test
  void noMoreIsOfferedThanIsInStock() throws IOException {
    Path quote = quoted(JOBS, TALLOW, "tallow", DAY);
    List<CSVRecord> lines = sheet(quote, "Quotation");
    BigDecimal used = sum(lines, "Packs", row -> row.get("Item").equals("TB-2816"));
    assertTrue(used.compareTo(new BigDecimal(8)) <= 0, used.toPlainString());
    assertTrue(used.signum() > 0);
    BigDecimal shorter = sum(lines, "Packs", row -> row.get("Item").equals("TB-261"));
    assertTrue(shorter.signum() > 0, "the rest comes in 12 ft");
    assertEquals(
        List.of(),
        lines.stream()
            .filter(row -> row.get("Material").equals("form board"))
            .filter(row -> row.get("Standing").equals("not stocked"))
            .toList());
  }

  @Test
  void theRequestIsTheSameWhoeverIsAskedAndFromWhateverFile() throws IOException {
    String request = request(quoted(JOBS, TALLOW, "tallow", DAY));
    assertEquals(request, request(quoted(JOBS, NETTLE, "nettle", "2027-01-31")));
    assertEquals(request, request(quoted(Path.of("demo-data/jobs.xlsx"), TALLOW, "workbook", DAY)));
    Path order = folder.resolve("order.xlsx");
    assertEquals(0, run("estimate", JOBS, "--prices", "demo-data/prices", "-o", order), err);
    assertEquals(request, request(quoted(order, TALLOW, "from-order", DAY)));
    Path changed = changedJobs();
    assertNotEquals(request, request(quoted(changed, TALLOW, "changed", DAY)));
  }

  private Path changedJobs() throws IOException {
    Path changed = Files.createDirectory(folder.resolve("changed-jobs"));
    for (String name : List.of("Jobs", "Sections")) {
      String text = Files.readString(JOBS.resolve(name + ".csv"));
      Files.writeString(changed.resolve(name + ".csv"), text);
    }
    return changed;
  }

  @Test
  void aListOfSeveralSuppliersNeedsAName() throws IOException {
    assertEquals(2, run("quote", JOBS, "--prices", "demo-data/prices"));
    assertTrue(
        err.startsWith(
            "The list holds several suppliers; say whose prices with --supplier: Quarrel Creek"
                + " Concrete, "),
        err);
    assertEquals("", out);
    assertEquals(
        2, run("quote", JOBS, "--prices", "demo-data/prices", "--supplier", "Nobody at all"));
    assertTrue(err.startsWith("The list has no supplier 'Nobody at all': "), err);
    assertEquals(
        0,
        run(
            "quote",
            JOBS,
            "--prices",
            "demo-data/prices",
            "--supplier",
            "quarrel creek concrete",
            "-o",
            folder.resolve("concrete")),
        err);
    CSVRecord terms = sheet(folder.resolve("concrete"), "Terms").get(0);
    assertEquals("Quarrel Creek Concrete", terms.get("Supplier"));
    assertTrue(
        sum(sheet(folder.resolve("concrete"), "Deliveries"), "Truck fees", row -> true).signum()
            > 0,
        "trucks are charged");
  }

  @Test
  void aWrongCommandLineEndsWithTwoAndAMissingFileWithFour() {
    assertEquals(2, run("quote", JOBS));
    assertTrue(err.contains("--prices"), err);
    assertEquals(2, run("quote", JOBS, "--prices", TALLOW, "--date", "soon"));
    assertTrue(err.contains("'soon'"), err);
    assertEquals(4, run("quote", JOBS, "--prices", folder.resolve("nothing.xlsx")));
    assertTrue(err.contains("nothing.xlsx was not found"), err);
    assertEquals(2, run("compare", folder.resolve("one.xlsx")));
    assertEquals("", out);
  }

  @Test
  void aBadRowOfTheListIsToldWithItsCellAndTheRestIsQuoted() throws IOException {
    Path list = Files.createDirectory(folder.resolve("list"));
    Files.writeString(
        list.resolve("Prices.csv"),
        """
        Material,Size,Supplier,Unit,Price
        tie wire,16 ga,Yard,lb,2.00
        nut,1/2,Yard,each,cheap
        """);
    assertEquals(3, run("quote", JOBS, "--prices", list, "-o", folder.resolve("bad")));
    assertTrue(err.contains("Prices.csv!E3: found cheap"), err);
    assertEquals(List.of("as asked"), standings(folder.resolve("bad"), "tie wire", "16 ga"));
    assertEquals(List.of("not stocked"), standings(folder.resolve("bad"), "nut", "1/2"));
  }

  @Test
  void theListIsNeverWrittenOver() throws IOException {
    Path list = folder.resolve("list.xlsx");
    Files.copy(Path.of("demo-data/lists/nettle-row.xlsx"), list);
    byte[] before = Files.readAllBytes(list);
    assertEquals(4, run("quote", JOBS, "--prices", list, "-o", list, "--overwrite"));
    assertArrayEquals(before, Files.readAllBytes(list));
  }

  @Test
  void quotationsOfOneRequestAreComparedToTheCent() throws IOException {
    Path tallow = quoted(JOBS, TALLOW, "tallow", DAY);
    Path nettle = quoted(JOBS, NETTLE, "nettle", DAY);
    Path target = folder.resolve("compared");
    assertEquals(0, run("compare", tallow, nettle, "-o", target), err);
    assertTrue(out.startsWith("2 quotations, "), out);
    List<CSVRecord> ways = sheet(target, "Ways to buy");
    assertEquals(
        List.of("all from Tallow Bridge Yard", "all from Nettle Row Supply", "best split"),
        ways.stream().map(way -> way.get("Way")).toList());
    for (int i = 0; i < 2; i++) {
      CSVRecord terms = sheet(i == 0 ? tallow : nettle, "Terms").get(0);
      for (String heading : List.of("Goods", "Delivery", "Tax", "Total")) {
        assertMoney(new BigDecimal(terms.get(heading)), ways.get(i).get(heading));
      }
      assertEquals(terms.get("Lines not offered"), ways.get(i).get("Lines missing"));
    }
    CSVRecord split = ways.get(2);
    assertEquals("exact: no split of the lines costs less", split.get("Says"));
    assertMoney(sum(sheet(target, "Best split"), "Amount", row -> true), split.get("Goods"));
    List<CSVRecord> lines = sheet(target, "Side by side");
    long nobody = lines.stream().filter(line -> line.get("Best").equals("nobody")).count();
    assertEquals(Long.toString(nobody), split.get("Lines missing"));
    assertMoney(sum(lines, "Nettle Row Supply", row -> true), ways.get(1).get("Goods"));
  }

  @Test
  void whatAStopCostsTheBuilderGoesFromThePracticeIntoTheComparison() throws IOException {
    Path jobs = Files.createDirectory(folder.resolve("far-jobs"));
    try (Stream<Path> sheets = Files.list(JOBS)) {
      for (Path sheet : sheets.toList()) {
        Files.copy(sheet, jobs.resolve(sheet.getFileName().toString()));
      }
    }
    String practice = Files.readString(jobs.resolve("Practice.csv"));
    Files.writeString(
        jobs.resolve("Practice.csv"), practice.stripTrailing() + "\n,Cost of another stop,500,\n");
    Path far = folder.resolve("far");
    assertEquals(
        0,
        run(
            "compare",
            quoted(jobs, TALLOW, "tallow", DAY),
            quoted(jobs, NETTLE, "nettle", DAY),
            "-o",
            far),
        err);
    Path near = folder.resolve("near");
    assertEquals(
        0,
        run(
            "compare",
            quoted(JOBS, TALLOW, "tallow-near", DAY),
            quoted(JOBS, NETTLE, "nettle-near", DAY),
            "-o",
            near),
        err);
    CSVRecord split = sheet(far, "Ways to buy").get(2);
    CSVRecord before = sheet(near, "Ways to buy").get(2);
    assertEquals("0", before.get("Cost of stops"));
    int stops = Integer.parseInt(split.get("Stops"));
    assertEquals(Integer.toString(500 * stops), split.get("Cost of stops"));
    assertTrue(stops < Integer.parseInt(before.get("Stops")), split + " and " + before);
    assertEquals("exact: no split of the lines costs less, its stops counted", split.get("Says"));
  }

  @Test
  void quotationsOfDifferentRequestsOrOfOneSupplierAreRefused() throws IOException {
    Path tallow = quoted(JOBS, TALLOW, "tallow", DAY);
    Path other = quoted(changedJobs(), NETTLE, "other", DAY);
    assertEquals(4, run("compare", tallow, other, "-o", folder.resolve("x")));
    assertTrue(err.contains(tallow + " and " + other + " answer different requests"), err);
    assertEquals(4, run("compare", tallow, tallow, "-o", folder.resolve("x")));
    assertTrue(err.contains("are both of Tallow Bridge Yard"), err);
    assertEquals(4, run("compare", tallow, JOBS, "-o", folder.resolve("x")));
    assertTrue(err.contains("is no quotation"), err);
    assertFalse(Files.exists(folder.resolve("x")));
    assertEquals("", out);
  }

  @Test
  void anAmountThatIsNoNumberIsToldAndItsLineIsMissing() throws IOException {
    Path tallow = quoted(JOBS, TALLOW, "tallow", DAY);
    Path nettle = quoted(JOBS, NETTLE, "nettle", DAY);
    Path lines = tallow.resolve("Quotation.csv");
    List<CSVRecord> before = sheet(tallow, "Quotation");
    String amount = before.get(1).get("Amount");
    String text = Files.readString(lines);
    Files.writeString(lines, text.replaceFirst("," + amount + ",", ",#REF!,"));
    assertEquals(3, run("compare", tallow, nettle, "-o", folder.resolve("x")), err);
    assertTrue(err.contains("Quotation.csv!K3: found #REF!"), err);
    CSVRecord line = sheet(folder.resolve("x"), "Side by side").get(1);
    assertEquals("", line.get("Tallow Bridge Yard"));
  }

  @Test
  void aYesOrNoIsReadHoweverAnOfficeWritesIt() throws IOException {
    List<CSVRecord> ours = allFromTallow("no", "no");
    List<CSVRecord> theirs = allFromTallow("No", "FALSE");
    assertMoney(BigDecimal.ZERO, ours.get(0).get("Tax"));
    for (String heading : List.of("Goods", "Delivery", "Tax", "Total")) {
      assertEquals(ours.get(0).get(heading), theirs.get(0).get(heading), heading);
    }
  }

  /** Returns the ways to buy where Tallow Bridge's lines are written with these answers. */
  private List<CSVRecord> allFromTallow(String taxable, String brought) throws IOException {
    Path tallow = quoted(JOBS, TALLOW, "tallow-" + taxable + brought, DAY);
    Path nettle = quoted(JOBS, NETTLE, "nettle-" + taxable + brought, DAY);
    Path lines = tallow.resolve("Quotation.csv");
    String given = Files.readString(lines);
    String written =
        given.replaceAll(
            "(?m),yes,([\\d.]+),([\\d.]*),(\\d+),(yes|no)(\\r?)$",
            "," + taxable + ",$1,$2,$3," + brought + "$5");
    assertNotEquals(given, written);
    Files.writeString(lines, written);
    Path target = folder.resolve("answers-" + taxable + brought);
    assertEquals(0, run("compare", tallow, nettle, "-o", target), err);
    return sheet(target, "Ways to buy");
  }
}
