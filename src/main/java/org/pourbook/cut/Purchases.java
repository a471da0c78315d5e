package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whole numbers of boards that a {@link Relaxation.Certificate} allows. Every plan buys boards
 * whose worth reaches that of all pieces, and pays a total that prices can add up to; so the least
 * such total is a bound, often the optimum itself.
 */
final class Purchases {
  /** Most totals looked at, 8 bytes each. */
  private static final int CELLS = 3_000_000;

  private final CutModel model;
  private final long[] worth;
  private final int base;
  private final int baseBoards;
  private final long fixedCost;
  private final long needed;
  private final long[] most;
  private final List<Part> parts = new ArrayList<>();

  /** Some boards of one stock length taken together; zero boards: any number of single ones. */
  private record Part(int stock, int boards, long[] taken) {}

  private Purchases(
      CutModel model, long[] worth, int base, int baseBoards, long needed, int cells) {
    this.model = model;
    this.worth = worth;
    this.base = base;
    this.baseBoards = baseBoards;
    this.fixedCost = base < 0 ? 0 : baseBoards * model.cost()[base];
    this.needed = needed;
    this.most = new long[cells];
  }

  /**
   * Returns the purchases that cost less than {@code below}; empty where numbers are too large.
   *
   * @param atLeast a lower bound already known
   */
  static Optional<Purchases> below(
      CutModel model,
      Relaxation.Certificate certificate,
      long atLeast,
      long below,
      Effort.Steps steps) {
    if (certificate.total().bitLength() > 61) {
      return Optional.empty();
    }
    long[] worth = certificate.stockWorth();
    long needed = certificate.total().longValueExact();
    for (int k = 0; k < model.stocks(); k++) {
      if (model.cost()[k] == 0) {
        needed -= Math.multiplyExact(worth[k], (long) model.limit()[k]);
      }
    }
    int base = bestUnlimited(model, worth);
    int boards = base < 0 ? 0 : boardsInAny(model, base, atLeast);
    long cells = below - (base < 0 ? 0 : boards * model.cost()[base]);
    if (cells <= 0 || cells > CELLS) {
      return Optional.empty();
    }
    needed -= base < 0 ? 0 : Math.multiplyExact(worth[base], (long) boards);
    Purchases purchases = new Purchases(model, worth, base, boards, needed, (int) cells);
    purchases.fill();
    steps.take(cells * purchases.parts.size());
    return Optional.of(purchases);
  }

  /**
   * Returns the stock of most worth for its price where it never runs out, −1 where it may. Of the
   * other boards in a cheapest purchase fewer than its price in units are needed: among that many
   * some add up to a multiple of the price (pigeonhole), and it can replace them.
   */
  private static int bestUnlimited(CutModel model, long[] worth) {
    return IntStream.range(0, model.stocks())
        .filter(k -> model.cost()[k] > 0)
        .boxed()
        .min(CoverBound.byRate(model, worth))
        .filter(best -> !model.isLimited(best))
        .orElse(-1);
  }

  private static int boardsInAny(CutModel model, int base, long atLeast) {
    long dearest = Arrays.stream(model.cost()).max().orElse(0);
    long others = Math.multiplyExact(model.cost()[base] - 1, dearest);
    return (int) Math.max(0, (atLeast - others) / model.cost()[base]);
  }

  private void fill() {
    for (int k = 0; k < model.stocks(); k++) {
      if (model.cost()[k] == 0 || worth[k] == 0) {
        continue;
      }
      if (model.limit()[k] < most.length / model.cost()[k]) {
        int left = model.limit()[k];
        for (int boards = 1; left > 0; boards *= 2) {
          int part = Math.min(boards, left);
          addOnce(k, part);
          left -= part;
        }
      } else {
        addUnlimited(k);
      }
    }
  }

  private void addUnlimited(int stock) {
    long[] taken = newPart(stock, 0);
    int price = (int) Math.min(most.length, model.cost()[stock]);
    for (int at = price; at < most.length; at++) {
      long with = most[at - price] + worth[stock];
      if (with > most[at]) {
        most[at] = with;
        taken[at >> 6] |= 1L << at;
      }
    }
  }

  private void addOnce(int stock, int boards) {
    long[] taken = newPart(stock, boards);
    int price = (int) Math.min(most.length, model.cost()[stock] * boards);
    for (int at = most.length - 1; at >= price; at--) {
      long with = most[at - price] + worth[stock] * boards;
      if (with > most[at]) {
        most[at] = with;
        taken[at >> 6] |= 1L << at;
      }
    }
  }

  private long[] newPart(int stock, int boards) {
    long[] taken = new long[(most.length >> 6) + 1];
    parts.add(new Part(stock, boards, taken));
    return taken;
  }

  /** Returns a bound raised to the least total that is enough; to {@code below} where none is. */
  static long raised(
      CutModel model,
      Relaxation.Certificate certificate,
      long bound,
      long below,
      Effort.Steps steps) {
    return below <= bound
        ? bound
        : below(model, certificate, bound, below, steps)
            .map(purchases -> Math.max(bound, purchases.least()))
            .orElse(bound);
  }

  /** Returns the least total that is enough; {@code below} where none below it is. */
  long least() {
    return fixedCost + first();
  }

  private int first() {
    int at = 0;
    while (at < most.length && most[at] < needed) {
      at++;
    }
    return at;
  }

  /** Returns boards of each stock length that are enough, cheapest first, one for each total. */
  List<int[]> cheapest(int howMany) {
    List<int[]> found = new ArrayList<>();
    for (int at = first(); at < most.length && found.size() < howMany; at++) {
      if (at == 0 || most[at] > most[at - 1] || found.isEmpty()) {
        found.add(boards(at));
      }
    }
    return found;
  }

  private int[] boards(int total) {
    int[] boards = new int[model.stocks()];
    for (int k = 0; k < boards.length; k++) {
      boards[k] = model.cost()[k] == 0 ? model.limit()[k] : 0;
    }
    if (base >= 0) {
      boards[base] += baseBoards;
    }
    int at = total;
    for (int p = parts.size() - 1; p >= 0; p--) {
      Part part = parts.get(p);
      while ((part.taken()[at >> 6] >> at & 1) != 0) {
        int n = Math.max(1, part.boards());
        boards[part.stock()] += n;
        at -= (int) (model.cost()[part.stock()] * n);
        if (part.boards() > 0) {
          break;
        }
      }
    }
    return boards;
  }
}
