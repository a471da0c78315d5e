package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sizes that an office types as text on Given Sections count as the tool would read them. */
class SectionFiguresTest {

  /** Fractions of an inch stand in the trade's usual ways. */
  private static final Map<String, Double> FEET = new LinkedHashMap<>();

  private static final Map<String, Double> INCHES = new LinkedHashMap<>();

  static {
    FEET.put("26'", 26.0);
    FEET.put("26'-6\"", 26.5);
    FEET.put("26' 6 1/2\"", 26 + 6.5 / 12);
    FEET.put("26'-6-1/2\"", 26 + 6.5 / 12);
    FEET.put("26' 1/2\"", 26 + 0.5 / 12);
    FEET.put("26'-0 3/4\"", 26 + 0.75 / 12);
    INCHES.put("7", 7.0);
    INCHES.put("7\"", 7.0);
    INCHES.put("7 1/2\"", 7.5);
    INCHES.put("7-1/2", 7.5);
    INCHES.put("1/2\"", 0.5);
    INCHES.put("3/4", 0.75);
  }

  @TempDir Path folder;

  @Test
  void aSpreadsheetProgramReadsThem() throws Exception {
    assumeTrue(SpreadsheetProgram.isOnPath(), SpreadsheetProgram.NAME + " is not on the PATH");
    Path edited = folder.resolve("edited.xlsx");
    try (XSSFWorkbook workbook =
            SpreadsheetProgram.open(DemoOrder.write(folder.resolve("demo.xlsx")));
        OutputStream out = Files.newOutputStream(edited)) {
      Headed given = Headed.of(workbook.getSheet("Given Sections"));
      List<Row> rows = inFeet(given);
      int row = 0;
      for (String text : FEET.keySet()) {
        given.fresh(rows.get(row++), "Length").setCellValue(text);
      }
      row = 0;
      for (String text : INCHES.keySet()) {
        given.fresh(rows.get(row++), "Thickness (in)").setCellValue(text);
      }
      workbook.write(out);
    }
    try (XSSFWorkbook workbook =
        SpreadsheetProgram.open(new SpreadsheetProgram(folder).recalculated(edited))) {
      Headed given = Headed.of(workbook.getSheet("Given Sections"));
      assertFigures(given, FEET, "Length in figures");
      assertFigures(given, INCHES, "Thickness in figures");
    }
  }

  private static List<Row> inFeet(Headed given) {
    return given.rows().stream()
        .filter(row -> !given.text(row, "Job").equals("BARN"))
        .filter(row -> Headed.typeOf(given.cell(row, "Length in figures")).name().equals("NUMERIC"))
        .toList();
  }

  private static void assertFigures(Headed given, Map<String, Double> by, String heading)
      throws IOException {
    int row = 0;
    for (Map.Entry<String, Double> one : by.entrySet()) {
      double figure = given.cell(inFeet(given).get(row++), heading).getNumericCellValue();
      assertEquals(one.getValue(), figure, 1e-9, one.getKey());
    }
  }
}
