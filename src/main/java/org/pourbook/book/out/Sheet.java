package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A sheet of an output workbook. */
interface Sheet {

  String name();

  /** Returns the sheets that it fills, itself where it is one. */
  default List<Sheet> sheets() {
    return List.of(this);
  }

  /**
   * Fills the sheet, which is empty and bears this one's name.
   *
   * @param sheet takes columns, paper and whatever else is no row
   * @param rows takes the rows
   */
  void writeTo(XSSFSheet sheet, Rows rows, Paper paper);
}
