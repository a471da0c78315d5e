package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lights of workbooks without a sheet Checks stand beside the title of a sheet. */
class LightsTest extends CommandRuns {

  private static final int HEADINGS = 3;

  @TempDir Path folder;

  private static int column(Sheet sheet, String heading) {
    for (Cell cell : sheet.getRow(HEADINGS)) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no " + heading + " on " + sheet.getSheetName());
  }

  private static String light(Workbook book, String sheet) {
    Cell light = book.getSheet(sheet).getRow(0).getCell(2);
    return book.getCreationHelper().createFormulaEvaluator().evaluate(light).getStringValue();
  }

  private static void assertTurns(Path file, String lit, String sheet, String heading, String what)
      throws IOException {
    try (Workbook book = WorkbookFactory.create(file.toFile(), null, true)) {
      Cell light = book.getSheet(lit).getRow(0).getCell(2);
      assertEquals("ok: " + what + " agree", light.getStringCellValue());
      assertEquals("ok: " + what + " agree", light(book, lit));
      Row row = book.getSheet(sheet).getRow(HEADINGS + 1);
      row.createCell(column(book.getSheet(sheet), heading)).setCellValue(123456.78);
      assertEquals("look: " + what + " do not agree", light(book, lit), sheet + " " + heading);
      row.createCell(column(book.getSheet(sheet), heading)).setCellFormula("1/0");
      assertEquals("look: " + what + " do not agree", light(book, lit), sheet + " " + heading);
    }
  }

  @Test
  void aSupplementTellsWhetherItsSheetsAgree() throws IOException {
    Path order = folder.resolve("order.xlsx");
    Path supplement = folder.resolve("supplement.xlsx");
    assertEquals(0, run("estimate", "demo-data/jobs", "--prices", "demo-data/prices", "-o", order));
    assertEquals(0, run("revise", order, "demo-data/revised", "-o", supplement), err);
    String what = "Summary, Materials and Order totals";
    assertTurns(supplement, "Summary", "Materials", "Amount", what);
    assertTurns(supplement, "Summary", "Materials", "Credit", what);
    assertTurns(supplement, "Summary", "Order totals", "Total", what);
    assertTurns(supplement, "Summary", "Summary", "Goods besides", what);
  }

  @Test
  void aQuotationTellsWhetherItsSheetsAgree() throws IOException {
    Path quote = folder.resolve("quote.xlsx");
    assertEquals(
        0,
        run(
            "quote",
            "demo-data/jobs",
            "--prices",
            "demo-data/lists/tallow-bridge",
            "-o",
            quote,
            "--date",
            "2027-04-01"),
        err);
    assertTurns(quote, "Quotation", "Deliveries", "Goods", "lines and Deliveries");
  }
}
