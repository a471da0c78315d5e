package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
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
    Path pdf = program().convert(order, "pdf");
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
}
