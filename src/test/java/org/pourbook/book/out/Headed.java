package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/** A sheet by its headings. */
record Headed(Sheet sheet, Map<String, Integer> at) {
  static Headed of(Sheet sheet) {
    Map<String, Integer> at = new HashMap<>();
    for (Cell cell : sheet.getRow(SheetSpec.HEADING_ROW - 1)) {
      at.put(cell.getStringCellValue(), cell.getColumnIndex());
    }
    return new Headed(sheet, at);
  }

  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    sheet.forEach(row -> rows.add(row));
    return rows.subList(SheetSpec.FIRST_ROW - firstRow(), rows.size());
  }

  private int firstRow() {
    int missing = 0;
    for (int i = 0; i < SheetSpec.FIRST_ROW - 1; i++) {
      missing += sheet.getRow(i) == null ? 1 : 0;
    }
    return missing + 1;
  }

  Cell cell(Row row, String heading) {
    return row.getCell(
        Objects.requireNonNull(at.get(heading), heading),
        Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  /** Returns a new cell: text set in one that holds text of its own does not replace it. */
  Cell fresh(Row row, String heading) {
    return row.createCell(cell(row, heading).getColumnIndex());
  }

  String text(Row row, String heading) {
    return words(cell(row, heading));
  }

  static CellType typeOf(Cell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? cell.getCachedFormulaResultType()
        : cell.getCellType();
  }

  static String words(Cell cell) {
    return typeOf(cell) == CellType.STRING
        ? cell.getStringCellValue()
        : typeOf(cell) == CellType.BOOLEAN ? cell.getBooleanCellValue() + "" : "";
  }
}
