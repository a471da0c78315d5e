package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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

/**
 * Every line of the demo's Checks says look when what it guards is spoilt, and so does the light on
 * Summary; two programs of others work it out.
 */
class ChecksSheetTest {

  @TempDir static Path folder;
  private static Path demo;

  /** What spoils a line: the demo's workbook is changed as an office might. */
  private interface Spoiled {
    void spoil(XSSFWorkbook workbook, String job);
  }

  /** By the beginning of the line's words. */
  private static final Map<String, Spoiled> SPOILT = new LinkedHashMap<>();

  static {
    SPOILT.put("Materials, Amount =", (w, job) -> typed(w, "Materials", "", "Amount", 9));
    SPOILT.put("Orders, Amount =", (w, job) -> typed(w, "Order totals", "", "Goods", 9));
    SPOILT.put(
        "Summary, Materials and Services = M", (w, j) -> typed(w, "Summary", "", "Services", 9));
    SPOILT.put("Summary, Delivery and fees =", ChecksSheetTest::dearerFeeOfASharedOrder);
    SPOILT.put(
        "Summary, Tax =", (w, job) -> typed(w, "Order totals", "GARAGE, TERRACE", "Tax rate %", 9));
    SPOILT.put("Summary, Total =", (w, job) -> typed(w, "Summary", "", "Total", 9));
    SPOILT.put("Cut list, Pieces =", (w, job) -> typed(w, "Cut list", "", "Pieces of stock", 9));
    SPOILT.put(
        "Materials, rows whose packs hold", (w, job) -> typed(w, "Materials", "", "Packs", 9));
    for (String sheet : List.of("Takeoff", "Materials", "Orders", "Order totals")) {
      SPOILT.put(sheet + ", rows in their places", (w, job) -> sorted(w.getSheet(sheet)));
    }
    SPOILT.put("Given sheets, cells filled", (w, job) -> added(w.getSheet("Given Sections")));
    SPOILT.put("Given cells of no one job", (w, job) -> typed(w, "Given Prices", "", "Price", 9));
    SPOILT.put(
        "Summary, Materials and Services = the",
        (w, job) -> typed(w, "Summary", job, "Materials", 9));
    SPOILT.put("Loads, Volume =", (w, job) -> typed(w, "Materials", job, "Packs", 99));
    SPOILT.put("Given cells as", (w, job) -> typed(w, "Given Sections", job, "Thickness (in)", 9));
  }

  @BeforeAll
  static void writeTheDemo() throws IOException {
    demo = DemoOrder.write(folder.resolve("demo.xlsx"));
  }

  /** Types a number into the first row of a job, or of no matter which. */
  private static void typed(
      XSSFWorkbook workbook, String sheet, String job, String heading, double number) {
    Headed headed = Headed.of(workbook.getSheet(sheet));
    String column =
        headed.at().keySet().stream().filter(h -> h.matches("Jobs?\\*?")).findFirst().orElse("");
    Row row =
        headed.rows().stream()
            .filter(one -> job.isEmpty() || headed.text(one, column).equals(job))
            .findFirst()
            .orElseThrow();
    headed.fresh(row, heading).setCellValue(number);
  }

  private static void dearerFeeOfASharedOrder(XSSFWorkbook workbook, String job) {
    Headed orders = Headed.of(workbook.getSheet("Orders"));
    Row fee =
        orders.rows().stream()
            .filter(row -> orders.text(row, "Kind").equals("fee"))
            .filter(row -> orders.text(row, "Jobs").equals("GARAGE, TERRACE"))
            .findFirst()
            .orElseThrow();
    orders.fresh(fee, "Unit price").setCellValue(999);
  }

  /** Exchanges the first two rows as sorting does: what names its own row names the new one. */
  private static void sorted(Sheet sheet) {
    Row one = sheet.getRow(SheetSpec.FIRST_ROW - 1);
    Row other = sheet.getRow(SheetSpec.FIRST_ROW);
    for (int i = 0; i < one.getLastCellNum(); i++) {
      Object first = content(one.getCell(i), SheetSpec.FIRST_ROW, SheetSpec.FIRST_ROW + 1);
      Object second = content(other.getCell(i), SheetSpec.FIRST_ROW + 1, SheetSpec.FIRST_ROW);
      set(one.createCell(i), second);
      set(other.createCell(i), first);
    }
  }

  private record Formula(String text) {}

  private static Object content(Cell cell, int from, int to) {
    return switch (cell.getCellType()) {
      case FORMULA ->
          new Formula(
              cell.getCellFormula().replaceAll("(?<![$A-Z!])([A-Z]+)" + from + "\\b", "$1" + to));
      case NUMERIC -> cell.getNumericCellValue();
      default -> cell.getStringCellValue();
    };
  }

  private static void set(Cell cell, Object content) {
    if (content instanceof Formula formula) {
      cell.setCellFormula(formula.text());
    } else if (content instanceof Double number) {
      cell.setCellValue(number);
    } else if (!content.equals("")) {
      cell.setCellValue((String) content);
    }
  }

  private static void added(Sheet sheet) {
    sheet.createRow(sheet.getLastRowNum() + 1).createCell(0).setCellValue("BARN");
  }

  private static Spoiled spoiled(String line) {
    return SPOILT.entrySet().stream()
        .filter(one -> line.startsWith(one.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing here spoils " + line));
  }

  private record Line(int row, String job, String what) {}

  private static List<Line> lines() throws IOException {
    List<Line> lines = new ArrayList<>();
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo)) {
      Headed checks = Headed.of(workbook.getSheet("Checks"));
      for (Row row : checks.rows()) {
        assertEquals("ok", checks.text(row, "Light"));
        lines.add(new Line(row.getRowNum(), checks.text(row, "Job"), checks.text(row, "Check")));
      }
    }
    return lines;
  }

  @Test
  void anEvaluatorTurnsEveryLineRed() throws IOException {
    Set<String> used = new LinkedHashSet<>();
    for (Line line : lines()) {
      try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo)) {
        spoiled(line.what()).spoil(workbook, line.job());
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        Headed checks = Headed.of(workbook.getSheet("Checks"));
        Row row = workbook.getSheet("Checks").getRow(line.row());
        assertEquals(
            "look", evaluator.evaluate(checks.cell(row, "Light")).getStringValue(), line::toString);
        Cell light = workbook.getSheet("Summary").getRow(0).getCell(2);
        String all = evaluator.evaluate(light).getStringValue();
        assertTrue(all.startsWith("look: "), () -> line + ": " + all);
      }
      SPOILT.keySet().stream().filter(line.what()::startsWith).findFirst().ifPresent(used::add);
    }
    assertEquals(SPOILT.keySet(), used);
  }

  /** All at once, for the program takes long to start; the evaluator has spoilt them one by one. */
  @Test
  void aSpreadsheetProgramTurnsALineOfEachKindRed() throws Exception {
    assumeTrue(SpreadsheetProgram.isOnPath(), SpreadsheetProgram.NAME + " is not on the PATH");
    Map<String, Line> kinds = new LinkedHashMap<>();
    lines().forEach(line -> kinds.put(line.what(), line));
    Path spoilt = folder.resolve("spoilt.xlsx");
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo);
        OutputStream out = Files.newOutputStream(spoilt)) {
      kinds.values().forEach(line -> spoiled(line.what()).spoil(workbook, line.job()));
      workbook.write(out);
    }
    try (XSSFWorkbook workbook =
        SpreadsheetProgram.open(new SpreadsheetProgram(folder).recalculated(spoilt))) {
      Headed checks = Headed.of(workbook.getSheet("Checks"));
      for (Line line : kinds.values()) {
        Row row = workbook.getSheet("Checks").getRow(line.row());
        assertEquals("look", checks.text(row, "Light"), line::toString);
      }
      String all = workbook.getSheet("Summary").getRow(0).getCell(2).getStringCellValue();
      assertTrue(all.startsWith("look: "), all);
    }
  }

  /** A row that is taken out leaves formulas that name it with an error. */
  @Test
  void anErrorIsNoAgreement() throws IOException {
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo)) {
      Headed takeoff = Headed.of(workbook.getSheet("Takeoff"));
      Row row = Objects.requireNonNull(takeoff.rows().get(40));
      takeoff.fresh(row, "Amount").setCellFormula("1/0");
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      Cell light = workbook.getSheet("Summary").getRow(0).getCell(2);
      assertEquals(CellType.STRING, evaluator.evaluate(light).getCellType());
      String all = evaluator.evaluate(light).getStringValue();
      assertTrue(all.startsWith("look: "), all);
    }
  }
}
