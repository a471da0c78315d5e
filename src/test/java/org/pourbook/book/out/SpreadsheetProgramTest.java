package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.JobsReader;
import org.pourbook.book.in.QuotationReader;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Quote;
import org.pourbook.desk.Quotes;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Checked;

/**
 * The order workbook and a quotation in a spreadsheet program of others, where one is on the PATH.
 */
class SpreadsheetProgramTest {

  /** The program adds up in another order. */
  private static final double SAME = 1e-9;

  @TempDir Path folder;
  private Path order;

  @BeforeEach
  void write() throws IOException {
    assumeTrue(SpreadsheetProgram.isOnPath(), SpreadsheetProgram.NAME + " is not on the PATH");
    order = folder.resolve("order.xlsx");
    OrderWorkbook.write(DemoEstimate.both(), order, false);
  }

  private SpreadsheetProgram program() {
    return new SpreadsheetProgram(folder);
  }

  @Test
  void itIsPrintedWithEverySheetOnPages() throws Exception {
    int pages = pages(program().convert(order, "pdf"));
    int sheets = OrderSheets.of(DemoEstimate.both()).size();
    assertTrue(pages >= sheets, pages + " pages of " + sheets + " sheets");
  }

  @Test
  void noBlockOfAShopSheetIsBrokenByTheEndOfAPage() throws Exception {
    var estimate = DemoEstimate.both();
    Path shop = folder.resolve("shop.xlsx");
    WorkbookFile.writeWorkbook(
        List.of(
            new CuttingSheet(estimate.bought().cutSheets()),
            new BoltLayoutSheet(estimate),
            Welcome.order(Set.of(), 2)),
        new Paper(false, "shop"),
        "shop",
        shop,
        false);
    int pages = 0;
    try (XSSFWorkbook workbook = open(shop)) {
      for (Sheet sheet : workbook) {
        pages += sheet.getRowBreaks().length + 1;
      }
    }
    assertEquals(pages, pages(program().convert(shop, "pdf")));
  }

  @Test
  void theChecksOfATemplateOutliveTheProgram() throws Exception {
    Path jobs = folder.resolve("jobs.xlsx");
    Templates.writeJobs(jobs, UnitSystem.FT_IN, false);
    try (XSSFWorkbook ours = open(jobs);
        XSSFWorkbook theirs = open(program().convert(jobs, "xlsx"))) {
      for (InputSheet input : InputSheet.values()) {
        Set<String> before = checks(ours, input);
        assertEquals(input.columns().size(), before.size());
        assertEquals(before, checks(theirs, input));
        assertTrue(theirs.getSheet(input.label()).getProtect());
      }
    }
  }

  /** Returns a line for each check: its column, what it says, and its formula. */
  private static Set<String> checks(XSSFWorkbook workbook, InputSheet input) {
    return workbook.getSheet(input.label()).getDataValidations().stream()
        .map(
            check ->
                check.getRegions().getCellRangeAddress(0).getFirstColumn()
                    + check.getPromptBoxText()
                    + check.getValidationConstraint().getFormula1().replace("TRUE", "1"))
        .collect(Collectors.toSet());
  }

  private static int pages(Path pdf) throws IOException {
    String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    return text.split("/Type\\s*/Page[^s]", -1).length - 1;
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
    Checked<QuotationReader.Read> theirs =
        QuotationReader.read(program().convert(quotation, "xlsx"));
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
    Path again = program().recalculated(order);
    int compared = 0;
    try (XSSFWorkbook ours = SpreadsheetProgram.open(order);
        XSSFWorkbook theirs = SpreadsheetProgram.open(again)) {
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

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
