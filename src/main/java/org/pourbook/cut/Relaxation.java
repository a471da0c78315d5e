package org.pourbook.cut;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * The linear program over all ways to cut (Gilmore and Gomory 1961), solved by column generation:
 * whole boards are left aside, so its value is a bound and its solution a guide for rounding.
 */
final class Relaxation {

  /**
   * Worths in whole numbers and what a board of each stock length can hold of them, which is all a
   * proof needs.
   *
   * @param stockWorth most worth cut from each stock length
   * @param total worth of all pieces
   */
  record Certificate(long[] stockWorth, BigInteger total) {}

  /**
   * What column generation gave.
   *
   * @param times how often each column is cut, not whole
   * @param bound certified lower bound of the cost; empty where the stock certainly is not enough
   * @param certificate of the best bound
   * @param complete whether the program found stock for every piece
   */
  record Result(
      List<Column> columns,
      double[] times,
      OptionalLong bound,
      Certificate certificate,
      boolean complete) {}

  /** Worths are scaled so that the dearest stock is worth about 2 to this power. */
  private static final int BITS = 44;

  private static final double SMOOTHING = 0.5;

  /** What a piece left out costs, in prices of the dearest stock. */
  private static final double LEFT_OUT = 1000;

  private final CutModel model;
  private final Workshop workshop;
  private final int[] limitRow;
  private final Simplex simplex;
  private final double dearest;
  private final double scale;
  private OptionalLong bound = OptionalLong.of(0);
  private double realBound;
  private @Nullable Certificate certificate;
  private boolean improved;
  private boolean misPriced;
  private final List<Column> columns = new ArrayList<>();
  private final List<Integer> index = new ArrayList<>();

  private Relaxation(CutModel model, Workshop workshop) {
    this.model = model;
    this.workshop = workshop;
    this.limitRow = new int[model.stocks()];
    int rows = model.items();
    long most = 1;
    for (int k = 0; k < model.stocks(); k++) {
      limitRow[k] = model.isLimited(k) && model.limit()[k] > 0 ? rows++ : -1;
      most = Math.max(most, model.cost()[k]);
    }
    this.dearest = most;
    this.scale = Math.scalb(1.0, BITS - Math.getExponent(dearest));
    double[] rhs = new double[rows];
    double[] start = new double[rows];
    for (int i = 0; i < model.items(); i++) {
      rhs[i] = model.demand()[i];
      start[i] = LEFT_OUT * dearest;
    }
    for (int k = 0; k < model.stocks(); k++) {
      if (limitRow[k] >= 0) {
        rhs[limitRow[k]] = model.limit()[k];
      }
    }
    this.simplex = new Simplex(rhs, start, 1e-9 * dearest);
    for (int i = 0; i < model.items(); i++) {
      simplex.add(new int[] {i}, new double[] {-1}, 0);
    }
  }

  /** Returns the solution, starting from those seeds that cut no more than is wanted. */
  static Result solve(CutModel model, Workshop workshop, List<Column> seeds) {
    return solve(model, workshop, seeds, workshop.effort().rounds());
  }

  /** Returns what this many rounds give, perhaps short of the solution. */
  static Result solve(CutModel model, Workshop workshop, List<Column> seeds, int rounds) {
    Relaxation relaxation = new Relaxation(model, workshop);
    for (Column seed : seeds) {
      if (seed.timesWithin(model.demand()) >= 1 && model.limit()[seed.stock()] > 0) {
        relaxation.add(seed);
      }
    }
    return relaxation.generate(workshop.effort(), rounds);
  }

  private Result generate(Effort effort, int rounds) {
    double[] centre = simplex.duals();
    for (int round = 0; round < rounds; round++) {
      int pivots = simplex.solve(effort.pivots());
      workshop.steps().take((long) pivots * simplex.rows() * simplex.rows());
      boolean stopped = pivots == effort.pivots();
      double[] duals = simplex.duals();
      boolean smooth = round > 0 && !misPriced;
      double[] at = smooth ? between(centre, duals) : duals;
      Knapsack.Best best = price(at);
      if (improved) {
        centre = at;
      }
      boolean added = addPriced(best, duals);
      misPriced = smooth && !added;
      if (stopped || bound.isEmpty() || isReached() || columns.size() > effort.columns()) {
        break;
      }
      if (!added && !smooth) {
        break;
      }
    }
    return result(bound, certificate);
  }

  /** Prices where the bound was best and where it is now, halfway: fewer rounds (Wentges 1997). */
  private static double[] between(double[] centre, double[] duals) {
    double[] at = new double[duals.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = SMOOTHING * centre[i] + (1 - SMOOTHING) * duals[i];
    }
    return at;
  }

  /** Finds the best columns for the worths that duals give, and the bound that follows. */
  private Knapsack.Best price(double[] duals) {
    long[] worth = worth(duals);
    Knapsack.Best best = workshop.knapsack().best(model, worth);
    workshop.steps().take(best.steps());
    Certificate here = new Certificate(best.worth(), total(worth));
    OptionalLong exact = CoverBound.of(model, here.stockWorth(), here.total());
    double real = CoverBound.nearly(model, here.stockWorth(), here.total().doubleValue());
    improved = certificate == null || real > realBound;
    if (improved || exact.isEmpty()) {
      realBound = real;
      bound = exact;
      certificate = here;
    }
    return best;
  }

  /** A bound that rounds up to the program's own value, or all but equals it, is the best here. */
  private boolean isReached() {
    double value = simplex.objective();
    return value - realBound < 1e-3
        || (model.stocks() == 1 && bound.orElse(0) >= Math.ceil(value - 1e-6));
  }

  private Result result(OptionalLong bound, @Nullable Certificate certificate) {
    if (certificate == null) {
      throw new IllegalStateException("no round of column generation was made");
    }
    double[] x = simplex.solution();
    double leftOut = 0;
    for (int i = 0; i < model.items(); i++) {
      leftOut += x[i];
    }
    double[] times = new double[columns.size()];
    for (int j = 0; j < times.length; j++) {
      times[j] = x[index.get(j)];
    }
    return new Result(List.copyOf(columns), times, bound, certificate, leftOut < 1e-7);
  }

  /** Adds those columns that pay at the program's own duals. */
  private boolean addPriced(Knapsack.Best best, double[] duals) {
    boolean added = false;
    for (Column column : best.columns()) {
      int k = column.stock();
      double reduced = model.cost()[k] - (limitRow[k] >= 0 ? duals[limitRow[k]] : 0);
      for (int at = 0; at < column.item().length; at++) {
        reduced -= duals[column.item()[at]] * column.count()[at];
      }
      if (reduced < -2e-9 * dearest && model.limit()[k] > 0) {
        add(column);
        added = true;
      }
    }
    return added;
  }

  private void add(Column column) {
    int stock = column.stock();
    int n = column.item().length;
    int[] rows = Arrays.copyOf(column.item(), limitRow[stock] >= 0 ? n + 1 : n);
    double[] values = new double[rows.length];
    for (int at = 0; at < n; at++) {
      values[at] = column.count()[at];
    }
    if (limitRow[stock] >= 0) {
      rows[n] = limitRow[stock];
      values[n] = 1;
    }
    columns.add(column);
    index.add(simplex.add(rows, values, model.cost()[stock]));
  }

  private long[] worth(double[] duals) {
    long[] worth = new long[model.items()];
    for (int i = 0; i < worth.length; i++) {
      worth[i] = (long) Math.floor(Math.max(0, duals[i]) * scale);
    }
    return worth;
  }

  private BigInteger total(long[] worth) {
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < worth.length; i++) {
      sum = sum.add(BigInteger.valueOf(worth[i]).multiply(BigInteger.valueOf(model.demand()[i])));
    }
    return sum;
  }
}
