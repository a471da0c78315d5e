package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A complete plan in a model's units.
 *
 * @param lots distinct columns in {@link Column#ORDER}, each with how often it is cut
 */
record Packing(List<Lot> lots, long cost, long boards, long longestRest) {

  /** Less is better: cost, then boards, the longest single remnant, and distinct patterns. */
  static final Comparator<Packing> ORDER =
      Comparator.comparingLong(Packing::cost)
          .thenComparingLong(Packing::boards)
          .thenComparing(Comparator.comparingLong(Packing::longestRest).reversed())
          .thenComparingInt(p -> p.lots().size())
          .thenComparing(Packing::compareLots);

  record Lot(Column column, int times) {}

  /** Returns the packing of these lots, like columns merged. */
  static Packing of(CutModel model, List<Lot> lots) {
    List<Lot> sorted = new ArrayList<>(lots);
    sorted.sort(Comparator.comparing(Lot::column, Column.ORDER));
    List<Lot> merged = new ArrayList<>();
    long cost = 0;
    long boards = 0;
    long rest = 0;
    for (Lot lot : sorted) {
      int last = merged.size() - 1;
      if (last >= 0 && Column.ORDER.compare(merged.get(last).column(), lot.column()) == 0) {
        merged.set(last, new Lot(lot.column(), merged.get(last).times() + lot.times()));
      } else {
        merged.add(lot);
      }
      int stock = lot.column().stock();
      cost = Math.addExact(cost, Math.multiplyExact(model.cost()[stock], (long) lot.times()));
      boards += lot.times();
      rest = Math.max(rest, model.size()[stock] - lot.column().used(model));
    }
    return new Packing(List.copyOf(merged), cost, boards, rest);
  }

  /** Returns the better of two packings, the first of equal ones; empty where both are. */
  static Optional<Packing> better(Optional<Packing> a, Optional<Packing> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isPresent() ? a : b;
    }
    return ORDER.compare(a.get(), b.get()) <= 0 ? a : b;
  }

  private static int compareLots(Packing a, Packing b) {
    for (int i = 0; i < a.lots.size(); i++) {
      int byColumn = Column.ORDER.compare(a.lots.get(i).column(), b.lots.get(i).column());
      if (byColumn != 0) {
        return byColumn;
      }
      int byTimes = Integer.compare(b.lots.get(i).times(), a.lots.get(i).times());
      if (byTimes != 0) {
        return byTimes;
      }
    }
    return 0;
  }
}
