package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook as lines of text, for golden files: sheet, cell, type, value, formula, format. */
final class Dump {

  private Dump() {}

  static List<String> of(XSSFWorkbook workbook) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      lines.add(
          sheet.getSheetName()
              + " | prints "
              + workbook.getPrintArea(i)
              + " | repeats "
              + sheet.getRepeatingRows());
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() != CellType.BLANK) {
            lines.add(line(sheet, cell));
          }
        }
      }
    }
    return lines;
  }

  private static String line(XSSFSheet sheet, Cell cell) {
    boolean formula = cell.getCellType() == CellType.FORMULA;
    CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
    return sheet.getSheetName()
        + "!"
        + cell.getAddress()
        + " | "
        + type
        + " | "
        + value(cell, type)
        + (formula ? " | =" + cell.getCellFormula() : "")
        + " | "
        + cell.getCellStyle().getDataFormatString();
  }

  private static String value(Cell cell, CellType type) {
    return switch (type) {
      case NUMERIC -> Double.toString(cell.getNumericCellValue());
      case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue());
      case STRING -> cell.getStringCellValue();
      default -> type.toString();
    };
  }
}
