package org.slatwright.design.cuttingstock;

import java.util.Arrays;

/** The columns of a linear program, of which only the entries that are not zero are kept. */
final class SparseColumns {

  private int columns;
  private int[][] rowsOf = new int[16][];
  private double[][] valuesOf = new double[16][];
  private int[] sizeOf = new int[16];
  private long entries;

  /** Adds a column; the arrays belong to it from then on. */
  void add(int[] rows, double[] values) {
    if (columns == sizeOf.length) {
      int more = columns * 2;
      rowsOf = Arrays.copyOf(rowsOf, more);
      valuesOf = Arrays.copyOf(valuesOf, more);
      sizeOf = Arrays.copyOf(sizeOf, more);
    }
    rowsOf[columns] = rows;
    valuesOf[columns] = values;
    sizeOf[columns++] = rows.length;
    entries += rows.length;
  }

  /** Enters a value in a row below all others of its column. */
  void enter(int column, int row, double value) {
    int at = sizeOf[column]++;
    if (at == rowsOf[column].length) {
      int more = Math.max(4, at * 2);
      rowsOf[column] = Arrays.copyOf(rowsOf[column], more);
      valuesOf[column] = Arrays.copyOf(valuesOf[column], more);
    }
    rowsOf[column][at] = row;
    valuesOf[column][at] = value;
    entries++;
  }

  /** Takes away all columns and all rows but the first ones. */
  void keep(int firstColumns, int firstRows) {
    for (int j = 0; j < firstColumns; j++) {
      while (sizeOf[j] > 0 && rowsOf[j][sizeOf[j] - 1] >= firstRows) {
        sizeOf[j]--;
        entries--;
      }
    }
    while (columns > firstColumns) {
      entries -= sizeOf[--columns];
    }
  }

  /** How many entries there are in all. */
  long entries() {
    return entries;
  }

  boolean isIn(int column, int row) {
    for (int e = sizeOf[column] - 1; e >= 0; e--) {
      if (rowsOf[column][e] == row) {
        return true;
      }
    }
    return false;
  }

  /** The sum of a column's entries, each times the multiplier of its row. */
  double times(double[] multipliers, int column) {
    double sum = 0;
    int[] at = rowsOf[column];
    double[] values = valuesOf[column];
    for (int e = sizeOf[column] - 1; e >= 0; e--) {
      sum += multipliers[at[e]] * values[e];
    }
    return sum;
  }

  /** Adds a column so many times to the sums of the rows. */
  void addTo(double[] sums, int column, double times) {
    for (int e = 0; e < sizeOf[column]; e++) {
      sums[rowsOf[column][e]] += valuesOf[column][e] * times;
    }
  }
}
