package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pourbook.book.Heading;

class OrderWorkbookTest {

  /** Floating sums are added up in another order by the evaluator. */
  private static final double SAME = 1e-9;

  /** An empty row, and the rows that the chart covers. */
  private static final int CHART_ROWS = 13;

  @TempDir Path folder;

  private XSSFWorkbook written() throws IOException {
    Path file = folder.resolve("order.xlsx");
    OrderWorkbook.write(DemoEstimate.both(), file, true);
    return open(file);
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  @Test
  void everyFormulaGivesItsStoredValue() throws IOException {
    int formulas = 0;
    try (XSSFWorkbook workbook = written()) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              formulas++;
              assertGives(cell, evaluator.evaluate(cell));
            }
          }
        }
      }
    }
    assertTrue(formulas > 100, "only " + formulas + " formulas");
  }

  static void assertGives(Cell cell, CellValue value) {
    String where = cell.getSheet().getSheetName() + "!" + cell.getAddress() + " =" + cell;
    assertEquals(cell.getCachedFormulaResultType(), value.getCellType(), where);
    if (value.getCellType() == CellType.NUMERIC) {
      double stored = cell.getNumericCellValue();
      assertEquals(stored, value.getNumberValue(), SAME * Math.max(1, Math.abs(stored)), where);
    } else {
      assertEquals(cell.getStringCellValue(), value.getStringValue(), where);
    }
  }

  @Test
  void noTwoHeadingsOfASheetAreAlike() throws IOException {
    for (org.pourbook.book.out.Sheet sheet : OrderSheets.of(DemoEstimate.both())) {
      if (sheet instanceof SheetSpec<?> spec) {
        Set<String> seen = new HashSet<>();
        for (Column<?> column : spec.columns()) {
          assertTrue(
              seen.add(Heading.key(column.heading())), spec.name() + ": " + column.heading());
        }
      }
    }
  }

  @Test
  void theSameEstimateGivesTheSameBytesUnderAnyLocale() throws IOException {
    byte[] first = bytes("first.xlsx");
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertArrayEquals(first, bytes("second.xlsx"));
    } finally {
      Locale.setDefault(usual);
    }
  }

  private byte[] bytes(String name) throws IOException {
    Path file = folder.resolve(name);
    OrderWorkbook.write(DemoEstimate.both(), file, false);
    return Files.readAllBytes(file);
  }

  @Test
  void anOlderOutputIsKeptUnlessItMayBeReplaced() throws IOException {
    Path file = folder.resolve("order.xlsx");
    Files.writeString(file, "older");
    assertThrows(
        FileAlreadyExistsException.class,
        () -> OrderWorkbook.write(DemoEstimate.both(), file, false));
    assertEquals("older", Files.readString(file));
    assertEquals(List.of("order.xlsx"), names(folder));
    OrderWorkbook.write(DemoEstimate.both(), file, true);
    assertTrue(Files.size(file) > 10_000);
    assertEquals(List.of("order.xlsx"), names(folder));
  }

  @Test
  void aPlaceThatCannotBeWrittenLeavesNothingBehind() throws IOException {
    Path file = folder.resolve("file");
    Files.writeString(file, "a file, no folder");
    Path below = file.resolve("order.xlsx");
    assertThrows(IOException.class, () -> OrderWorkbook.write(DemoEstimate.both(), below, false));
    assertEquals(List.of("file"), names(folder));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "=HYPERLINK(\"x\")", "{=1}"})
  void textThatLooksLikeAFormulaStaysText(String text) throws IOException {
    Path file = folder.resolve("order.xlsx");
    OrderWorkbook.write(DemoEstimate.spiteful(text), file, false);
    try (XSSFWorkbook workbook = open(file)) {
      Cell cell = workbook.getSheet("Cautions").getRow(SheetSpec.FIRST_ROW - 1).getCell(2);
      assertEquals(CellType.STRING, cell.getCellType());
      assertEquals(text, cell.getStringCellValue());
      boolean quoted = workbook.getCellStyleAt(cell.getCellStyle().getIndex()).getQuotePrefixed();
      assertEquals(!text.startsWith("{"), quoted);
    }
  }

  @Test
  void everyTableIsPrintedButForWhatOnlyTheScreenNeeds() throws IOException {
    try (XSSFWorkbook workbook = written()) {
      for (org.pourbook.book.out.Sheet sheet : OrderSheets.of(DemoEstimate.both())) {
        int index = workbook.getSheetIndex(sheet.name());
        assertNotNull(workbook.getPrintArea(index), sheet.name());
        assertTrue(workbook.getSheetAt(index).getFitToPage(), sheet.name());
        assertEquals(1, workbook.getSheetAt(index).getPrintSetup().getFitWidth(), sheet.name());
        assertEquals(0, workbook.getSheetAt(index).getPrintSetup().getFitHeight(), sheet.name());
        if (sheet instanceof SheetSpec<?> spec) {
          String last = "$" + org.pourbook.problem.Place.columnName(spec.printedColumns() - 1);
          int lastRow = spec.lastRow() + (spec.name().equals("Summary") ? CHART_ROWS : 0);
          assertTrue(
              workbook.getPrintArea(index).endsWith("!$A$1:" + last + "$" + lastRow),
              workbook.getPrintArea(index));
          assertEquals(
              SheetSpec.HEADING_ROW - 1,
              workbook.getSheetAt(index).getRepeatingRows().getFirstRow(),
              sheet.name());
        }
      }
    }
  }

  @Test
  void aGivenSheetPrintsOnlyColumnsThatAreFilledAndGoesOverTwoPagesRatherThanTiny()
      throws IOException {
    try (XSSFWorkbook workbook = open(DemoOrder.write(folder.resolve("demo.xlsx")))) {
      Sheet sheet = workbook.getSheet("Given Sections");
      String area = workbook.getPrintArea(workbook.getSheetIndex(sheet));
      int last = new AreaReference(area, workbook.getSpreadsheetVersion()).getLastCell().getCol();
      double width = 0;
      for (int column = 0; column <= last; column++) {
        width += sheet.getColumnWidth(column) / 256.0;
        int at = column;
        assertTrue(
            IntStream.rangeClosed(SheetSpec.FIRST_ROW - 1, sheet.getLastRowNum())
                .mapToObj(row -> sheet.getRow(row).getCell(at))
                .anyMatch(cell -> cell.getCellType() != CellType.BLANK),
            "column " + column);
      }
      assertEquals(2, sheet.getPrintSetup().getFitWidth(), "for " + width + " characters");
      assertEquals(1, sheet.getRepeatingColumns().getLastColumn());
      assertEquals(SheetSpec.HEADING_ROW - 1, sheet.getRepeatingRows().getFirstRow());
    }
  }

  @Test
  void aDateOfTheInputHasRoom() throws IOException {
    try (XSSFWorkbook workbook =
        open(
            DemoOrder.write(
                Path.of("demo-data/jobs.xlsx"),
                Path.of("demo-data/prices.xlsx"),
                folder.resolve("demo.xlsx")))) {
      Headed pours = Headed.of(workbook.getSheet("Given Pours"));
      int column = pours.cell(pours.rows().get(0), "Date").getColumnIndex();
      assertTrue(workbook.getSheet("Given Pours").getColumnWidth(column) / 256 >= 13);
    }
  }

  @Test
  void aLongNameDoesNotRunIntoTheNameOfTheSheetAtTheFoot() throws IOException {
    Paper paper = new Paper(false, "Order workbook, job " + "NORTH-".repeat(20));
    Path file = folder.resolve("foot.xlsx");
    WorkbookFile.write(List.of(Welcome.order(Set.of(), 1)), paper, "foot", file, false);
    try (XSSFWorkbook workbook = open(file)) {
      String left = workbook.getSheetAt(0).getFooter().getLeft();
      assertTrue(left.endsWith("…") && left.length() < 50, left);
    }
  }

  /** Given Sections is as wide as the input is. */
  @Test
  void theSentenceOverATableIsNotCutAtTheEdgeOfThePage() {
    for (org.pourbook.book.out.Sheet sheet : OrderSheets.of(DemoEstimate.both())) {
      if (sheet instanceof SheetSpec<?> spec && !spec.name().equals("Given Sections")) {
        int width =
            spec.columns().stream().filter(Column::printed).mapToInt(Column::broadWidth).sum();
        assertEquals(1, TextLines.of(spec.says(), width), spec.name());
      }
    }
  }

  @Test
  void whatOnlyTheScreenNeedsStandsRightOfThePage() {
    SheetSpec<String> spec =
        SheetSpec.portrait(
            "Words",
            "",
            List.of(
                Column.onScreen(Column.text("Length", 5, word -> word)),
                Column.text("Word", 5, word -> word)),
            List.of());
    assertEquals("A", spec.letter("Word"));
    assertEquals("B", spec.letter("Length"));
    assertEquals(1, spec.printedColumns());
  }

  @Test
  void eachOrderBeginsOnItsOwnPage() throws IOException {
    try (XSSFWorkbook workbook = written()) {
      assertEquals(2, workbook.getSheet("Order pages").getRowBreaks().length);
    }
  }

  @Test
  void aFolderGetsOneCsvFileASheetWithoutFormulas() throws IOException {
    Path target = folder.resolve("order");
    OrderWorkbook.write(DemoEstimate.both(), target, false);
    assertTrue(names(target).contains("Given Jobs.csv"));
    List<String> given =
        Files.readAllLines(target.resolve("Given Jobs.csv"), StandardCharsets.UTF_8);
    assertEquals(
        "Job,Description,Pour date,Tax %,Dog on site,Start,From sheet,From row,Job when run,"
            + "Description when run,Pour date when run,Tax % when run,Dog on site when run,"
            + "Start when run,Changed since run",
        given.get(0));
    assertEquals(
        "BAKERY,'=1+1,2027-05-04,5,yes,07:30,Jobs,3,BAKERY,'=1+1,2027-05-04,5,yes,07:30,0",
        given.get(1));
    List<String> orders = Files.readAllLines(target.resolve("Order totals.csv"));
    assertTrue(orders.get(1).contains(",2707.25,95,2707.25,7.5,203.04,3005.29,"), orders.get(1));
    assertThrows(
        FileAlreadyExistsException.class,
        () -> OrderWorkbook.write(DemoEstimate.both(), target, false));
    OrderWorkbook.write(DemoEstimate.both(), target, true);
    assertFalse(names(folder).stream().anyMatch(name -> name.contains("part")));
  }
}
