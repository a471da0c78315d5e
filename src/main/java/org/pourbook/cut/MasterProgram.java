package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The linear program whose columns are ways to cut: of each length no less is cut than is wanted,
 * of limited stock no more is opened than there is, at least cost. Rows of other kinds may stand
 * between those of lengths and those of limits.
 */
final class MasterProgram {
  /** Worths are scaled so that the dearest stock is worth about 2 to this power. */
  private static final int BITS = 44;

  /** No board is worth more, so that adding up its pieces cannot overflow. */
  private static final double MOST_WORTH = 0x1p61;

  /** What a piece left out costs, in prices of the dearest stock. */
  private static final double LEFT_OUT = 1000;

  /** What counts as nothing, in prices of the dearest stock; columns must pay twice as much. */
  private static final double NOTHING = 1e-9;

  private static final double LEFT_OUT_AT_ALL = 1e-7;

  private final CutModel model;
  private final double dearest;
  private final double scale;
  private final int[] limitRow;

  /** Rows of lengths and others, before those of limits. */
  private final int wantedRows;

  private final Simplex simplex;
  private final List<Column> columns = new ArrayList<>();
  private final List<Integer> index = new ArrayList<>();

  /**
   * Starts without a way to cut: all is left out.
   *
   * @param otherRows right-hand sides of the other rows
   * @param leftOut pieces that one missing in each of them stands for
   */
  MasterProgram(CutModel model, int[] wanted, double[] otherRows, double[] leftOut) {
    this.model = model;
    this.dearest = Math.max(1, Arrays.stream(model.cost()).max().orElse(1));
    this.scale = Math.scalb(1.0, BITS - Math.getExponent(dearest));
    int n = model.items();
    this.wantedRows = n + otherRows.length;
    this.limitRow = limitRows(model, wantedRows);
    int limits = (int) Arrays.stream(limitRow).filter(row -> row >= 0).count();
    double[] rhs = new double[wantedRows + limits];
    double[] start = new double[rhs.length];
    for (int i = 0; i < n; i++) {
      rhs[i] = wanted[i];
      start[i] = LEFT_OUT * dearest;
    }
    for (int r = 0; r < otherRows.length; r++) {
      rhs[n + r] = otherRows[r];
      start[n + r] = LEFT_OUT * dearest * leftOut[r];
    }
    for (int k = 0; k < limitRow.length; k++) {
      if (limitRow[k] >= 0) {
        rhs[limitRow[k]] = model.limit()[k];
      }
    }
    this.simplex = new Simplex(rhs, start, NOTHING * dearest);
    for (int i = 0; i < n; i++) {
      simplex.add(new int[] {i}, new double[] {-1}, 0);
    }
  }

  private static int[] limitRows(CutModel model, int first) {
    int[] rows = new int[model.stocks()];
    int next = first;
    for (int k = 0; k < rows.length; k++) {
      rows[k] = model.isLimited(k) && model.limit()[k] > 0 ? next++ : -1;
    }
    return rows;
  }

  Simplex simplex() {
    return simplex;
  }

  List<Column> columns() {
    return List.copyOf(columns);
  }

  int size() {
    return columns.size();
  }

  /** Returns how often each column is cut, not whole. */
  double[] times() {
    double[] x = simplex.solution();
    return index.stream().mapToDouble(j -> x[j]).toArray();
  }

  /** Returns whether pieces are left out, or other rows not kept. */
  boolean isShort() {
    return Arrays.stream(simplex.solution()).limit(wantedRows).sum() >= LEFT_OUT_AT_ALL;
  }

  /**
   * Returns duals of lengths in the whole numbers that a {@link Knapsack} counts in; coarser ones
   * where very many short pieces, worth what leaving them out costs, fit on a board.
   */
  long[] worth(double[] duals) {
    double longest = Arrays.stream(model.size()).max().orElse(0);
    double most = 0;
    for (int i = 0; i < model.items(); i++) {
      most = Math.max(most, duals[i] * (longest / model.width()[i]));
    }
    double by = Math.min(scale, MOST_WORTH / most);
    long[] worth = new long[model.items()];
    for (int i = 0; i < worth.length; i++) {
      worth[i] = (long) Math.floor(Math.max(0, duals[i]) * by);
    }
    return worth;
  }

  /** Adds those columns that pay at these duals; returns whether any does. */
  boolean addPaying(Column[] priced, double[] duals) {
    boolean added = false;
    for (Column column : priced) {
      int k = column.stock();
      double reduced = model.cost()[k] - (limitRow[k] >= 0 ? duals[limitRow[k]] : 0);
      for (int at = 0; at < column.item().length; at++) {
        reduced -= duals[column.item()[at]] * column.count()[at];
      }
      if (reduced < -2 * NOTHING * dearest && model.limit()[k] > 0) {
        add(column);
        added = true;
      }
    }
    return added;
  }

  void add(Column column) {
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
}
