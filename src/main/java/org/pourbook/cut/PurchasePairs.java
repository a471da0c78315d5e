package org.pourbook.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Purchases of two priced stock lengths, few enough to be listed one by one, so that all that is
 * proven of any of them can be held against each.
 */
final class PurchasePairs {
  private static final int MOST_BITS = 60;

  private final CutModel model;
  private final int first;
  private final int second;
  private final List<Relaxation.Certificate> proofs = new ArrayList<>();

  private PurchasePairs(CutModel model, int first, int second) {
    this.model = model;
    this.first = first;
    this.second = second;
  }

  /** Returns the purchases of a model; empty where it has more or less than two priced lengths. */
  static Optional<PurchasePairs> of(CutModel model) {
    int[] priced = IntStream.range(0, model.stocks()).filter(k -> model.cost()[k] > 0).toArray();
    return priced.length == 2
        ? Optional.of(new PurchasePairs(model, priced[0], priced[1]))
        : Optional.empty();
  }

  /** Excludes purchases whose worth is not enough. */
  void exclude(Relaxation.Certificate proof) {
    proofs.add(proof.ofBits(MOST_BITS));
  }

  /**
   * Returns the cheapest purchase from a cost on that is not excluded: of each number of boards of
   * the second length, that with the fewest of the first.
   */
  Optional<int[]> cheapest(long from, long below) {
    Optional<int[]> cheapest = Optional.empty();
    long least = below;
    long most = Math.min(model.limit()[second], (below - 1) / model.cost()[second]);
    for (int n = 0; n <= most; n++) {
      long paid = n * model.cost()[second];
      long others = Math.max(0, ceil(from - paid, model.cost()[first]));
      int[] boards = model.limit().clone();
      boards[second] = n;
      boards[first] = 0;
      for (Relaxation.Certificate proof : proofs) {
        others = Math.max(others, fewest(proof, boards));
      }
      long affordable = Math.floorDiv(least - 1 - paid, model.cost()[first]);
      if (others <= Math.min(model.limit()[first], affordable)) {
        boards[first] = (int) others;
        least = paid + others * model.cost()[first];
        cheapest = Optional.of(boards);
      }
    }
    return cheapest;
  }

  /** Returns how many boards of the first length are enough beside these. */
  private long fewest(Relaxation.Certificate proof, int[] boards) {
    long missing = proof.total().longValueExact();
    for (int k = 0; k < boards.length; k++) {
      long worth = Math.multiplyExact(proof.stockWorth()[k], (long) boards[k]);
      missing = Math.subtractExact(missing, worth);
    }
    long each = proof.stockWorth()[first];
    return missing <= 0 ? 0 : each == 0 ? Long.MAX_VALUE : ceil(missing, each);
  }

  private static long ceil(long number, long by) {
    return -Math.floorDiv(-number, by);
  }
}
