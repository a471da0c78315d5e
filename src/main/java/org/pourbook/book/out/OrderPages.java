package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.buy.Order;

/** The printed orders, each on a page of its own. */
final class OrderPages implements Sheet {

  static final String NAME = "Order pages";

  /** Beyond these a batch's orders are sent from the Orders sheet. */
  static final int MOST_PAGES = 1_000;

  static final List<Integer> WIDTHS = List.of(7, 11, 17, 13, 24, 10, 9, 11, 12);

  private final OrdersSheet orders;
  private final OrderTotalsSheet totals;

  OrderPages(OrdersSheet orders, OrderTotalsSheet totals) {
    this.orders = orders;
    this.totals = totals;
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
    for (int i = 0; i < WIDTHS.size(); i++) {
      sheet.setColumnWidth(i, WIDTHS.get(i) * SheetWriter.WIDTH_UNIT);
    }
    Pen pen = new Pen(rows);
    List<Order> all = totals.spec().rows();
    if (all.isEmpty()) {
      pen.next().write(0, Look.SAYS, Cell.of("There is nothing to order."));
    }
    for (int i = 0; i < Math.min(all.size(), MOST_PAGES); i++) {
      if (i > 0) {
        sheet.setRowBreak(pen.row());
      }
      new OrderPage(pen, orders, totals, all.get(i), SheetSpec.FIRST_ROW + i).write();
    }
    if (all.size() > MOST_PAGES) {
      int more = all.size() - MOST_PAGES;
      pen.next().write(0, Look.SAYS, Cell.of(more + " more orders stand on sheet Orders."));
    }
    sheet.setDisplayGridlines(false);
    paper.set(sheet, false);
    paper.setArea(sheet, pen.row(), WIDTHS.size() - 1, -1);
  }
}
