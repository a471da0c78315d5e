package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.desk.Estimate;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.BoltPiece;

/** What is printed for the crew, the first sheet, and the chart on the Summary. */
class ShopSheetsTest {

  private static final Estimate ESTIMATE = DemoEstimate.both();

  @TempDir Path folder;

  @Test
  void everyBoltHasABoxBeforeItsDistance() throws IOException {
    try (XSSFWorkbook workbook = written("order.xlsx")) {
      XSSFSheet sheet = workbook.getSheet(BoltLayoutSheet.NAME);
      int boxes = 0;
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (isBox(cell) && isStrong(row.getCell(cell.getColumnIndex() + 1))) {
            boxes++;
          }
        }
      }
      int bolts =
          ESTIMATE.takeOffs().stream()
              .flatMap(takeOff -> takeOff.boltPieces().stream())
              .map(BoltPiece::positions)
              .mapToInt(List::size)
              .sum();
      assertTrue(bolts > 0);
      assertEquals(bolts, boxes);
    }
  }

  private static boolean isStrong(Cell cell) {
    return cell.getCellStyle() instanceof XSSFCellStyle style && style.getFont().getBold();
  }

  private static boolean isBox(Cell cell) {
    return cell.getCellStyle().getBorderLeft() == BorderStyle.THIN;
  }

  @Test
  void theCuttingSheetTakesAsManyStockPiecesAsTheCutList() throws IOException {
    int inPlans =
        ESTIMATE.bought().cutSheets().stream()
            .flatMap(plan -> plan.patterns().stream())
            .mapToInt(pattern -> pattern.times())
            .sum();
    try (XSSFWorkbook workbook = written("order.xlsx")) {
      int taken = 0;
      for (Row row : workbook.getSheet(CuttingSheet.NAME)) {
        if (row.getCell(0) != null && isBox(row.getCell(0))) {
          taken += Integer.parseInt(row.getCell(1).getStringCellValue().split(" ")[0]);
        }
      }
      assertTrue(inPlans > 0);
      assertEquals(inPlans, taken);
    }
  }

  @Test
  void theChartReadsTheLineOfTotalsAndHoldsItsValues() throws IOException {
    try (XSSFWorkbook workbook = written("order.xlsx")) {
      XSSFSheet summary = workbook.getSheet("Summary");
      XSSFChart chart = summary.getDrawingPatriarch().getCharts().get(0);
      var series = chart.getCTChart().getPlotArea().getBarChartArray(0).getSerArray(0);
      var amounts = series.getVal().getNumRef();
      Row totals = summary.getRow(SheetSpec.TOTAL_ROW - 1);
      Row headings = summary.getRow(SheetSpec.HEADING_ROW - 1);
      int first = -1;
      for (Cell cell : headings) {
        first = cell.getStringCellValue().equals("Materials") ? cell.getColumnIndex() : first;
      }
      String letter = Place.columnName(first);
      String last = Place.columnName(first + 3);
      assertEquals("Summary!$" + letter + "$3:$" + last + "$3", amounts.getF());
      for (int i = 0; i < 4; i++) {
        assertEquals(
            headings.getCell(first + i).getStringCellValue(),
            series.getCat().getStrRef().getStrCache().getPtArray(i).getV());
        assertEquals(
            totals.getCell(first + i).getNumericCellValue(),
            Double.parseDouble(amounts.getNumCache().getPtArray(i).getV()));
      }
      assertEquals(
          0, chart.getCTChart().getPlotArea().getValAxArray(0).getScaling().getMin().getVal());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG"})
  void theBytesAreTheSameInAnyLocale(String tag) throws IOException {
    Locale before = Locale.getDefault();
    OrderWorkbook.write(ESTIMATE, folder.resolve("here.xlsx"), false);
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      OrderWorkbook.write(ESTIMATE, folder.resolve("there.xlsx"), false);
    } finally {
      Locale.setDefault(before);
    }
    WorkbookParts.assertSame(folder.resolve("here.xlsx"), folder.resolve("there.xlsx"));
  }

  @Test
  void theFirstSheetLinksToEverySheetButTheGivenOnesInTheirOrder() throws IOException {
    try (XSSFWorkbook workbook = written("order.xlsx")) {
      assertEquals("Read first", workbook.getSheetName(0));
      List<String> linked = new ArrayList<>();
      for (Row row : workbook.getSheetAt(0)) {
        Cell cell = row.getCell(0);
        if (cell != null && cell.getCellType() == CellType.FORMULA) {
          linked.add(cell.getStringCellValue());
        }
      }
      List<String> sheets = new ArrayList<>();
      for (int i = 1; i < workbook.getNumberOfSheets(); i++) {
        if (!workbook.getSheetName(i).startsWith("Given ")) {
          sheets.add(workbook.getSheetName(i));
        }
      }
      assertEquals(sheets, linked);
    }
  }

  private XSSFWorkbook written(String name) throws IOException {
    Path file = folder.resolve(name);
    OrderWorkbook.write(ESTIMATE, file, false);
    try (var in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
