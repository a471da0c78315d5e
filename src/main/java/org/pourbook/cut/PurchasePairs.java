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

  /** Returns the cheapest purchase of those that cost so much, and are not excluded. */
  Optional<int[]> cheapest(long from, long below) {
    for (long total = from; total < below; total++) {
      long most = Math.min(model.limit()[second], total / model.cost()[second]);
      for (int n = 0; n <= most; n++) {
        long rest = total - n * model.cost()[second];
        long others = rest / model.cost()[first];
        if (rest % model.cost()[first] == 0 && others <= model.limit()[first]) {
          int[] boards = model.limit().clone();
          boards[first] = (int) others;
          boards[second] = n;
          if (proofs.stream().allMatch(proof -> isEnough(proof, boards))) {
            return Optional.of(boards);
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isEnough(Relaxation.Certificate proof, int[] boards) {
    long worth = 0;
    for (int k = 0; k < boards.length; k++) {
      worth = Math.addExact(worth, Math.multiplyExact(proof.stockWorth()[k], (long) boards[k]));
    }
    return worth >= proof.total().longValueExact();
  }
}
