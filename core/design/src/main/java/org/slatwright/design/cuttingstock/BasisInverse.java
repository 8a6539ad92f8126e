package org.slatwright.design.cuttingstock;

import java.util.Arrays;

/** The inverse of a basis of a linear program, dense, a row for each basic variable. */
final class BasisInverse {

  private static final int SPARSE = 4;

  private int rows;
  private double[][] inverse = new double[16][16];

  /** Adds a row and a column of zeros. */
  void addRow() {
    if (rows == inverse.length) {
      int more = rows * 2;
      inverse = Arrays.copyOf(inverse, more);
      for (int r = 0; r < more; r++) {
        inverse[r] = inverse[r] == null ? new double[more] : Arrays.copyOf(inverse[r], more);
      }
    }
    Arrays.fill(inverse[rows], 0);
    for (int r = 0; r < rows; r++) {
      inverse[r][rows] = 0;
    }
    rows++;
  }

  /** May be written to until another variable enters. */
  double[] row(int row) {
    return inverse[row];
  }

  /**
   * Exchanges the basic variable of a row for another.
   *
   * @param column of the variable that enters, times the inverse
   * @return how many numbers were reckoned
   */
  long exchange(int leaving, double[] column) {
    double[] row = inverse[leaving];
    int[] at = new int[rows];
    int size = 0;
    for (int c = 0; c < rows; c++) {
      if (row[c] != 0) {
        row[c] /= column[leaving];
        at[size++] = c;
      }
    }
    boolean sparse = size * SPARSE < rows;
    int touched = 0;
    for (int r = 0; r < rows; r++) {
      if (r != leaving && column[r] != 0) {
        touched++;
        if (sparse) {
          subtract(inverse[r], column[r], row, at, size);
        } else {
          subtract(inverse[r], column[r], row, rows);
        }
      }
    }
    return (long) touched * (sparse ? size * SPARSE : rows);
  }

  private static void subtract(double[] from, double factor, double[] row, int[] at, int size) {
    for (int n = 0; n < size; n++) {
      from[at[n]] -= factor * row[at[n]];
    }
  }

  private static void subtract(double[] from, double factor, double[] row, int size) {
    for (int c = 0; c < size; c++) {
      from[c] -= factor * row[c];
    }
  }

  /**
   * The inverse of a square matrix, by elimination.
   *
   * @param matrix is used up
   */
  void invert(double[][] matrix) {
    rows = matrix.length;
    for (int r = 0; r < rows; r++) {
      Arrays.fill(inverse[r], 0, rows, 0);
      inverse[r][r] = 1;
    }
    for (int c = 0; c < rows; c++) {
      int best = c;
      for (int r = c + 1; r < rows; r++) {
        if (Math.abs(matrix[r][c]) > Math.abs(matrix[best][c])) {
          best = r;
        }
      }
      swap(matrix, c, best);
      swap(inverse, c, best);
      eliminate(matrix, c);
    }
  }

  private void eliminate(double[][] matrix, int c) {
    double pivot = matrix[c][c];
    for (int i = 0; i < rows; i++) {
      matrix[c][i] /= pivot;
      inverse[c][i] /= pivot;
    }
    for (int r = 0; r < rows; r++) {
      double factor = matrix[r][c];
      if (r != c && factor != 0) {
        subtract(matrix[r], factor, matrix[c], rows);
        subtract(inverse[r], factor, inverse[c], rows);
      }
    }
  }

  private static void swap(double[][] matrix, int one, int other) {
    double[] kept = matrix[one];
    matrix[one] = matrix[other];
    matrix[other] = kept;
  }
}
