package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.desk.Estimate;
import org.pourbook.job.Job;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.takeoff.BoltPiece;
import org.pourbook.takeoff.TakeOff;

/** Where the bolts of each plate piece stand, for the crew: a block a piece, a box a bolt. */
final class BoltLayoutSheet implements Sheet {

  static final String NAME = "Bolt layout";

  /** A box and a distance, side by side. */
  private static final int BOX_WIDTH = 4;

  private static final int PLACE_WIDTH = 16;
  private static final int PLACES_ACROSS = 5;
  private static final int COLUMNS = 2 * PLACES_ACROSS;

  /** Pieces alike that have a box each; more are counted by hand. */
  private static final int MOST_BOXES = PLACES_ACROSS;

  private final List<TakeOff> takeOffs;

  BoltLayoutSheet(Estimate estimate) {
    this.takeOffs =
        estimate.takeOffs().stream().filter(takeOff -> !takeOff.boltPieces().isEmpty()).toList();
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
    for (int i = 0; i < COLUMNS; i++) {
      int width = i % 2 == 0 ? BOX_WIDTH : PLACE_WIDTH;
      sheet.setColumnWidth(i, width * SheetWriter.WIDTH_UNIT);
    }
    ShopPen pen = new ShopPen(sheet, rows);
    if (takeOffs.isEmpty()) {
      pen.page(NAME, "No plates are listed.");
    }
    for (TakeOff takeOff : takeOffs) {
      Job job = takeOff.job();
      pen.page("Bolts " + job.code(), "Measured from the left end of each piece.");
      takeOff.boltPieces().forEach(piece -> piece(pen, job, piece));
    }
    sheet.setDisplayGridlines(false);
    paper.set(sheet, false);
    paper.setArea(sheet, pen.lastRow(), COLUMNS - 1, -1);
  }

  private static void piece(ShopPen pen, Job job, BoltPiece piece) {
    List<Length> places = piece.positions();
    int rows = (places.size() + PLACES_ACROSS - 1) / PLACES_ACROSS;
    boolean several = piece.count() > 1;
    pen.block((rows + 2 + (several ? 1 : 0)) * ShopPen.height(1));
    Pen head = pen.row(ShopPen.height(1));
    head.write(0, Look.SHOP_HEADING, Cell.of(head(job, piece)));
    head.blank(1, COLUMNS - 1, Look.SHOP_HEADING);
    pen.row(ShopPen.height(1)).write(0, Look.SHOP_PLAIN, Cell.of(says(job, piece)));
    for (int i = 0; i < rows; i++) {
      Pen row = pen.row(ShopPen.height(1));
      for (int j = i * PLACES_ACROSS; j < Math.min((i + 1) * PLACES_ACROSS, places.size()); j++) {
        int column = 2 * (j % PLACES_ACROSS);
        row.write(column, Look.SHOP_TICK, Cell.BLANK);
        row.write(
            column + 1, Look.SHOP_STRONG, Cell.of(LengthFormat.of(places.get(j), job.units())));
      }
    }
    if (several) {
      alike(pen.row(ShopPen.height(1)), piece.count());
    }
  }

  private static String head(Job job, BoltPiece piece) {
    return "Plate "
        + piece.plate()
        + ", piece "
        + piece.piece()
        + ":  "
        + LengthFormat.of(piece.length(), job.units());
  }

  private static String says(Job job, BoltPiece piece) {
    return piece.positions().size()
        + (piece.positions().size() == 1 ? " bolt " : " bolts ")
        + piece.bolt().designation()
        + ", "
        + LengthFormat.of(piece.embedment(), job.units())
        + " in the concrete";
  }

  private static void alike(Pen row, int count) {
    if (count > MOST_BOXES) {
      row.write(0, Look.SHOP_PLAIN, Cell.of("Make " + count + ", count them:"));
      row.blank(COLUMNS / 2, COLUMNS - 1, Look.BLANK_LINE);
      return;
    }
    for (int i = 0; i < count; i++) {
      row.write(2 * i, Look.SHOP_TICK, Cell.BLANK);
      row.write(2 * i + 1, Look.SHOP, Cell.of("piece " + (i + 1) + " of " + count));
    }
  }
}
