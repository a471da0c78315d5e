package org.pourbook.book.out;

import org.apache.poi.xssf.streaming.SXSSFSheet;

/** A sheet of an output workbook. */
interface Sheet {

  String name();

  /** Fills the sheet, which is empty and bears this one's name. */
  void writeTo(SXSSFSheet sheet, Styles styles, Paper paper);
}
