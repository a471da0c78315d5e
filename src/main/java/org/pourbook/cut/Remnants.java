package org.pourbook.cut;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Gathers what a packing leaves into one long remnant, which is worth keeping; nothing is bought.
 */
final class Remnants {

  /** Each move makes the remnant longer, by less and less. */
  private static final int MOST_MOVES = 100;

  private final CutModel model;
  private Packing packing;

  private Remnants(CutModel model, Packing packing) {
    this.model = model;
    this.packing = packing;
  }

  /**
   * A change of two boards.
   *
   * @param item piece that leaves the board with the longest remnant
   * @param lot the board that takes it
   * @param back piece that comes in return, −1 for none
   */
  private record Move(int item, Packing.Lot lot, int back, long gain) {}

  /**
   * Returns a packing of the same boards whose longest single remnant is no shorter, as long as
   * moving one piece or changing two can make it.
   */
  static Packing gathered(CutModel model, Packing packing) {
    Remnants remnants = new Remnants(model, packing);
    for (int moves = 0; moves < MOST_MOVES && remnants.improve(); moves++) {}
    return remnants.packing;
  }

  private boolean improve() {
    Packing.@Nullable Lot from = null;
    for (Packing.Lot lot : packing.lots()) {
      if (from == null || rest(lot) > rest(from)) {
        from = lot;
      }
    }
    Move best = from == null ? null : best(from);
    if (from == null || best == null) {
      return false;
    }
    apply(from, best);
    return true;
  }

  private long rest(Packing.Lot lot) {
    return model.size()[lot.column().stock()] - lot.column().used(model);
  }

  private @Nullable Move best(Packing.Lot from) {
    Move best = null;
    for (Packing.Lot to : packing.lots()) {
      long room = rest(to);
      if (room == 0 || (to == from && to.times() == 1)) {
        continue;
      }
      for (int item : from.column().item()) {
        best = better(best, item, to, -1, room);
        for (int back : to.column().item()) {
          best = better(best, item, to, back, room);
        }
      }
    }
    return best;
  }

  private @Nullable Move better(
      @Nullable Move best, int item, Packing.Lot to, int back, long room) {
    long gain = model.width()[item] - (back < 0 ? 0 : model.width()[back]);
    boolean fits = gain > 0 && gain <= room;
    return fits && (best == null || gain > best.gain()) ? new Move(item, to, back, gain) : best;
  }

  private void apply(Packing.Lot from, Move move) {
    List<Packing.Lot> lots = new ArrayList<>();
    for (Packing.Lot lot : packing.lots()) {
      int taken = (lot == from ? 1 : 0) + (lot == move.lot() ? 1 : 0);
      if (lot.times() > taken) {
        lots.add(new Packing.Lot(lot.column(), lot.times() - taken));
      }
    }
    addChanged(lots, from, move.item(), move.back());
    addChanged(lots, move.lot(), move.back(), move.item());
    packing = Packing.of(model, lots);
  }

  private void addChanged(List<Packing.Lot> lots, Packing.Lot lot, int out, int in) {
    int[] counts = new int[model.items()];
    Column column = lot.column();
    for (int at = 0; at < column.item().length; at++) {
      counts[column.item()[at]] = column.count()[at];
    }
    int pieces = 0;
    for (int i = 0; i < counts.length; i++) {
      counts[i] += (i == in ? 1 : 0) - (i == out ? 1 : 0);
      pieces += counts[i];
    }
    if (pieces > 0) {
      lots.add(new Packing.Lot(Column.of(column.stock(), counts), 1));
    }
  }
}
