package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The most worth of boards for every total, exactly, limits and all. */
final class PurchasesByTotal implements Purchases.Table {
  private final CutModel model;
  private final long[] worth;
  private final long[] most;
  private final List<Part> parts = new ArrayList<>();

  /** Some boards of one stock length taken together; zero boards: any number of single ones. */
  private record Part(int stock, int boards, long[] taken) {}

  /** Fills in all totals less than {@code below}; boards without a price are had in any case. */
  PurchasesByTotal(CutModel model, long[] worth, int below) {
    this.model = model;
    this.worth = worth;
    this.most = new long[below];
    Arrays.fill(most, 1, below, NONE);
    for (int k = 0; k < model.stocks(); k++) {
      if (model.cost()[k] == 0) {
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
      take(taken, at, most[at - price] + worth[stock]);
    }
  }

  private void addOnce(int stock, int boards) {
    long[] taken = newPart(stock, boards);
    int price = (int) Math.min(most.length, model.cost()[stock] * boards);
    for (int at = most.length - 1; at >= price; at--) {
      take(taken, at, most[at - price] + worth[stock] * boards);
    }
  }

  private void take(long[] taken, int at, long with) {
    if (with > most[at] && with >= 0) {
      most[at] = with;
      taken[at >> 6] |= 1L << at;
    }
  }

  private long[] newPart(int stock, int boards) {
    long[] taken = new long[(most.length >> 6) + 1];
    parts.add(new Part(stock, boards, taken));
    return taken;
  }

  @Override
  public long worth(long total) {
    return most[(int) total];
  }

  @Override
  public long steps() {
    return (long) most.length * parts.size();
  }

  @Override
  public Optional<int[]> boards(long total) {
    int[] boards = new int[model.stocks()];
    for (int k = 0; k < boards.length; k++) {
      boards[k] = model.cost()[k] == 0 ? model.limit()[k] : 0;
    }
    int at = (int) total;
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
    return Optional.of(boards);
  }
}
