package org.pourbook.cut;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** How good and how fast the plans are, for six families of stock and pieces. */
public final class CutTable {
  private static final int[][] SIZES = {
    {5, 100}, {10, 100}, {10, 1_000}, {50, 1_000}, {50, 10_000}, {200, 1_000}, {200, 10_000}
  };

  private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

  private final PrintStream out;
  private final CutPlanner planner;
  private final int seeds;

  private CutTable(PrintStream out, CutPlanner planner, int seeds) {
    this.out = out;
    this.planner = planner;
    this.seeds = seeds;
  }

  /**
   * Prints the table: a row for each family, number of lengths and number of pieces.
   *
   * @param prove whether to plan as with {@code --prove}
   * @param largest the most pieces
   * @param seeds plans a row
   */
  public static void print(PrintStream out, boolean prove, int largest, int seeds) {
    CutPlanner planner = prove ? OptimalPlanner.proving() : OptimalPlanner.usual();
    CutTable table = new CutTable(out, planner, seeds);
    table.plan(RandomJobs.job(RandomJobs.Family.SIX_LONG, 50, 1_000, 99));
    out.println(
        "stock m n | proven avg-gap% worst-gap% worst-gap | saved% against BFD, FFD | median max CPU-ms");
    for (RandomJobs.Family family : RandomJobs.Family.values()) {
      for (int[] size : SIZES) {
        if (size[1] <= largest) {
          table.row(family, size[0], size[1]);
        }
      }
    }
    out.println("most heap in use " + (peakHeap() >> 20) + " MiB");
  }

  /** Returns the sum of what each part of the heap held at its fullest, garbage included. */
  private static long peakHeap() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .mapToLong(pool -> pool.getPeakUsage().getUsed())
        .sum();
  }

  private void row(RandomJobs.Family family, int lengths, int pieces) {
    int proven = 0;
    double gaps = 0;
    double worst = 0;
    double worstMoney = 0;
    double cost = 0;
    double bestFit = 0;
    double firstFit = 0;
    List<Long> times = new ArrayList<>();
    for (int seed = 1; seed <= seeds; seed++) {
      CutJob job = RandomJobs.job(family, lengths, pieces, seed);
      long start = CPU.getCurrentThreadCpuTime();
      CutResult.Planned plan = plan(job);
      times.add((CPU.getCurrentThreadCpuTime() - start) / 1_000_000);
      double gap = 100.0 * (plan.costMicros() - plan.boundMicros()) / plan.costMicros();
      proven += plan.isProven() ? 1 : 0;
      gaps += gap;
      worst = Math.max(worst, gap);
      worstMoney = Math.max(worstMoney, (plan.costMicros() - plan.boundMicros()) / 1e6);
      cost += plan.costMicros();
      bestFit += BestFit.costMicros(job);
      firstFit += ((CutResult.Planned) new FirstFitPlanner().plan(job)).costMicros();
    }
    times.sort(null);
    out.println(
        String.format(
            Locale.ROOT,
            "%-10s %3d %5d | %d/%d %.4f %.4f $%.2f | %.2f %.2f | %d %d",
            family,
            lengths,
            pieces,
            proven,
            seeds,
            gaps / seeds,
            worst,
            worstMoney,
            100 * (bestFit - cost) / bestFit,
            100 * (firstFit - cost) / firstFit,
            times.get(seeds / 2),
            times.get(seeds - 1)));
  }

  private CutResult.Planned plan(CutJob job) {
    return (CutResult.Planned) planner.plan(job);
  }

  /**
   * The rule of thumb to compare with: pieces longest first into the open board with the least room
   * that holds them, else into a new board of the least price a foot; in the end every board is
   * exchanged for the cheapest that holds what it holds.
   */
  private static final class BestFit {
    static long costMicros(CutJob job) {
      CutModel model = Normalised.of(job).model();
      List<long[]> boards = new ArrayList<>();
      for (int i = 0; i < model.items(); i++) {
        for (int n = 0; n < model.demand()[i]; n++) {
          place(model, boards, model.width()[i]);
        }
      }
      long cost = boards.stream().mapToLong(b -> cheapest(model, b[0] - b[1])).sum();
      return cost * Normalised.of(job).costUnit();
    }

    /** A board is its size and the room left. */
    private static void place(CutModel model, List<long[]> boards, long width) {
      long[] best = null;
      for (long[] board : boards) {
        if (board[1] >= width && (best == null || board[1] < best[1])) {
          best = board;
        }
      }
      if (best == null) {
        long size = newBoard(model, width);
        best = new long[] {size, size};
        boards.add(best);
      }
      best[1] -= width;
    }

    private static long newBoard(CutModel model, long width) {
      double least = Double.MAX_VALUE;
      long size = 0;
      for (int k = 0; k < model.stocks(); k++) {
        double rate = (double) model.cost()[k] / model.size()[k];
        if (model.size()[k] >= width && rate < least) {
          least = rate;
          size = model.size()[k];
        }
      }
      return size;
    }

    private static long cheapest(CutModel model, long used) {
      long[] costs = model.cost();
      return Arrays.stream(
              IntStream.range(0, costs.length)
                  .filter(k -> model.size()[k] >= used)
                  .mapToLong(k -> costs[k])
                  .toArray())
          .min()
          .orElseThrow();
    }
  }
}
