package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.measure.Length;

/**
 * The linear program over all ways to cut and the divisions of runs at once: of each length no less
 * is cut than the pieces wanted and those of the divisions taken. It works in floating point and
 * bounds nothing: it says which divisions are worth trying.
 */
final class RunRelaxation {
  private static final int ROUNDS = 400;

  /** What a piece left out costs, in prices of the dearest stock. */
  private static final double LEFT_OUT = 1000;

  /** Worths are scaled so that the dearest stock is worth about 2 to this power. */
  private static final int BITS = 44;

  /**
   * What the program gave.
   *
   * @param costMicros of the stock opened, not whole
   * @param times how often each division of each kind is taken, not whole
   */
  record Result(double costMicros, double[][] times) {}

  private final CutModel model;
  private final List<RunKind> kinds;
  private final double dearest;
  private final int[] limitRow;
  private final Simplex simplex;
  private final int[][] taken;

  private RunRelaxation(
      Normalised all, int[] wanted, List<RunKind> kinds, List<List<List<Long>>> divisions) {
    this.model = all.model();
    this.kinds = kinds;
    this.dearest = Math.max(1, Arrays.stream(model.cost()).max().orElse(1));
    this.limitRow = new int[model.stocks()];
    this.simplex = simplex(wanted);
    this.taken = new int[kinds.size()][];
    for (int i = 0; i < model.items(); i++) {
      simplex.add(new int[] {i}, new double[] {-1}, 0);
    }
    for (int r = 0; r < taken.length; r++) {
      int row = model.items() + r;
      int courses = kinds.get(r).courses();
      taken[r] =
          divisions.get(r).stream().mapToInt(d -> addDivision(all, d, row, courses)).toArray();
    }
  }

  /**
   * Returns the program's solution; empty where it is too large or the stock is too little.
   *
   * @param divisions of each kind, at least one
   */
  static Optional<Result> solve(
      CutJob job, List<RunKind> kinds, List<List<List<Long>>> divisions, Effort effort) {
    Normalised all = Normalised.of(job.ofPieces(most(job, kinds, divisions)));
    Optional<Knapsack> knapsack = Knapsack.of(all.model(), effort.sums());
    if (knapsack.isEmpty()) {
      return Optional.empty();
    }
    int[] wanted = new int[all.model().items()];
    for (CutJob.Piece piece : job.pieces()) {
      wanted[item(all, piece.length().roundedUpTo(job.step()))] += piece.count();
    }
    try {
      return new RunRelaxation(all, wanted, kinds, divisions)
          .generate(knapsack.get(), effort, all.costUnit());
    } catch (ArithmeticException e) {
      return Optional.empty(); // the program went astray; other divisions are tried without it
    }
  }

  /** Returns the pieces wanted, and of each length as many as divisions can take. */
  private static List<CutJob.Piece> most(
      CutJob job, List<RunKind> kinds, List<List<List<Long>>> divisions) {
    List<CutJob.Piece> pieces = new ArrayList<>(job.pieces());
    for (int r = 0; r < kinds.size(); r++) {
      int runs = Math.multiplyExact(kinds.get(r).count(), kinds.get(r).courses());
      Map<Long, Integer> most = new TreeMap<>();
      for (List<Long> division : divisions.get(r)) {
        counted(division).forEach((length, count) -> most.merge(length, count, Math::max));
      }
      most.forEach(
          (length, count) ->
              pieces.add(
                  new CutJob.Piece(new Length(length), Math.multiplyExact(runs, count), "")));
    }
    return pieces;
  }

  private static Map<Long, Integer> counted(List<Long> division) {
    Map<Long, Integer> count = new TreeMap<>();
    division.forEach(length -> count.merge(length, 1, Integer::sum));
    return count;
  }

  private static int item(Normalised all, Length length) {
    return all.lengths().indexOf(length);
  }

  private Simplex simplex(int[] wanted) {
    int rows = model.items() + kinds.size();
    for (int k = 0; k < model.stocks(); k++) {
      limitRow[k] = model.isLimited(k) ? rows++ : -1;
    }
    double[] rhs = new double[rows];
    double[] start = new double[rows];
    for (int i = 0; i < wanted.length; i++) {
      rhs[i] = wanted[i];
      start[i] = LEFT_OUT * dearest;
    }
    for (int r = 0; r < kinds.size(); r++) {
      RunKind kind = kinds.get(r);
      rhs[model.items() + r] = kind.count();
      start[model.items() + r] = 2 * LEFT_OUT * dearest * kind.pieces() * kind.courses();
    }
    for (int k = 0; k < model.stocks(); k++) {
      if (limitRow[k] >= 0) {
        rhs[limitRow[k]] = model.limit()[k];
      }
    }
    return new Simplex(rhs, start, 1e-9 * dearest);
  }

  private int addDivision(Normalised all, List<Long> division, int kindRow, int courses) {
    Map<Long, Integer> count = counted(division);
    int[] rows = new int[count.size() + 1];
    double[] values = new double[rows.length];
    int at = 0;
    for (Map.Entry<Long, Integer> piece : count.entrySet()) {
      rows[at] = item(all, new Length(piece.getKey()));
      values[at++] = -courses * (double) piece.getValue();
    }
    rows[at] = kindRow;
    values[at] = 1;
    return simplex.add(rows, values, 0);
  }

  private Optional<Result> generate(Knapsack knapsack, Effort effort, long costUnit) {
    double scale = Math.scalb(1.0, BITS - Math.getExponent(dearest));
    boolean added = true;
    for (int round = 0; added && round < ROUNDS; round++) {
      if (simplex.solve(effort.pivots()) == effort.pivots()) {
        return Optional.empty();
      }
      double[] duals = simplex.duals();
      long[] worth = new long[model.items()];
      for (int i = 0; i < worth.length; i++) {
        worth[i] = (long) Math.floor(Math.max(0, duals[i]) * scale);
      }
      added = addPriced(knapsack.best(model, worth), duals);
    }
    double cost = simplex.objective();
    return cost >= LEFT_OUT * dearest / 2 && isShort()
        ? Optional.empty()
        : Optional.of(new Result(cost * costUnit, times()));
  }

  /** Returns whether pieces or runs were left out for want of stock. */
  private boolean isShort() {
    double[] x = simplex.solution();
    for (int row = 0; row < model.items() + kinds.size(); row++) {
      if (x[row] > 1e-7) {
        return true;
      }
    }
    return false;
  }

  private double[][] times() {
    double[] x = simplex.solution();
    double[][] times = new double[taken.length][];
    for (int r = 0; r < taken.length; r++) {
      times[r] = Arrays.stream(taken[r]).mapToDouble(column -> x[column]).toArray();
    }
    return times;
  }

  private boolean addPriced(Knapsack.Best best, double[] duals) {
    boolean added = false;
    for (Column column : best.columns()) {
      int limit = limitRow[column.stock()];
      int n = column.item().length;
      int[] rows = Arrays.copyOf(column.item(), limit >= 0 ? n + 1 : n);
      double[] values = new double[rows.length];
      double reduced = model.cost()[column.stock()];
      for (int at = 0; at < n; at++) {
        values[at] = column.count()[at];
        reduced -= duals[rows[at]] * values[at];
      }
      if (limit >= 0) {
        rows[n] = limit;
        values[n] = 1;
        reduced -= duals[limit];
      }
      if (reduced < -1e-7 * dearest) {
        simplex.add(rows, values, model.cost()[column.stock()]);
        added = true;
      }
    }
    return added;
  }
}
