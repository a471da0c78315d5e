package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.book.in.JobsReader;
import org.pourbook.book.in.QuotationReader;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Quote;
import org.pourbook.desk.Quotes;
import org.pourbook.problem.Checked;

/**
 * The order workbook and a quotation in a spreadsheet program of others, where one is on the PATH.
 */
class SpreadsheetProgramTest {

  private static final String PROGRAM = "soffice";

  /** The program adds up in another order. */
  private static final double SAME = 1e-9;

  @TempDir Path folder;
  private Path order;

  @BeforeEach
  void write() throws IOException {
    assumeTrue(isOnPath(), PROGRAM + " is not on the PATH");
    order = folder.resolve("order.xlsx");
    OrderWorkbook.write(DemoEstimate.both(), order, false);
  }

  private static boolean isOnPath() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(place -> Files.isExecutable(Path.of(place, PROGRAM)));
  }

  @Test
  void itIsPrintedWithEverySheetOnPages() throws Exception {
    Path pdf = convert(order, "pdf");
    String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    int pages = text.split("/Type\\s*/Page[^s]", -1).length - 1;
    int sheets = OrderSheets.of(DemoEstimate.both()).size();
    assertTrue(pages >= sheets, pages + " pages of " + sheets + " sheets");
  }

  @Test
  void itWorksOutTheStoredValuesAfresh() throws Exception {
    assertWorkedOutAfresh(order);
  }

  @Test
  void aQuotationIsWorkedOutAfreshAndReadBackAsItWas() throws Exception {
    Path quotation = folder.resolve("quotation.xlsx");
    QuotationWorkbook.write(demoQuote(), quotation, false);
    assertWorkedOutAfresh(quotation);
    Checked<QuotationReader.Read> ours = QuotationReader.read(quotation);
    Checked<QuotationReader.Read> theirs = QuotationReader.read(convert(quotation, "xlsx"));
    assertEquals(List.of(), theirs.problems());
    assertEquals(ours.value().quotation(), theirs.value().quotation());
    assertTrue(ours.value().quotation().rows().size() > 100);
  }

  private static Quote demoQuote() throws IOException {
    Checked<Batch> read =
        JobsReader.readRequest(Path.of("demo-data/jobs"), Path.of("demo-data/lists/tallow-bridge"));
    return Quotes.quote(
        read.value(),
        "Tallow Bridge Yard",
        LocalDate.of(2026, 11, 25),
        read.problems(),
        new FirstFitPlanner(),
        "test");
  }

  private void assertWorkedOutAfresh(Path order) throws Exception {
    Path stripped = folder.resolve("stripped.xlsx");
    strip(order, stripped);
    Path again = convert(stripped, "xlsx");
    int compared = 0;
    try (XSSFWorkbook ours = open(order);
        XSSFWorkbook theirs = open(again)) {
      for (Sheet sheet : ours) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              compared++;
              Row there = theirs.getSheet(sheet.getSheetName()).getRow(row.getRowNum());
              compare(cell, there.getCell(cell.getColumnIndex()));
            }
          }
        }
      }
    }
    assertTrue(compared > 100, "only " + compared + " formulas");
  }

  private static void compare(Cell ours, Cell theirs) {
    String where =
        ours.getSheet().getSheetName() + "!" + ours.getAddress() + " =" + ours.getCellFormula();
    CellType type =
        theirs.getCellType() == CellType.FORMULA
            ? theirs.getCachedFormulaResultType()
            : theirs.getCellType();
    assertEquals(ours.getCachedFormulaResultType(), type, where);
    if (type == CellType.NUMERIC) {
      double stored = ours.getNumericCellValue();
      assertEquals(
          stored, theirs.getNumericCellValue(), SAME * Math.max(1, Math.abs(stored)), where);
    } else {
      assertEquals(ours.getStringCellValue(), theirs.getStringCellValue(), where);
    }
  }

  /** The program trusts stored values, so those of formulas are taken out. */
  private static void strip(Path from, Path to) throws IOException {
    try (ZipFile in = new ZipFile(from.toFile());
        OutputStream file = Files.newOutputStream(to);
        ZipOutputStream out = new ZipOutputStream(file)) {
      for (ZipEntry entry : Collections.list(in.entries())) {
        out.putNextEntry(new ZipEntry(entry.getName()));
        byte[] bytes = in.getInputStream(entry).readAllBytes();
        if (entry.getName().startsWith("xl/worksheets/")) {
          String xml = new String(bytes, StandardCharsets.UTF_8);
          bytes = xml.replaceAll("</f><v>[^<]*</v>", "</f>").getBytes(StandardCharsets.UTF_8);
        }
        out.write(bytes);
        out.closeEntry();
      }
    }
  }

  private Path convert(Path from, String to) throws IOException, InterruptedException {
    Path out = Files.createDirectories(folder.resolve("converted"));
    List<String> command =
        List.of(
            PROGRAM,
            "-env:UserInstallation=" + folder.resolve("profile").toUri(),
            "--headless",
            "--convert-to",
            to,
            "--outdir",
            out.toString(),
            from.toString());
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log.txt").toFile())
            .start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "the program hangs");
    String name = from.getFileName().toString().replaceAll("\\.xlsx$", "." + to);
    assertTrue(Files.exists(out.resolve(name)), Files.readString(folder.resolve("log.txt")));
    return out.resolve(name);
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
