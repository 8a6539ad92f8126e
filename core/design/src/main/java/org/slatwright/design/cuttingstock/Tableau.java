package org.slatwright.design.cuttingstock;

import java.util.Arrays;
import org.slatwright.design.cuttingstock.Variables.Place;

/**
 * A basis of a linear program: which variable is basic in each row, the inverse, the levels of the
 * basic variables and the duals of the rows, all kept right from exchange to exchange.
 */
final class Tableau {

  /** What counts as nought. */
  static final double TINY = 1e-9;

  /** The least that may be divided by in an exchange. */
  static final double PIVOT = 1e-7;

  /** Exchanges without progress after which the first candidate is taken instead of the best. */
  static final int STALLED = 200;

  /** Exchanges after which the inverse is checked. */
  private static final int CHECK = 64;

  private final Variables variables;
  private final SparseColumns columns;
  private final Work work;

  private int rows;
  private int[] basic = new int[16];
  private double[] level = new double[16];
  private double[] dual = new double[16];
  private final BasisInverse inverse = new BasisInverse();
  private int exchanges;

  Tableau(Variables variables, Work work) {
    this.variables = variables;
    this.columns = variables.columns;
    this.work = work;
  }

  /** Adds the sum of such variables as a row; its own variable is basic in it. */
  void addRow(int own, int[] members) {
    int row = rows++;
    grow();
    inverse.addRow();
    double[] bottom = inverse.row(row);
    double sum = 0;
    for (int j : members) {
      sum += variables.isBasic(j) ? 0 : variables.at(j);
    }
    for (int r = 0; r < row; r++) {
      if (columns.isIn(basic[r], row)) {
        sum += level[r];
        for (int c = 0; c < row; c++) {
          bottom[c] += inverse.row(r)[c];
        }
      }
    }
    bottom[row] = -1;
    basic[row] = own;
    level[row] = sum;
    dual[row] = 0;
  }

  private void grow() {
    if (rows > basic.length) {
      int more = basic.length * 2;
      basic = Arrays.copyOf(basic, more);
      level = Arrays.copyOf(level, more);
      dual = Arrays.copyOf(dual, more);
    }
  }

  int rows() {
    return rows;
  }

  /** The variable that is basic in a row. */
  int basic(int row) {
    return basic[row];
  }

  int[] basics() {
    return Arrays.copyOf(basic, rows);
  }

  /** The value of the basic variable of a row. */
  double level(int row) {
    return level[row];
  }

  /** A row of the inverse. */
  double[] row(int row) {
    return inverse.row(row);
  }

  double[] duals() {
    return Arrays.copyOf(dual, rows);
  }

  double reduced(int variable) {
    return variables.cost(variable) - columns.times(dual, variable);
  }

  /** A variable's column times the inverse. */
  double[] column(int variable) {
    double[] column = new double[rows];
    for (int r = 0; r < rows; r++) {
      column[r] = columns.times(inverse.row(r), variable);
    }
    return column;
  }

  /** The value of every variable, by its index. */
  double[] values() {
    double[] x = valuesBesideTheBasis();
    for (int r = 0; r < rows; r++) {
      x[basic[r]] = level[r];
    }
    return x;
  }

  /** Choosing a variable looks at every entry; the exchange itself is counted as it is made. */
  long workOfChoosing() {
    return columns.entries() * 2 + variables.size() * 2L + rows * 20L;
  }

  /** Moves the levels after a variable that is not basic has changed. */
  void shift(int variable, double change) {
    for (int r = 0; r < rows; r++) {
      level[r] -= columns.times(inverse.row(r), variable) * change;
    }
  }

  /**
   * Exchanges the basic variable of a row for another.
   *
   * @param column of the variable that enters, times the inverse
   * @param step by how much that variable changes
   * @param to where the variable that leaves goes
   */
  void exchange(int leaving, int entering, double[] column, double step, Place to) {
    double start = variables.at(entering);
    double d = reduced(entering);
    for (int r = 0; r < rows; r++) {
      level[r] -= step * column[r];
    }
    variables.put(basic[leaving], to);
    variables.put(entering, Place.BASIC);
    basic[leaving] = entering;
    level[leaving] = start + step;
    work.spend(inverse.exchange(leaving, column));
    double[] row = inverse.row(leaving);
    for (int c = 0; c < rows; c++) {
      dual[c] += d * row[c];
    }
    if (++exchanges % CHECK == 0) {
      check();
    }
  }

  /** Builds the inverse anew when rounding has crept in. */
  private void check() {
    double off = 0;
    for (double sum : sums(values())) {
      off = Math.max(off, Math.abs(sum));
    }
    work.spend(columns.entries());
    if (off > TINY) {
      rebuild();
    } else {
      price();
    }
  }

  /** Goes back to such basic variables. */
  void restore(int[] basics) {
    rows = basics.length;
    System.arraycopy(basics, 0, basic, 0, rows);
    rebuild();
  }

  /** The inverse of the basis by elimination, then levels and duals. */
  private void rebuild() {
    inverse.invert(matrix());
    work.spend((long) rows * rows * rows / 2);
    Arrays.fill(level, 0, rows, 0);
    double[] fixed = sums(valuesBesideTheBasis());
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < rows; c++) {
        level[r] -= inverse.row(r)[c] * fixed[c];
      }
    }
    price();
  }

  private double[][] matrix() {
    double[][] matrix = new double[rows][rows];
    for (int r = 0; r < rows; r++) {
      double[] column = new double[rows];
      columns.addTo(column, basic[r], 1);
      for (int c = 0; c < rows; c++) {
        matrix[c][r] = column[c];
      }
    }
    return matrix;
  }

  private double[] valuesBesideTheBasis() {
    double[] x = new double[variables.size()];
    for (int j = 0; j < x.length; j++) {
      x[j] = variables.isBasic(j) ? 0 : variables.at(j);
    }
    return x;
  }

  /** What such values come to in each row. */
  private double[] sums(double[] x) {
    double[] sums = new double[rows];
    for (int j = 0; j < x.length; j++) {
      if (x[j] != 0) {
        columns.addTo(sums, j, x[j]);
      }
    }
    return sums;
  }

  private void price() {
    Arrays.fill(dual, 0, rows, 0);
    for (int r = 0; r < rows; r++) {
      double price = variables.cost(basic[r]);
      if (price != 0) {
        for (int c = 0; c < rows; c++) {
          dual[c] += price * inverse.row(r)[c];
        }
      }
    }
  }
}
