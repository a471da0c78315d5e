package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The most worth of boards by what their price leaves over whole boards of one stock length, the
 * base, of which any number is bought (the group relaxation of Gomory 1965). What is said of a
 * total holds for all boards that cost it; a few that are not there may be among them, more of the
 * base than its limit or less than none, so worth is at least what can be had.
 */
final class PurchasesByRest implements Purchases.Table {
  /** A dearer base would make too many rests. */
  private static final long MOST_CELLS = 3_000_000;

  private final CutModel model;
  private final long[] worth;
  private final int base;
  private final int price;

  /** Bought whole, being worth more for their price than the base; some may be left again. */
  private final int[] whole;

  private final long wholeCost;
  private final long wholeWorth;

  /**
   * Worth of the other boards, less that of as many boards of the base as their price would buy.
   */
  private long[] most;

  private final List<Part> parts = new ArrayList<>();

  /** Boards taken together, fewer than none where they are left; whether any number of times. */
  private record Part(int stock, int boards, boolean again, long[] taken) {}

  private PurchasesByRest(CutModel model, long[] worth, List<Integer> bestFirst, int baseAt) {
    this.model = model;
    this.worth = worth;
    this.base = bestFirst.get(baseAt);
    this.price = (int) model.cost()[base];
    this.whole = new int[model.stocks()];
    this.most = new long[price];
    Arrays.fill(most, 1, price, NONE);
    long cost = 0;
    long worthOfWhole = 0;
    for (int at = 0; at < bestFirst.size(); at++) {
      int k = bestFirst.get(at);
      if (at < baseAt) {
        whole[k] = model.limit()[k];
        cost = Math.addExact(cost, Math.multiplyExact(model.cost()[k], (long) whole[k]));
        worthOfWhole = Math.addExact(worthOfWhole, Math.multiplyExact(worth[k], (long) whole[k]));
      }
      if (at != baseAt) {
        add(k, at < baseAt ? -1 : 1);
      }
    }
    this.wholeCost = cost;
    this.wholeWorth = worthOfWhole;
  }

  /** Returns the table; empty where the stock with a price is not enough, or none is needed. */
  static Optional<PurchasesByRest> of(CutModel model, long[] worth, long needed) {
    List<Integer> bestFirst = CoverBound.bestFirst(model, worth);
    bestFirst = bestFirst.stream().filter(k -> model.cost()[k] > 0).toList();
    long left = needed;
    for (int at = 0; at < bestFirst.size(); at++) {
      int k = bestFirst.get(at);
      if (left <= 0) {
        return Optional.empty();
      }
      if (left / worth[k] < model.limit()[k]) {
        return model.cost()[k] > MOST_CELLS
            ? Optional.empty()
            : Optional.of(new PurchasesByRest(model, worth, bestFirst, at));
      }
      left -= worth[k] * model.limit()[k];
    }
    return Optional.empty();
  }

  private void add(int stock, int sign) {
    if (model.limit()[stock] >= price) {
      addUnlimited(stock, sign);
      return;
    }
    int left = model.limit()[stock];
    for (int boards = 1; left > 0; boards *= 2) {
      int part = Math.min(boards, left);
      addOnce(stock, sign * part);
      left -= part;
    }
  }

  /**
   * Adds any number of boards. As many as bring back the same rest are worth no more than the base
   * that they replace; so in each round of rests one gains nothing from the others, and going
   * through it twice comes past that one before all others.
   */
  private void addUnlimited(int stock, int sign) {
    long[] taken = newPart(stock, sign, true);
    int step = Math.floorMod(sign * model.cost()[stock], price);
    int rounds = gcd(step, price);
    for (int first = 0; first < rounds; first++) {
      int at = first;
      for (int n = 0; n < 2 * (price / rounds); n++) {
        int to = next(at, step);
        if (most[at] != NONE) {
          take(taken, to, with(most[at], at, stock, sign));
        }
        at = to;
      }
    }
  }

  private void addOnce(int stock, int boards) {
    long[] taken = newPart(stock, boards, false);
    int step = Math.floorMod(boards * model.cost()[stock], price);
    long[] before = most;
    most = before.clone();
    for (int at = 0; at < price; at++) {
      if (before[at] != NONE) {
        take(taken, next(at, step), with(before[at], at, stock, boards));
      }
    }
  }

  private int next(int rest, int step) {
    int next = rest + step;
    return next >= price ? next - price : next;
  }

  /** Returns the worth with these boards besides, of which a rest becomes another. */
  private long with(long worthOfOthers, int rest, int stock, int boards) {
    long replaced = Math.floorDiv(rest + boards * model.cost()[stock], price);
    return worthOfOthers + boards * worth[stock] - replaced * worth[base];
  }

  private void take(long[] taken, int at, long with) {
    if (with > most[at]) {
      most[at] = with;
      taken[at >> 6] |= 1L << at;
    }
  }

  private long[] newPart(int stock, int boards, boolean again) {
    long[] taken = new long[(price >> 6) + 1];
    parts.add(new Part(stock, boards, again, taken));
    return taken;
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  @Override
  public long worth(long total) {
    long others = most[Math.floorMod(total - wholeCost, price)];
    return others == NONE
        ? NONE
        : wholeWorth + others + Math.floorDiv(total - wholeCost, price) * worth[base];
  }

  @Override
  public long steps() {
    return (long) price * parts.size();
  }

  @Override
  public Optional<int[]> boards(long total) {
    int[] boards = whole.clone();
    int rest = Math.floorMod(total - wholeCost, price);
    for (int p = parts.size() - 1; p >= 0; p--) {
      Part part = parts.get(p);
      while ((part.taken()[rest >> 6] >> rest & 1) != 0) {
        boards[part.stock()] += part.boards();
        rest = Math.floorMod(rest - part.boards() * model.cost()[part.stock()], price);
        if (!part.again()) {
          break;
        }
      }
    }
    long left = total;
    boolean possible = true;
    for (int k = 0; k < boards.length; k++) {
      left -= boards[k] * model.cost()[k];
      boards[k] = model.cost()[k] == 0 ? model.limit()[k] : boards[k];
      possible &= boards[k] >= 0 && boards[k] <= model.limit()[k];
    }
    boards[base] = (int) (left / price);
    return possible && left >= 0 && boards[base] <= model.limit()[base]
        ? Optional.of(boards)
        : Optional.empty();
  }
}
