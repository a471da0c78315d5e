package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.book.Layout;

/** Workbooks that another version wrote are read, and told apart by their layout. */
class OtherVersionsTest extends CommandRuns {

  private static final String JOBS = "demo-data/jobs";
  private static final String PRICES = "demo-data/prices";
  private static final String OLDER =
      "a workbook of an older version (layout 1); expected layout "
          + Layout.NUMBER
          + "; it is read by its headings all the same (note)";

  @TempDir Path folder;

  /** Writes another layout into a workbook, or none. */
  private Path bearing(Path workbook, String sheet, String layout) throws IOException {
    Path other = folder.resolve("other-" + layout + "-" + workbook.getFileName());
    try (InputStream from = Files.newInputStream(workbook);
        Workbook book = WorkbookFactory.create(from);
        OutputStream to = Files.newOutputStream(other)) {
      Cell cell = layoutOf(book.getSheet(sheet));
      if (layout.isEmpty()) {
        cell.getRow().removeCell(cell.getRow().getCell(cell.getColumnIndex() - 1));
      } else {
        cell.setCellValue(Double.parseDouble(layout));
      }
      book.write(to);
    }
    return other;
  }

  private static Cell layoutOf(Sheet sheet) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.toString().equals(Layout.LABEL)) {
          return row.getCell(cell.getColumnIndex() + 1);
        }
      }
    }
    throw new AssertionError("no layout on " + sheet.getSheetName());
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aTemplateOfAnotherVersionIsToldApart(boolean priceBook) throws IOException {
    Path template = folder.resolve("template.xlsx");
    assertEquals(
        0,
        priceBook
            ? run("template", "--price-book", "-o", template)
            : run("template", "-o", template),
        err);
    for (String layout : List.of("1", "")) {
      Path older = bearing(template, "Read first", layout);
      assertEquals(0, priceBook ? run("check", JOBS, "--prices", older) : run("check", older), err);
      assertTrue(err.contains(OLDER), err);
    }
    Path newer = bearing(template, "Read first", "99");
    assertEquals(0, priceBook ? run("check", JOBS, "--prices", newer) : run("check", newer), err);
    assertTrue(err.contains("a workbook of a newer version (layout 99)"), err);
    assertEquals(
        0, priceBook ? run("check", JOBS, "--prices", template) : run("check", template), err);
    assertTrue(!err.contains("version"), err);
  }

  @Test
  void anOrderAndItsSupplementOfAnotherVersionAreToldApart() throws IOException {
    Path order = folder.resolve("order.xlsx");
    assertEquals(0, run("estimate", JOBS, "--prices", PRICES, "-o", order), err);
    Path supplement = folder.resolve("supplement.xlsx");
    assertEquals(0, run("revise", order, "demo-data/revised", "-o", supplement), err);
    assertEquals("", err);
    Path out = folder.resolve("out");
    for (Path written : List.of(order, supplement)) {
      Path older = bearing(written, "Read first", "");
      assertEquals(0, run("revise", older, JOBS, "-o", out, "--overwrite"), err);
      assertTrue(err.contains(OLDER), err);
      assertEquals(
          0,
          run(
              "reconcile",
              bearing(written, "Read first", "99"),
              "demo-data/tickets/three-gables.csv",
              "-o",
              folder.resolve("bills"),
              "--overwrite"),
          err);
      assertTrue(err.contains("a newer version (layout 99)"), err);
    }
  }

  @Test
  void aQuotationOfAnotherVersionIsToldApart() throws IOException {
    Path tallow = folder.resolve("tallow.xlsx");
    Path nettle = folder.resolve("nettle.xlsx");
    for (Path quote : List.of(tallow, nettle)) {
      String list = "demo-data/lists/" + (quote.equals(tallow) ? "tallow-bridge" : "nettle-row");
      assertEquals(
          0, run("quote", JOBS, "--prices", list, "-o", quote, "--date", "2027-04-01"), err);
    }
    Path out = folder.resolve("out");
    assertEquals(0, run("compare", tallow, nettle, "-o", out), err);
    assertEquals("", err);
    assertEquals(
        0, run("compare", tallow, bearing(nettle, "Basis", ""), "-o", out, "--overwrite"), err);
    assertTrue(err.contains(OLDER), err);
  }
}
