package org.pourbook.book.out;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * The paper a workbook is printed on.
 *
 * @param metric A4, else US letter
 * @param footer words at the left of every page's foot
 */
record Paper(boolean metric, String footer) {

  /** Margins in inches. */
  private static final double SIDE = 0.5;

  private static final double FOOT = 0.7;

  /** Characters that stay left of the sheet's name on a portrait page. */
  private static final int MOST_FOOTER = 44;

  /** Sets a sheet to be printed one page wide, its foot with the page's number. */
  void set(XSSFSheet sheet, boolean landscape) {
    PrintSetup setup = sheet.getPrintSetup();
    setup.setPaperSize(metric ? PrintSetup.A4_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE);
    setup.setLandscape(landscape);
    setup.setFitWidth((short) 1);
    setup.setFitHeight((short) 0);
    sheet.setFitToPage(true);
    sheet.setMargin(PageMargin.LEFT, SIDE);
    sheet.setMargin(PageMargin.RIGHT, SIDE);
    sheet.setMargin(PageMargin.TOP, SIDE);
    sheet.setMargin(PageMargin.BOTTOM, FOOT);
    sheet.setMargin(PageMargin.FOOTER, SIDE / 2);
    sheet.getFooter().setLeft("&8" + spaced(footer));
    sheet.getFooter().setCenter("&8&A");
    sheet.getFooter().setRight("&8Page &P of &N");
  }

  /** Sets a wide sheet to be printed over several pages, its first two columns on each. */
  void spread(XSSFSheet sheet, int pagesWide) {
    sheet.getPrintSetup().setFitWidth((short) pagesWide);
    if (pagesWide > 1) {
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 1));
    }
  }

  /** Sets what is printed, and the rows repeated on every page; rows and columns from 0. */
  void setArea(XSSFSheet sheet, int lastRow, int lastColumn, int repeatedRow) {
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    sheet.getWorkbook().setPrintArea(index, 0, lastColumn, 0, lastRow);
    if (repeatedRow >= 0) {
      sheet.setRepeatingRows(new CellRangeAddress(repeatedRow, repeatedRow, -1, -1));
    }
  }

  /**
   * A footer reads {@code &8} as a font size, and would read a number behind it as a part of it.
   * One that is too long would run into the sheet's name.
   */
  private static String spaced(String text) {
    boolean fits = text.length() <= MOST_FOOTER;
    return " " + (fits ? text : text.substring(0, MOST_FOOTER - 1) + "…").replace("&", "&&");
  }
}
