package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The least cost of a small job by trying every way to cut; written to be plainly right. */
public final class ExhaustiveSearch {
  static final long NONE = Long.MAX_VALUE;

  private final CutJob job;
  private final List<CutJob.Stock> stock;
  private final Map<List<Object>, Long> known = new HashMap<>();

  private ExhaustiveSearch(CutJob job) {
    this.job = job;
    this.stock = job.stock();
  }

  /** Returns the least cost in micros, {@link #NONE} where the stock is not enough. */
  public static long leastCost(CutJob job) {
    List<Long> pieces = new ArrayList<>();
    for (CutJob.Piece piece : job.pieces()) {
      for (int n = 0; n < piece.count(); n++) {
        pieces.add(piece.length().nanometres());
      }
    }
    pieces.sort((a, b) -> Long.compare(b, a));
    int[] left = job.stock().stream().mapToInt(s -> Math.min(s.limit(), pieces.size())).toArray();
    return new ExhaustiveSearch(job).least(pieces, left);
  }

  /** The longest piece left is cut from some board, together with any that fit beside it. */
  private long least(List<Long> pieces, int[] left) {
    if (pieces.isEmpty()) {
      return 0;
    }
    List<Object> key = List.of(pieces, Arrays.stream(left).boxed().toList());
    Long before = known.get(key);
    if (before != null) {
      return before;
    }
    long best = NONE;
    for (int k = 0; k < left.length; k++) {
      if (left[k] == 0) {
        continue;
      }
      int[] then = left.clone();
      then[k]--;
      long rest = fill(pieces, 0, new ArrayList<>(), 0, 0, k, then);
      best = rest == NONE ? best : Math.min(best, stock.get(k).costMicros() + rest);
    }
    known.put(key, best);
    return best;
  }

  private long fill(
      List<Long> pieces, int at, List<Long> notCut, long used, int cut, int board, int[] left) {
    if (at == pieces.size()) {
      return least(notCut, left);
    }
    long best = NONE;
    long next = used + pieces.get(at) + (cut > 0 ? job.kerf().nanometres() : 0);
    if (next <= stock.get(board).length().nanometres()) {
      best = fill(pieces, at + 1, notCut, next, cut + 1, board, left);
    }
    if (at > 0) {
      List<Long> more = new ArrayList<>(notCut);
      more.add(pieces.get(at));
      best = Math.min(best, fill(pieces, at + 1, more, used, cut, board, left));
    }
    return best;
  }
}
