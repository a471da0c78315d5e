package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pourbook.book.InputSheet;
import org.pourbook.measure.UnitSystem;

/** The lists, warnings and locks of a template, worked out as a spreadsheet program would. */
class TemplateChecksTest {

  /** The longest formula of a check that spreadsheet programs take. */
  private static final int LONGEST = 255;

  private static final int FIRST = TemplateSheet.FIRST_ROW - 1;

  /** A column that no sheet uses. */
  private static final int SCRATCH = 100;

  @TempDir Path folder;
  private XSSFWorkbook workbook = new XSSFWorkbook();

  @BeforeEach
  void write() throws IOException {
    workbook = template(UnitSystem.FT_IN);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void theExampleDrawsNoWarning(UnitSystem units) throws IOException {
    workbook = template(units);
    int seen = 0;
    for (InputSheet input : InputSheet.values()) {
      XSSFSheet sheet = sheet(input.label());
      for (int i = FIRST; i <= sheet.getLastRowNum(); i++) {
        for (Cell cell : cells(sheet.getRow(i))) {
          boolean lists = check(cell).getShowErrorBox();
          if (cell.getCellType() != CellType.BLANK && lists) {
            assertTrue(isValid(cell), name(cell) + " " + cell);
            seen++;
          }
        }
      }
    }
    assertTrue(seen > 100, seen + " cells");
  }

  @ParameterizedTest
  @CsvSource({
    "Sections, Thickness, -4",
    "Sections, Thickness, 101",
    "Sections, Length, 1001",
    "Sections, Count, 1.5",
    "Sections, Waste %, 101",
    "Sections, Drop, -1",
    "Jobs, Pour date, 20000",
    "Pours, Start, 7",
    "Prices, Price, -1",
    "Prices, Pack, 0"
  })
  void aFigureThatCannotBeIsWarnedOf(String sheet, String heading, double figure) {
    Cell cell = cell(sheet, heading, 0);
    cell.setCellValue(figure);
    assertFalse(isValid(cell));
  }

  @ParameterizedTest
  @CsvSource({
    "Jobs, Job, EXAMPLE",
    "Sections, Section, FLOOR",
    "Plates, Section, ATTIC",
    "Joints, Job, NOBODY",
    "Prices, Supplier, Nobody"
  })
  void aCodeThatStandsTwiceOrNowhereIsWarnedOf(String sheet, String heading, String text) {
    if (!sheet.equals("Prices")) {
      put(sheet, "Job", 1, "EXAMPLE");
    }
    assertFalse(isValid(put(sheet, heading, 1, text)));
  }

  @Test
  void thicknessesOfAJobInMetresMayBeHundredsOfMillimetres() {
    put("Jobs", "Units", 0, "m");
    Cell thickness = cell("Sections", "Thickness", 0);
    thickness.setCellValue(400);
    assertTrue(isValid(thickness));
  }

  @Test
  void sectionsAreOfferedByJobAndSizesByMaterial() {
    for (String section : List.of("A", "B", "C")) {
      int row = "ABC".indexOf(section) + 2;
      put("Sections", "Job", row, "OTHER");
      put("Sections", "Section", row, section);
    }
    assertEquals(List.of("FLOOR", "CORNER"), offered(cell("Plates", "Section", 0)));
    put("Plates", "Job", 1, "OTHER");
    assertEquals(List.of("A", "B", "C"), offered(cell("Plates", "Section", 1)));
    assertEquals(List.of("3000 psi"), offered(cell("Jobs", "Mix", 0)));
    put("Extras", "What", 0, "concrete");
    assertEquals(List.of("3000 psi"), offered(cell("Extras", "Size", 0)));
  }

  @Test
  void noCheckIsVolatileOrTooLong() {
    for (InputSheet input : InputSheet.values()) {
      for (XSSFDataValidation check : sheet(input.label()).getDataValidations()) {
        String formula = Objects.requireNonNull(check.getValidationConstraint().getFormula1());
        assertTrue(formula.length() <= LONGEST, formula);
        assertFalse(formula.matches(".*(OFFSET|INDIRECT|TODAY|NOW|RAND)\\(.*"), formula);
      }
    }
  }

  @Test
  void onlyWhatStandsAboveTheRowsIsLockedAndWithoutAPassword() {
    for (InputSheet input : InputSheet.values()) {
      XSSFSheet sheet = sheet(input.label());
      var lock = sheet.getCTWorksheet().getSheetProtection();
      assertTrue(lock.getSheet());
      assertNull(lock.getPassword());
      assertNull(lock.getHashValue());
      assertFalse(lock.getDeleteRows());
      assertFalse(lock.getInsertRows());
      for (Row row : sheet) {
        for (Cell cell : row) {
          assertEquals(row.getRowNum() < FIRST, cell.getCellStyle().getLocked(), name(cell));
        }
      }
      assertFalse(sheet.getColumnStyle(0).getLocked());
      assertFalse(sheet.getColumnStyle(input.columns().size()).getLocked());
      assertFalse(sheet.getColumnStyle(16_383).getLocked());
    }
  }

  /** Returns a row's cells, which may then be added to. */
  private static List<Cell> cells(Row row) {
    List<Cell> cells = new ArrayList<>();
    row.forEach(cells::add);
    return cells;
  }

  private static String name(Cell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress();
  }

  private boolean isValid(Cell cell) {
    var constraint = check(cell).getValidationConstraint();
    String[] words = constraint.getExplicitListValues();
    if (words != null) {
      return List.of(words).contains(cell.getStringCellValue());
    }
    String formula = formula(cell);
    boolean list = constraint.getValidationType() == DataValidationConstraint.ValidationType.LIST;
    String asked = list ? "COUNTIF(" + formula + "," + cell.getAddress() + ")>0" : formula;
    return evaluated(cell, asked).getBooleanValue();
  }

  private List<String> offered(Cell cell) {
    String list = formula(cell);
    int count = (int) evaluated(cell, "ROWS(" + list + ")").getNumberValue();
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> evaluated(cell, "INDEX(" + list + "," + i + ")").getStringValue())
        .toList();
  }

  /** Returns the formula of a cell's check as it counts in the cell's row. */
  private static String formula(Cell cell) {
    return check(cell)
        .getValidationConstraint()
        .getFormula1()
        .replaceAll(
            "(\\$[A-Z]+)" + TemplateSheet.FIRST_ROW + "\\b", "$1" + (cell.getRowIndex() + 1));
  }

  private CellValue evaluated(Cell cell, String formula) {
    Cell scratch = cell.getRow().createCell(SCRATCH);
    scratch.setCellFormula(formula);
    CellValue value = new XSSFFormulaEvaluator(workbook).evaluate(scratch);
    cell.getRow().removeCell(scratch);
    return value;
  }

  private static XSSFDataValidation check(Cell cell) {
    return ((XSSFSheet) cell.getSheet())
        .getDataValidations().stream()
            .filter(check -> check.getRegions().getCellRangeAddress(0).isInRange(cell))
            .findFirst()
            .orElseThrow();
  }

  /** Returns a cell by its heading, in a row counted from the first to fill in. */
  private Cell cell(String name, String heading, int row) {
    Row headings = sheet(name).getRow(FIRST - 1);
    int column =
        IntStream.range(0, headings.getLastCellNum())
            .filter(i -> matches(headings.getCell(i).getStringCellValue(), heading))
            .findFirst()
            .orElse(0);
    Row there = sheet(name).getRow(FIRST + row);
    return (there == null ? sheet(name).createRow(FIRST + row) : there)
        .getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  /** Writes a new cell: the library keeps an inline text beside one that is set later. */
  private Cell put(String name, String heading, int row, String text) {
    Cell cell = cell(name, heading, row);
    Cell fresh = cell.getRow().createCell(cell.getColumnIndex());
    fresh.setCellValue(text);
    return fresh;
  }

  private static boolean matches(String title, String heading) {
    return title.replaceAll("\\*?( \\(.*\\))?$", "").equals(heading);
  }

  private XSSFSheet sheet(String name) {
    return Objects.requireNonNull(workbook.getSheet(name));
  }

  private XSSFWorkbook template(UnitSystem units) throws IOException {
    Path file = folder.resolve(units + ".xlsx");
    Templates.writeJobs(file, units, true);
    try (var in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
