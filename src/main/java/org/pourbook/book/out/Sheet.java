package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** A sheet of an output workbook. */
interface Sheet {

  String name();

  /** Returns the sheets that it fills, itself where it is one. */
  default List<Sheet> sheets() {
    return List.of(this);
  }

  /** Fills the sheet, which is empty and bears this one's name. */
  void writeTo(SXSSFSheet sheet, Styles styles, Paper paper);
}
