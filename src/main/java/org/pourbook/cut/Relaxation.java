package org.pourbook.cut;

import java.math.BigInteger;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
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
  record Certificate(long[] stockWorth, BigInteger total) {

    /** Returns the certificate in coarser units of worth, rounded so that it stays one. */
    Certificate ofBits(int most) {
      int shift = Math.max(0, total.bitLength() - most);
      long[] coarse = LongStream.of(stockWorth).map(w -> -(-w >> shift)).toArray();
      return new Certificate(coarse, total.shiftRight(shift));
    }

    /** Returns the certificate of worths that are the widths. */
    static Certificate byLength(CutModel model, Knapsack knapsack) {
      return new Certificate(
          knapsack.best(model, model.width()).worth(), BigInteger.valueOf(model.totalWidth()));
    }
  }

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

  private static final double SMOOTHING = 0.5;

  private final CutModel model;
  private final Workshop workshop;
  private final MasterProgram program;
  private OptionalLong bound = OptionalLong.of(0);
  private double realBound;
  private @Nullable Certificate certificate;
  private boolean improved;
  private boolean misPriced;

  private Relaxation(CutModel model, Workshop workshop) {
    this.model = model;
    this.workshop = workshop;
    this.program = new MasterProgram(model, model.demand(), new double[0], new double[0]);
  }

  /** Returns the solution, starting from these seeds without what is not wanted. */
  static Result solve(CutModel model, Workshop workshop, List<Column> seeds) {
    return solve(model, workshop, seeds, workshop.effort().rounds());
  }

  /** Returns what this many rounds give, perhaps short of the solution. */
  static Result solve(CutModel model, Workshop workshop, List<Column> seeds, int rounds) {
    Relaxation relaxation = new Relaxation(model, workshop);
    Set<Column> known = new TreeSet<>(Column.ORDER);
    for (Column seed : seeds) {
      Column wanted = seed.within(model.demand());
      if (wanted.item().length > 0 && model.limit()[seed.stock()] > 0 && known.add(wanted)) {
        relaxation.program.add(wanted);
      }
    }
    return relaxation.generate(workshop.effort(), rounds);
  }

  private Result generate(Effort effort, int rounds) {
    Simplex simplex = program.simplex();
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
      boolean added = program.addPaying(best.columns(), duals);
      misPriced = smooth && !added;
      if (stopped || bound.isEmpty() || isReached() || program.size() > effort.columns()) {
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
    long[] worth = program.worth(duals);
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
    double value = program.simplex().objective();
    return value - realBound < 1e-3
        || (model.stocks() == 1 && bound.orElse(0) >= Math.ceil(value - 1e-6));
  }

  private Result result(OptionalLong bound, @Nullable Certificate certificate) {
    if (certificate == null) {
      throw new IllegalStateException("no round of column generation was made");
    }
    return new Result(program.columns(), program.times(), bound, certificate, !program.isShort());
  }

  private BigInteger total(long[] worth) {
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < worth.length; i++) {
      sum = sum.add(BigInteger.valueOf(worth[i]).multiply(BigInteger.valueOf(model.demand()[i])));
    }
    return sum;
  }
}
