package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.desk.Batch;
import org.pourbook.problem.Checked;

/** The same workbook in every form that is read, and files that cannot be. */
class WorkbookFormsTest {

  private static final Path DEMO = Path.of("demo-data");
  private static final Optional<Path> PRICES = Optional.of(DEMO.resolve("prices.xlsx"));

  @TempDir private Path folder;
  private final Locale usual = Locale.getDefault();

  @AfterEach
  void backToTheUsualLocale() {
    Locale.setDefault(usual);
  }

  /** Returns the jobs of a file in words, but for the cells in which they stand. */
  private static String jobs(Path path) throws UnreadableFile {
    Checked<Batch> read = JobsReader.read(path, PRICES);
    assertEquals(List.of(), read.problems(), path.toString());
    return read.value().jobs().toString().replaceAll("[A-Z][a-z]+(\\.csv)?![A-Z]+[0-9]+", "");
  }

  private Path oldWorkbook() throws IOException {
    Path old = folder.resolve("jobs.xls");
    try (InputStream in = Files.newInputStream(DEMO.resolve("jobs.xlsx"));
        Workbook from = new XSSFWorkbook(in);
        Workbook to = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(old)) {
      Map<String, CellStyle> styles = new HashMap<>();
      for (Sheet sheet : from) {
        Sheet copy = to.createSheet(sheet.getSheetName());
        for (Row row : sheet) {
          Row copyRow = copy.createRow(row.getRowNum());
          row.forEach(cell -> copy(cell, copyRow.createCell(cell.getColumnIndex()), styles));
        }
      }
      to.write(out);
    }
    return old;
  }

  private static void copy(Cell from, Cell to, Map<String, CellStyle> styles) {
    switch (from.getCellType()) {
      case STRING -> to.setCellValue(from.getStringCellValue());
      case NUMERIC -> to.setCellValue(from.getNumericCellValue());
      case BOOLEAN -> to.setCellValue(from.getBooleanCellValue());
      default -> to.setBlank();
    }
    Workbook book = to.getSheet().getWorkbook();
    to.setCellStyle(
        styles.computeIfAbsent(
            from.getCellStyle().getDataFormatString(),
            format -> {
              CellStyle style = book.createCellStyle();
              style.setDataFormat(book.createDataFormat().getFormat(format));
              return style;
            }));
  }

  @Test
  void csvFilesAndOldAndNewWorkbooksHoldTheSameJobs() throws IOException {
    String expected = jobs(DEMO.resolve("jobs.xlsx"));
    assertTrue(expected.contains("BAKERY"), expected);
    assertEquals(expected, jobs(DEMO.resolve("jobs")), "CSV");
    assertEquals(expected, jobs(oldWorkbook()), ".xls");
    Path macros = Files.copy(DEMO.resolve("jobs.xlsx"), folder.resolve("jobs.xlsm"));
    assertEquals(expected, jobs(macros), ".xlsm");
  }

  @Test
  void theMachinesLocaleChangesNothing() throws IOException {
    String expected = jobs(DEMO.resolve("jobs.xlsx"));
    Locale.setDefault(Locale.GERMANY);
    assertEquals(expected, jobs(DEMO.resolve("jobs.xlsx")));
    assertEquals(expected, jobs(DEMO.resolve("jobs")));
  }

  private void isRefused(Path path, String sentence) {
    UnreadableFile refused =
        assertThrows(UnreadableFile.class, () -> JobsReader.read(path, PRICES), path.toString());
    assertEquals(path + sentence, refused.getMessage());
  }

  @Test
  void aFileThatCannotBeReadIsOneSentence() throws IOException {
    byte[] whole = Files.readAllBytes(DEMO.resolve("jobs.xlsx"));
    isRefused(Files.write(folder.resolve("empty.xlsx"), new byte[0]), " is empty");
    isRefused(
        Files.write(folder.resolve("half.xlsx"), Arrays.copyOf(whole, whole.length / 2)),
        " is cut off: copy or download it again");
    isRefused(
        Files.write(folder.resolve("nearly.xlsx"), Arrays.copyOf(whole, whole.length - 30)),
        " is cut off: copy or download it again");
    byte[] old = Files.readAllBytes(oldWorkbook());
    isRefused(
        Files.write(folder.resolve("half.xls"), Arrays.copyOf(old, old.length / 2)),
        " is damaged or no .xls workbook: save it as .xlsx");
    isRefused(
        Files.writeString(folder.resolve("letter.xlsx"), "Dear sirs"),
        " is not a workbook: expected an .xlsx, .xlsm or .xls workbook, or a folder of CSV files");
    isRefused(folder.resolve("gone.xlsx"), " was not found");
    isRefused(Files.createDirectory(folder.resolve("bare")), " is a folder without CSV files");
  }

  @Test
  void aWorkbookWithAPasswordIsOneSentence()
      throws IOException, GeneralSecurityException, InvalidFormatException {
    String sentence = " is protected by a password: remove it and save the workbook again";
    Path locked = folder.resolve("locked.xlsx");
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (InputStream in = Files.newInputStream(DEMO.resolve("jobs.xlsx"));
          OPCPackage whole = OPCPackage.open(in);
          OutputStream out = encryptor.getDataStream(files)) {
        whole.save(out);
      }
      try (OutputStream out = Files.newOutputStream(locked)) {
        files.writeFilesystem(out);
      }
    }
    isRefused(locked, sentence);
    Path old = folder.resolve("locked.xls");
    Biff8EncryptionKey.setCurrentUserPassword("secret");
    try (HSSFWorkbook book = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(old)) {
      book.createSheet("Jobs").createRow(0).createCell(0).setCellValue("Job");
      book.write(out);
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    isRefused(old, sentence);
  }

  @Test
  void badCellsOfAWorkbookAreToldByTheirAddress() throws IOException {
    Path path = folder.resolve("bad.xlsx");
    try (Workbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(path)) {
      Sheet jobs = book.createSheet("Jobs");
      jobs.createRow(0).createCell(0).setCellValue("Season 2027");
      fill(jobs.createRow(2), "Job *", "Mix");
      fill(jobs.createRow(3), "A", "3000 psi");
      Sheet sections = book.createSheet("Sections");
      fill(sections.createRow(0), "JOB", "Section", "length", "Width", "Thickness, (in)");
      Row row = sections.createRow(1);
      fill(row, "A", "S");
      row.createCell(2).setCellErrorValue(FormulaError.REF.getCode());
      row.createCell(3).setCellFormula("10+10");
      row.createCell(4).setCellValue("4,5");
      book.write(out);
    }
    List<String> found =
        JobsReader.read(path, PRICES).problems().stream()
            .map(problem -> problem.place() + " " + problem.found())
            .toList();
    assertEquals(
        List.of(
            "Sections!C2 #REF!", "Sections!D2 a formula without a stored value", "Sections!E2 4,5"),
        found);
  }

  private static void fill(Row row, String... texts) {
    for (int i = 0; i < texts.length; i++) {
      row.createCell(i).setCellValue(texts[i]);
    }
  }
}
