package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.JobsReader;
import org.pourbook.desk.Batch;
import org.pourbook.job.Setting;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Checked;

/**
 * {@code pourbook template -o templates/jobs.xlsx --overwrite} brings the kept files up to date.
 */
class TemplatesTest {

  private static final Path KEPT = Path.of("templates");

  @TempDir Path folder;

  @Test
  void theKeptTemplatesAreThoseThatTheToolWrites() throws IOException {
    Templates.writeJobs(folder.resolve("jobs.xlsx"), UnitSystem.FT_IN, false);
    Templates.writeJobs(folder.resolve("jobs-m.xlsx"), UnitSystem.M, false);
    Templates.writePrices(folder.resolve("prices.xlsx"), UnitSystem.FT_IN, false);
    Templates.writeTickets(folder.resolve("tickets.csv"), false);
    for (String name : List.of("jobs.xlsx", "jobs-m.xlsx", "prices.xlsx")) {
      WorkbookParts.assertSame(folder.resolve(name), KEPT.resolve(name));
    }
    assertEquals(
        Files.readString(folder.resolve("tickets.csv")),
        Files.readString(KEPT.resolve("tickets.csv")));
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void theTemplateIsReadAsOneSoundJobWithoutANote(UnitSystem units) throws IOException {
    Path file = folder.resolve("jobs.xlsx");
    Templates.writeJobs(file, units, false);
    Checked<Batch> read = JobsReader.read(file, Optional.empty());
    assertEquals(List.of(), read.problems());
    assertEquals(1, read.value().jobs().size());
    assertEquals(units, read.value().jobs().get(0).units());
    assertEquals(2, read.value().jobs().get(0).sections().size());
    assertEquals(2, read.value().jobs().get(0).pours().size());
    assertEquals(5, read.value().jobs().get(0).depthChecks().size());
    assertEquals(6, read.value().prices().prices().size());
  }

  @Test
  void thePriceBookIsReadBesideAJobsWorkbook() throws IOException {
    Path jobs = folder.resolve("jobs.xlsx");
    Path prices = folder.resolve("prices.xlsx");
    Templates.writeJobs(jobs, UnitSystem.FT_IN, false);
    Templates.writePrices(prices, UnitSystem.FT_IN, false);
    Checked<Batch> read = JobsReader.read(jobs, Optional.of(prices));
    assertEquals(List.of(), read.problems());
    assertEquals(2, read.value().prices().suppliers().size());
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void everyColumnHasItsHeadingHintAndMessage(UnitSystem units) throws IOException {
    Path file = folder.resolve("jobs.xlsx");
    Templates.writeJobs(file, units, false);
    try (XSSFWorkbook workbook = open(file)) {
      assertEquals(InputSheet.values().length + 1, workbook.getNumberOfSheets());
      assertEquals(InputSheet.READ_FIRST, workbook.getSheetName(0));
      for (InputSheet input : InputSheet.values()) {
        XSSFSheet sheet = workbook.getSheet(input.label());
        assertEquals(input.columns().size(), sheet.getDataValidations().size(), input.label());
        for (XSSFDataValidation check : sheet.getDataValidations()) {
          int index = check.getRegions().getCellRangeAddress(0).getFirstColumn();
          String heading =
              sheet.getRow(TemplateSheet.FIRST_ROW - 2).getCell(index).getStringCellValue();
          InputColumn column = input.column(heading).orElseThrow();
          assertEquals(column.title(units), heading);
          assertEquals(CellChecks.prompt(column), check.getPromptBoxText());
          if (!column.choices().isEmpty()) {
            assertEquals(
                column.choices(), List.of(check.getValidationConstraint().getExplicitListValues()));
          }
        }
      }
    }
  }

  @Test
  void practiceListsEverySetting() throws IOException {
    Path file = folder.resolve("jobs.xlsx");
    Templates.writeJobs(file, UnitSystem.FT_IN, false);
    try (XSSFWorkbook workbook = open(file)) {
      List<String> listed = new java.util.ArrayList<>();
      for (Row row : workbook.getSheet("Practice")) {
        Cell cell = row.getCell(1);
        listed.add(cell == null ? "" : cell.getStringCellValue());
      }
      for (Setting setting : Setting.values()) {
        assertTrue(
            listed.stream()
                .anyMatch(name -> name.split(", ")[0].equals(setting.label().split(", ")[0])),
            setting.label());
      }
      assertTrue(listed.contains("Allowance, bar support"));
      assertTrue(listed.contains("Ahead of pour, bar"));
    }
  }

  @Test
  void anOlderTemplateIsKeptUnlessItMayBeReplaced() throws IOException {
    Path file = folder.resolve("jobs.xlsx");
    Files.writeString(file, "mine");
    assertThrows(
        FileAlreadyExistsException.class, () -> Templates.writeJobs(file, UnitSystem.FT_IN, false));
    assertEquals("mine", Files.readString(file));
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
