package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows as another library reads them. */
class RowsTest {

  @TempDir Path folder;

  /** Cells one below the other in the first column. */
  private record Cells(String name, Look look, List<Cell> cells) implements Sheet {
    @Override
    public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
      for (int i = 0; i < cells.size(); i++) {
        rows.next(i);
        rows.write(0, look, cells.get(i));
      }
    }
  }

  private static byte[] written(Spool spool, Sheet... sheets) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookFile.write(List.of(sheets), new Paper(false, "foot"), "Title", out, spool);
    return out.toByteArray();
  }

  private static XSSFSheet read(Look look, Cell... cells) throws IOException {
    byte[] bytes = written(new Spool(), new Cells("Cells", look, List.of(cells)));
    return new XSSFWorkbook(new ByteArrayInputStream(bytes)).getSheetAt(0);
  }

  private static XSSFCell cell(XSSFSheet sheet, int row) {
    return sheet.getRow(row).getCell(0);
  }

  @Test
  void textsAreReadAsTheyWereWritten() throws IOException {
    String[] texts = {
      "plain",
      " blanks at both ends ",
      "two\nlines\r\nand a\ttab",
      "\n",
      "a < b & c > d \"quoted\" 'too'",
      "]]> &amp; <t>",
      "Ø 20 — 24′-6″ ½ ×",
      "\uD83D\uDE00 beyond",
      "_x0041_ is no A",
      "_x00_x000D_",
      "_x0041",
      "\u00A0no break",
      "x".repeat(32_767),
    };
    Cell[] cells = new Cell[texts.length];
    for (int i = 0; i < texts.length; i++) {
      cells[i] = Cell.of(texts[i]);
    }
    XSSFSheet sheet = read(Look.TEXT, cells);
    for (int i = 0; i < texts.length; i++) {
      assertEquals(texts[i], cell(sheet, i).getStringCellValue());
      assertFalse(cell(sheet, i).getCellStyle().getQuotePrefixed());
    }
  }

  @Test
  void whatXmlCannotHoldIsAQuestionMark() throws IOException {
    XSSFSheet sheet = read(Look.TEXT, Cell.of("a\u0000b\u001Fc\uFFFEd\uD83De\uDE00"));
    assertEquals("a?b?c?d?e?", cell(sheet, 0).getStringCellValue());
  }

  @Test
  void aTextLongerThanACellIsCut() throws IOException {
    String cut = cell(read(Look.TEXT, Cell.of("x".repeat(40_000))), 0).getStringCellValue();
    assertEquals(32_767, cut.length());
    assertTrue(cut.endsWith("x…"), cut.substring(32_760));
  }

  @Test
  void aTextIsNotCutWithinACharacter() throws IOException {
    String text = "x" + "\uD83D\uDE00".repeat(20_000);
    String cut = cell(read(Look.TEXT, Cell.of(text)), 0).getStringCellValue();
    assertEquals(text.substring(0, 32_765) + "…", cut);
  }

  @Test
  void aTextThatLooksLikeAFormulaIsMarkedAsText() throws IOException {
    XSSFCell cell = cell(read(Look.TEXT, Cell.of("=1+1")), 0);
    assertEquals("=1+1", cell.getStringCellValue());
    assertTrue(cell.getCellStyle().getQuotePrefixed());
  }

  @Test
  void numbersAreReadToTheLastBit() throws IOException {
    SplittableRandom random = new SplittableRandom(11);
    double[] numbers = {
      0,
      1,
      -1,
      7,
      10,
      999_999,
      1_000_000,
      -2_147_483_648.0,
      2_147_483_647,
      4e9,
      -4e9,
      1e15,
      1e16,
      0.1,
      -0.75,
      1.0 / 3,
      1e-300,
      1.7e308,
      Double.MIN_VALUE,
      123456789.125,
      random.nextDouble(),
      random.nextLong(),
      random.nextInt(),
      999_999_999_999_999.0
    };
    Cell[] cells = new Cell[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      cells[i] = Cell.of(numbers[i]);
    }
    XSSFSheet sheet = read(Look.NUMBER, cells);
    double[] read = new double[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      read[i] = cell(sheet, i).getNumericCellValue();
    }
    assertArrayEquals(numbers, read, 0);
  }

  @Test
  void aFigureThatIsNoneIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> read(Look.NUMBER, Cell.of(Double.NaN)));
  }

  @Test
  void daysTimesAnswersAndBlanksAreRead() throws IOException {
    XSSFSheet sheet =
        read(
            Look.GIVEN,
            new Cell.Day(LocalDate.of(2026, 2, 28)),
            new Cell.Clock(LocalTime.of(6, 30)),
            new Cell.YesNo(true),
            new Cell.YesNo(false),
            Cell.BLANK);
    assertEquals(
        LocalDate.of(2026, 2, 28), cell(sheet, 0).getLocalDateTimeCellValue().toLocalDate());
    assertEquals("mmm d, yyyy", cell(sheet, 0).getCellStyle().getDataFormatString());
    assertEquals(6.5 / 24, cell(sheet, 1).getNumericCellValue());
    assertEquals("h:mm AM/PM", cell(sheet, 1).getCellStyle().getDataFormatString());
    assertTrue(cell(sheet, 2).getBooleanCellValue());
    assertFalse(cell(sheet, 3).getBooleanCellValue());
    assertEquals(CellType.BLANK, cell(sheet, 4).getCellType());
  }

  @Test
  void formulasAreReadWithTheirStoredValues() throws IOException {
    XSSFSheet sheet =
        read(
            Look.WORDS,
            Cell.formula("IF(A2<>\"a&b\",1,2)", 1.25),
            Cell.formula("\"x \"&\"<y\"", "x <y"),
            Cell.formula("IF(A1=0,\"\",\"\")", ""));
    assertEquals("IF(A2<>\"a&b\",1,2)", cell(sheet, 0).getCellFormula());
    assertEquals(1.25, cell(sheet, 0).getNumericCellValue());
    assertEquals("\"x \"&\"<y\"", cell(sheet, 1).getCellFormula());
    assertEquals("x <y", cell(sheet, 1).getStringCellValue());
    assertEquals("", cell(sheet, 2).getStringCellValue());
  }

  @Test
  void heightsAndPlacesOfRowsAreRead() throws IOException {
    Sheet sheet =
        new Sheet() {
          @Override
          public String name() {
            return "Rows";
          }

          @Override
          public void writeTo(XSSFSheet settings, Rows rows, Paper paper) {
            rows.next(2);
            rows.write(27, Look.TEXT, Cell.of("AB3"));
            rows.next(5);
            rows.height(15.5f);
            assertThrows(IllegalArgumentException.class, () -> rows.next(5));
          }
        };
    byte[] bytes = written(new Spool(), sheet);
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      XSSFSheet read = workbook.getSheetAt(0);
      assertEquals("AB3", read.getRow(2).getCell(27).getStringCellValue());
      assertNull(read.getRow(1));
      assertEquals(15.5f, read.getRow(5).getHeightInPoints());
      assertEquals("A1:AB6", read.getCTWorksheet().getDimension().getRef());
    }
  }

  @Test
  void rowsKeptInAFileGiveTheSameBytes() throws IOException {
    Sheet one = new Cells("One", Look.TEXT, List.of(Cell.of("a"), Cell.of("b".repeat(9_000))));
    Sheet two = new Cells("Two", Look.NUMBER, List.of(Cell.of(1), Cell.of(2)));
    Spool kept = new Spool(100, () -> Spool.opened(Files.createTempFile(folder, "rows", "")));
    try (kept) {
      assertArrayEquals(
          written(new Spool(), one, two, one("Three")), written(kept, one, two, one("Three")));
    }
  }

  @Test
  void aFileThatCannotBeOpenedNamesItsFolder() throws IOException {
    Callable<SeekableByteChannel> missing =
        () -> {
          throw new NoSuchFileException("rows");
        };
    try (Spool spool = new Spool(100, missing)) {
      IOException told = assertThrows(IOException.class, () -> spool.write(new byte[101]));
      assertTrue(told.toString().contains(" into " + System.getProperty("java.io.tmpdir") + ";"));
    }
  }

  private static Sheet one(String name) {
    return new Cells(name, Look.TEXT, List.of(Cell.of("a")));
  }
}
