package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.book.in.JobsReader;
import org.pourbook.book.in.OrderReader;
import org.pourbook.book.in.UnreadableFile;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimate;
import org.pourbook.desk.Estimates;
import org.pourbook.desk.OrderBook;
import org.pourbook.problem.Checked;

/** Tables that go on in further sheets, here of 100 records. */
class LongTablesTest {

  private static final int MOST = 100;

  @TempDir Path folder;

  private static Estimate estimate;

  @BeforeAll
  static void estimate() throws IOException {
    Checked<Batch> read =
        JobsReader.read(
            Path.of("demo-data/jobs"), Optional.of(Path.of("demo-data/prices")), Optional.empty());
    estimate =
        Estimates.estimate(
            read.value(), read.problems(), new FirstFitPlanner(), "test", done -> {});
  }

  private Path write(int most) throws IOException {
    Path file = folder.resolve("order-" + most + ".xlsx");
    RulesSheet rules = new RulesSheet(RuleClasses.all(), Documents.read());
    WorkbookFile.write(
        OrderSheets.of(estimate, rules, most), OrderWorkbook.paper(estimate), "test", file, false);
    return file;
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  @Test
  void formulasFindTheirCellsOnEverySheet() throws IOException {
    int across = 0;
    try (XSSFWorkbook workbook = open(write(MOST))) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              across += cell.getCellFormula().contains("(2)'!") ? 1 : 0;
              OrderWorkbookTest.assertGives(cell, evaluator.evaluate(cell));
            }
          }
        }
      }
    }
    assertTrue(across > 20, "only " + across + " formulas name a second sheet");
  }

  @Test
  void noSheetIsLongerAndNoJobStraddlesTwo() throws IOException {
    try (XSSFWorkbook workbook = open(write(MOST))) {
      Set<String> jobs = new HashSet<>();
      int parts = 0;
      for (Sheet sheet : workbook) {
        if (sheet.getSheetName().startsWith(TakeoffSheet.NAME)) {
          parts++;
          assertTrue(sheet.getLastRowNum() < MOST + SheetSpec.HEADING_ROW, sheet.getSheetName());
          Set<String> here = new HashSet<>();
          for (int i = SheetSpec.FIRST_ROW - 1; i <= sheet.getLastRowNum(); i++) {
            here.add(sheet.getRow(i).getCell(0).getStringCellValue());
          }
          assertTrue(here.stream().noneMatch(jobs::contains), here + " after " + jobs);
          jobs.addAll(here);
        }
      }
      assertTrue(parts > 1, parts + " part");
      assertNotNull(workbook.getSheet("Takeoff (2)"));
      assertEquals(estimate.takeOffs().size(), jobs.size());
    }
  }

  @Test
  void inputAndOrderAreReadBackFromAllSheets() throws IOException {
    Checked<OrderBook> one = OrderReader.read(write(SheetSpec.MOST_RECORDS));
    Path long5 = folder.resolve("long.xlsx");
    RulesSheet rules = new RulesSheet(RuleClasses.all(), Documents.read());
    List<org.pourbook.book.out.Sheet> sheets =
        OrderSheets.of(estimate, rules, MOST).stream()
            .map(sheet -> sheet instanceof SheetSpec<?> spec ? givenInShort(spec) : sheet)
            .toList();
    WorkbookFile.write(sheets, OrderWorkbook.paper(estimate), "test", long5, false);
    Checked<OrderBook> many = OrderReader.read(long5);

    assertEquals(one.problems(), many.problems());
    assertEquals(one.value().ordered(), many.value().ordered());
    assertEquals(one.value().batch().jobs(), many.value().batch().jobs());
    assertEquals(one.value().batch().given(), many.value().batch().given());
    assertTrue(rowsOf("Prices") > 10, "too few prices to fill three sheets");
    try (XSSFWorkbook workbook = open(long5)) {
      assertNotNull(workbook.getSheet("Given Prices (3)"));
      assertNotNull(workbook.getSheet("Materials (2)"));
    }
  }

  private static org.pourbook.book.out.Sheet givenInShort(SheetSpec<?> spec) {
    return spec.name().startsWith("Given ") ? spec.inSheetsOf(5) : spec;
  }

  private int rowsOf(String sheet) {
    return estimate.batch().given().stream()
        .filter(given -> given.name().equals(sheet))
        .mapToInt(given -> given.rows().size())
        .sum();
  }

  @Test
  void aCopyThatSomebodyMadeOfASheetIsNotReadWithIt() throws IOException {
    Path copied = folder.resolve("copied.xlsx");
    try (XSSFWorkbook workbook = open(write(SheetSpec.MOST_RECORDS));
        var out = Files.newOutputStream(copied)) {
      workbook.cloneSheet(workbook.getSheetIndex("Materials"), "Materials (2)");
      workbook.write(out);
    }
    Checked<OrderBook> read = OrderReader.read(copied);
    assertEquals(
        OrderReader.read(folder.resolve("order-" + SheetSpec.MOST_RECORDS + ".xlsx"))
            .value()
            .ordered(),
        read.value().ordered());
    assertTrue(
        read.problems().stream().anyMatch(problem -> problem.found().equals("sheet Materials (2)")),
        read.problems().toString());
  }

  @Test
  void aSheetThatGoesOnWithOtherHeadingsIsRefused() throws IOException {
    Path changed = folder.resolve("changed.xlsx");
    try (XSSFWorkbook workbook = open(write(MOST));
        var out = Files.newOutputStream(changed)) {
      workbook
          .getSheet("Materials (2)")
          .getRow(SheetSpec.HEADING_ROW - 1)
          .getCell(1)
          .setCellValue("Stuff");
      workbook.write(out);
    }
    UnreadableFile refused = assertThrows(UnreadableFile.class, () -> OrderReader.read(changed));
    String said = String.valueOf(refused.getMessage());
    assertTrue(said.contains("Materials (2) goes on from Materials but has other headings"), said);
  }
}
