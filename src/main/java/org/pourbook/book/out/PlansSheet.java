package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.plan.Drawing;

/** The plans of a small batch's jobs, each on a page of its own. */
final class PlansSheet implements Sheet {

  static final String NAME = "Plans";

  /** Beyond these a batch's plans are drawn as files only. */
  static final int MOST_JOBS = 50;

  /** Columns and rows that a drawing covers; a page of letter or A4 size holds them. */
  private static final int COLUMNS = 8;

  private static final int COLUMN_WIDTH = 17;
  private static final int ROWS = 20;
  private static final float ROW_HEIGHT = (float) (Drawing.HEIGHT / ROWS);
  private static final float TITLE_HEIGHT = 20;
  private static final float SAYS_HEIGHT = 15;

  private final List<Drawing> drawings;

  PlansSheet(List<Drawing> drawings) {
    this.drawings = List.copyOf(drawings);
  }

  /** Returns whether so many jobs are drawn in the workbook. */
  static boolean holds(int jobs) {
    return jobs <= MOST_JOBS;
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
    for (int i = 0; i < COLUMNS; i++) {
      sheet.setColumnWidth(i, COLUMN_WIDTH * SheetWriter.WIDTH_UNIT);
    }
    Pen pen = new Pen(rows);
    SheetShapes shapes = new SheetShapes(sheet.createDrawingPatriarch().getCTDrawing());
    for (Drawing drawing : drawings) {
      if (pen.row() >= 0) {
        sheet.setRowBreak(pen.row());
      }
      pen.next(TITLE_HEIGHT).write(0, Look.TITLE, Cell.of(drawing.job()));
      pen.next(SAYS_HEIGHT).write(0, Look.SAYS, Cell.of(drawing.description()));
      shapes.add(drawing, pen.row() + 1);
      for (int i = 0; i < ROWS; i++) {
        pen.next(ROW_HEIGHT);
      }
    }
    sheet.setDisplayGridlines(false);
    paper.set(sheet, true);
    paper.setArea(sheet, pen.row(), COLUMNS - 1, -1);
  }
}
