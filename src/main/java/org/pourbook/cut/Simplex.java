package org.pourbook.cut;

import java.util.Arrays;

/**
 * A revised simplex method with an explicit inverse for {@code min c·x, A·x = b, x ≥ 0}, which
 * stays warm while columns are added. It works in floating point: what it gives is a guide, never a
 * proof.
 */
final class Simplex {
  private static final double PIVOT = 1e-9;
  private static final int REFACTOR_AFTER = 150;
  private static final int BLAND_AFTER = 200;

  private final int rows;
  private final double[] rhs;
  private final double tolerance;

  private int columns;
  private int[][] row = new int[64][];
  private double[][] value = new double[64][];
  private double[] cost = new double[64];
  private boolean[] basic = new boolean[64];

  private final int[] basis;
  private final BasisInverse inverse;
  private final double[] basicValue;
  private final double[] dual;
  private int sinceRefactor;

  /**
   * Starts from one unit column a row.
   *
   * @param startCost cost of each row's unit column
   * @param tolerance reduced costs above minus this count as none
   */
  Simplex(double[] rhs, double[] startCost, double tolerance) {
    this.rows = rhs.length;
    this.rhs = rhs.clone();
    this.tolerance = tolerance;
    this.basis = new int[rows];
    this.inverse = new BasisInverse(rows);
    this.basicValue = rhs.clone();
    this.dual = startCost.clone();
    for (int r = 0; r < rows; r++) {
      basis[r] = add(new int[] {r}, new double[] {1}, startCost[r]);
      basic[basis[r]] = true;
    }
  }

  /** Adds a column; returns its index. */
  int add(int[] rowsOf, double[] values, double itsCost) {
    if (columns == cost.length) {
      row = Arrays.copyOf(row, 2 * columns);
      value = Arrays.copyOf(value, 2 * columns);
      cost = Arrays.copyOf(cost, 2 * columns);
      basic = Arrays.copyOf(basic, 2 * columns);
    }
    row[columns] = rowsOf;
    value[columns] = values;
    cost[columns] = itsCost;
    return columns++;
  }

  int rows() {
    return rows;
  }

  double[] duals() {
    return dual.clone();
  }

  /** Returns the value of every column. */
  double[] solution() {
    double[] x = new double[columns];
    for (int r = 0; r < rows; r++) {
      x[basis[r]] = Math.max(0, basicValue[r]);
    }
    return x;
  }

  double objective() {
    double sum = 0;
    for (int r = 0; r < rows; r++) {
      sum += cost[basis[r]] * basicValue[r];
    }
    return sum;
  }

  /** Improves until optimal; returns the pivots made, {@code most} where it was stopped. */
  int solve(int most) {
    int degenerate = 0;
    for (int pivots = 0; pivots < most; pivots++) {
      boolean bland = degenerate > BLAND_AFTER;
      int enter = entering(bland);
      if (enter < 0) {
        return pivots;
      }
      double[] direction = inverse.times(row[enter], value[enter]);
      int leave = leaving(direction, bland);
      if (leave < 0) {
        throw new ArithmeticException("the linear program is unbounded");
      }
      double step = basicValue[leave] / direction[leave];
      degenerate = step > PIVOT ? 0 : degenerate + 1;
      pivot(enter, leave, direction, step);
    }
    return most;
  }

  private int entering(boolean first) {
    int best = -1;
    double least = -tolerance;
    for (int j = 0; j < columns; j++) {
      if (basic[j]) {
        continue;
      }
      double reduced = reducedCost(j);
      if (reduced < least) {
        least = reduced;
        best = j;
        if (first) {
          break;
        }
      }
    }
    return best;
  }

  private double reducedCost(int j) {
    double reduced = cost[j];
    for (int at = 0; at < row[j].length; at++) {
      reduced -= dual[row[j][at]] * value[j][at];
    }
    return reduced;
  }

  private int leaving(double[] direction, boolean bland) {
    int leave = -1;
    double least = Double.MAX_VALUE;
    for (int r = 0; r < rows; r++) {
      if (direction[r] <= PIVOT) {
        continue;
      }
      double ratio = basicValue[r] / direction[r];
      boolean tie = leave >= 0 && Math.abs(ratio - least) <= PIVOT;
      boolean better =
          tie ? (bland ? basis[r] < basis[leave] : direction[r] > direction[leave]) : ratio < least;
      if (better) {
        leave = r;
        least = Math.min(least, ratio);
      }
    }
    return leave;
  }

  private void pivot(int enter, int leave, double[] direction, double step) {
    double reduced = reducedCost(enter);
    inverse.pivot(leave, direction);
    for (int r = 0; r < rows; r++) {
      if (r != leave && direction[r] != 0) {
        basicValue[r] = Math.max(0, basicValue[r] - direction[r] * step);
      }
    }
    basicValue[leave] = step;
    inverse.addRow(leave, reduced, dual);
    basic[basis[leave]] = false;
    basic[enter] = true;
    basis[leave] = enter;
    if (++sinceRefactor >= REFACTOR_AFTER) {
      refactor();
    }
  }

  /** Computes the inverse anew, so that rounding errors do not add up. */
  private void refactor() {
    sinceRefactor = 0;
    int[][] rowsOf = new int[rows][];
    double[][] values = new double[rows][];
    for (int c = 0; c < rows; c++) {
      rowsOf[c] = row[basis[c]];
      values[c] = value[basis[c]];
    }
    inverse.refactor(rowsOf, values);
    Arrays.fill(dual, 0);
    for (int r = 0; r < rows; r++) {
      basicValue[r] = Math.max(0, inverse.product(r, rhs));
      inverse.addRow(r, cost[basis[r]], dual);
    }
  }
}
