package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.book.in.JobsReader;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimates;
import org.pourbook.problem.Checked;

/**
 * The demo's order workbook worked out by two programs of others, as it is and after an office has
 * changed prices, an allowance, a waste and sizes; the latter beside the tool's own run on an input
 * with the same changes.
 */
class RecalculationTest {

  /** Floating sums are added up in another order. */
  private static final double SAME = 1e-9;

  @TempDir Path folder;

  private Path order(String jobs, String prices, String name) throws IOException {
    Path file = folder.resolve(name);
    Checked<Batch> read = JobsReader.read(Path.of(jobs), Optional.of(Path.of(prices)));
    assertEquals(List.of(), read.problems());
    OrderWorkbook.write(
        Estimates.estimate(
            read.value(), read.problems(), new FirstFitPlanner(), "test", done -> {}),
        file,
        false);
    Files.copy(file, Path.of("target", name), StandardCopyOption.REPLACE_EXISTING);
    return file;
  }

  private Path demo() throws IOException {
    return order("demo-data/jobs", "demo-data/prices", "demo.xlsx");
  }

  @Test
  void anEvaluatorGivesEveryStoredValueOfTheDemo() throws IOException {
    Compared compared = new Compared();
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo())) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              CellValue value = evaluator.evaluate(cell);
              String where = sheet.getSheetName() + "!" + cell.getAddress() + " " + cell;
              assertEquals(cell.getCachedFormulaResultType(), value.getCellType(), where);
              compared.add(where, cell, text(value), value.getNumberValue());
            }
          }
        }
      }
    }
    compared.tell("the evaluator");
  }

  private static String text(CellValue value) {
    return value.getCellType() == CellType.STRING ? value.getStringValue() : "";
  }

  @Test
  void aSpreadsheetProgramGivesEveryStoredValueOfTheDemo() throws Exception {
    assumeTrue(SpreadsheetProgram.isOnPath(), SpreadsheetProgram.NAME + " is not on the PATH");
    Path demo = demo();
    Path again = new SpreadsheetProgram(folder).recalculated(demo);
    Compared compared = new Compared();
    try (XSSFWorkbook ours = SpreadsheetProgram.open(demo);
        XSSFWorkbook theirs = SpreadsheetProgram.open(again)) {
      for (Sheet sheet : ours) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            Row there = theirs.getSheet(sheet.getSheetName()).getRow(row.getRowNum());
            Cell other = there == null ? null : there.getCell(cell.getColumnIndex());
            if (other != null && typeOf(cell) != CellType.BLANK) {
              String where = sheet.getSheetName() + "!" + cell.getAddress() + " " + cell;
              assertEquals(typeOf(cell), typeOf(other), where);
              compared.add(where, cell, words(other), number(other));
            }
          }
        }
      }
    }
    compared.tell("the program");
  }

  private static final class Compared {
    private int cells;
    private int formulas;
    private double largest;

    void add(String where, Cell ours, String text, double number) {
      cells++;
      formulas += ours.getCellType() == CellType.FORMULA ? 1 : 0;
      if (typeOf(ours) == CellType.NUMERIC) {
        double stored = ours.getNumericCellValue();
        double off = Math.abs(stored - number) / Math.max(1, Math.abs(stored));
        largest = Math.max(largest, off);
        assertTrue(off <= SAME, where + ": stored " + stored + ", worked out " + number);
      } else {
        assertEquals(words(ours), text, where);
      }
    }

    void tell(String who) {
      System.out.println(
          who + ": " + cells + " cells, " + formulas + " formulas, largest difference " + largest);
      assertTrue(formulas > 1000, "only " + formulas + " formulas");
    }
  }

  private static CellType typeOf(Cell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? cell.getCachedFormulaResultType()
        : cell.getCellType();
  }

  private static String words(Cell cell) {
    return typeOf(cell) == CellType.STRING
        ? cell.getStringCellValue()
        : typeOf(cell) == CellType.BOOLEAN ? cell.getBooleanCellValue() + "" : "";
  }

  private static double number(Cell cell) {
    return typeOf(cell) == CellType.NUMERIC ? cell.getNumericCellValue() : Double.NaN;
  }
}
