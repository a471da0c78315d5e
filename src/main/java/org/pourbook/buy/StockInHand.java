package org.pourbook.buy;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.Length;

/**
 * Boards or bars that an earlier order brings.
 *
 * @param item what they were ordered as
 * @param costMicros what one was ordered at, in millionths of the currency unit
 */
record StockInHand(ItemInHand item, Length length, int pieces, long costMicros) {

  /** What stands before the index in the id of such stock, in plans. */
  private static final String ID = "in hand ";

  /** Returns the stock as a cut plan takes it, free of charge or at what it was ordered at. */
  static List<CutJob.Stock> offered(List<StockInHand> stock, boolean free) {
    List<CutJob.Stock> offered = new ArrayList<>();
    for (StockInHand one : stock) {
      String id = ID + offered.size();
      offered.add(new CutJob.Stock(id, one.length(), free ? 0 : one.costMicros(), one.pieces()));
    }
    return offered;
  }

  static boolean isOf(CutResult.Pattern pattern) {
    return pattern.stock().id().startsWith(ID);
  }

  /** Returns how many of each a plan cuts. */
  static int[] used(List<StockInHand> stock, CutResult.Planned plan) {
    int[] used = new int[stock.size()];
    for (CutResult.Pattern pattern : plan.patterns()) {
      if (isOf(pattern)) {
        used[Integer.parseInt(pattern.stock().id().substring(ID.length()))] += pattern.times();
      }
    }
    return used;
  }

  /** Returns how many in all a plan leaves whole. */
  static int left(List<StockInHand> stock, CutResult.Planned plan) {
    int left = 0;
    int[] used = used(stock, plan);
    for (int i = 0; i < used.length; i++) {
      left += stock.get(i).pieces() - used[i];
    }
    return left;
  }

  StockInHand withPieces(int count) {
    return new StockInHand(item, length, count, costMicros);
  }
}
