package org.pourbook.cut;

/** The explicit inverse of a simplex basis, row by row. */
final class BasisInverse {
  private final int size;
  private final double[][] inverse;

  /** Starts as that of unit columns. */
  BasisInverse(int size) {
    this.size = size;
    this.inverse = new double[size][size];
    for (int r = 0; r < size; r++) {
      inverse[r][r] = 1;
    }
  }

  /** Returns the inverse times a sparse column. */
  double[] times(int[] rowsOf, double[] values) {
    double[] product = new double[size];
    for (int r = 0; r < size; r++) {
      double sum = 0;
      for (int at = 0; at < rowsOf.length; at++) {
        sum += inverse[r][rowsOf[at]] * values[at];
      }
      product[r] = sum;
    }
    return product;
  }

  /** Returns a row of the inverse times a column. */
  double product(int row, double[] column) {
    double sum = 0;
    for (int c = 0; c < size; c++) {
      sum += inverse[row][c] * column[c];
    }
    return sum;
  }

  /** Adds a row of the inverse, so many times, to a vector. */
  void addRow(int row, double times, double[] to) {
    for (int c = 0; c < size; c++) {
      to[c] += times * inverse[row][c];
    }
  }

  /**
   * Exchanges a column of the basis.
   *
   * @param direction the inverse times the new column
   */
  void pivot(int leave, double[] direction) {
    double[] pivotRow = inverse[leave];
    double by = 1 / direction[leave];
    for (int c = 0; c < size; c++) {
      pivotRow[c] *= by;
    }
    for (int r = 0; r < size; r++) {
      double factor = direction[r];
      if (r != leave && factor != 0) {
        double[] other = inverse[r];
        for (int c = 0; c < size; c++) {
          other[c] -= factor * pivotRow[c];
        }
      }
    }
  }

  /** Computes the inverse of these columns anew. */
  void refactor(int[][] rowsOf, double[][] values) {
    double[][] matrix = new double[size][2 * size];
    for (int c = 0; c < size; c++) {
      for (int at = 0; at < rowsOf[c].length; at++) {
        matrix[rowsOf[c][at]][c] = values[c][at];
      }
      matrix[c][size + c] = 1;
    }
    eliminate(matrix);
    for (int r = 0; r < size; r++) {
      System.arraycopy(matrix[r], size, inverse[r], 0, size);
    }
  }

  private static void eliminate(double[][] matrix) {
    int rows = matrix.length;
    for (int c = 0; c < rows; c++) {
      int best = c;
      for (int r = c + 1; r < rows; r++) {
        if (Math.abs(matrix[r][c]) > Math.abs(matrix[best][c])) {
          best = r;
        }
      }
      double[] swap = matrix[c];
      matrix[c] = matrix[best];
      matrix[best] = swap;
      if (Math.abs(matrix[c][c]) < 1e-12) {
        throw new ArithmeticException("the basis is singular");
      }
      double by = 1 / matrix[c][c];
      for (int k = c; k < 2 * rows; k++) {
        matrix[c][k] *= by;
      }
      for (int r = 0; r < rows; r++) {
        double factor = matrix[r][c];
        if (r != c && factor != 0) {
          for (int k = c; k < 2 * rows; k++) {
            matrix[r][k] -= factor * matrix[c][k];
          }
        }
      }
    }
  }
}
