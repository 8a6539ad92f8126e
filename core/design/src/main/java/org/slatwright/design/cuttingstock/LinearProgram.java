package org.slatwright.design.cuttingstock;

import java.util.Arrays;

/**
 * The least of a sum of costs, subject to ranges of rows and of variables: a revised simplex with
 * bounds and a dense inverse (Dantzig; the dual method after Lemke 1954), right for some hundreds
 * of rows and some ten thousand sparse columns. Numbers are {@code double}: what comes out is a
 * guide, and whatever is promised to the maker is reckoned again in whole numbers.
 *
 * <p>Every row has a variable of its own that equals the row's sum. A basis starts with these, and
 * with costs of at least 0 the dual method can start from there.
 */
final class LinearProgram {

  private static final double TINY = 1e-9;
  private static final double PIVOT = 1e-7;

  /** Pivots after which the inverse is checked. */
  private static final int CHECK = 64;

  /** Pivots without progress after which the first candidate is taken instead of the best. */
  private static final int STALLED = 200;

  private static final byte BASIC = 0;
  private static final byte LOW = 1;
  private static final byte HIGH = 2;

  /** How solving ended. */
  enum End {
    LEAST,
    IMPOSSIBLE,
    STOPPED
  }

  private final Work work;

  private int variables;
  private final SparseColumns columns = new SparseColumns();
  private double[] cost = new double[16];
  private double[] low = new double[16];
  private double[] high = new double[16];
  private byte[] place = new byte[16];

  private int rows;
  private int[] rowVariable = new int[16];
  private int[] basic = new int[16];
  private double[] level = new double[16];
  private final BasisInverse inverse = new BasisInverse();
  private double[] dual = new double[16];
  private int pivots;

  /** After {@link End#IMPOSSIBLE}: multipliers of the rows that show it. */
  private double[] ray = new double[0];

  LinearProgram(Work work) {
    this.work = work;
  }

  int rows() {
    return rows;
  }

  /** A row without entries; its index. */
  int addRow(double lowest, double highest) {
    return addRow(lowest, highest, new int[0]);
  }

  /** The sum of such variables as a row; its index. */
  int addRow(double lowest, double highest, int[] members) {
    int row = rows++;
    growRows();
    inverse.addRow();
    double[] bottom = inverse.row(row);
    double sum = 0;
    for (int j : members) {
      columns.enter(j, row, 1);
      sum += place[j] == LOW ? low[j] : place[j] == HIGH ? high[j] : 0;
    }
    if (members.length > 0) {
      for (int r = 0; r < row; r++) {
        if (columns.isIn(basic[r], row)) {
          sum += level[r];
          for (int c = 0; c < row; c++) {
            bottom[c] += inverse.row(r)[c];
          }
        }
      }
    }
    bottom[row] = -1;
    int own = addVariable(0, new int[] {row}, new double[] {-1}, lowest, highest);
    rowVariable[row] = own;
    place[own] = BASIC;
    basic[row] = own;
    level[row] = sum;
    dual[row] = 0;
    return row;
  }

  /** A variable at its lowest; its index. */
  int addVariable(double price, int[] itsRows, double[] values, double lowest, double highest) {
    int j = variables++;
    growVariables();
    cost[j] = price;
    columns.add(itsRows, values);
    low[j] = lowest;
    high[j] = highest;
    place[j] = LOW;
    return j;
  }

  private void growVariables() {
    if (variables > cost.length) {
      int more = cost.length * 2;
      cost = Arrays.copyOf(cost, more);
      low = Arrays.copyOf(low, more);
      high = Arrays.copyOf(high, more);
      place = Arrays.copyOf(place, more);
    }
  }

  private void growRows() {
    if (rows > basic.length) {
      int more = basic.length * 2;
      rowVariable = Arrays.copyOf(rowVariable, more);
      basic = Arrays.copyOf(basic, more);
      level = Arrays.copyOf(level, more);
      dual = Arrays.copyOf(dual, more);
    }
  }

  void boundRow(int row, double lowest, double highest) {
    bound(rowVariable[row], lowest, highest);
  }

  /** Sets the range of a variable; {@link #solve} puts right what that upsets. */
  void bound(int variable, double lowest, double highest) {
    double before = at(variable);
    low[variable] = lowest;
    high[variable] = highest;
    if (place[variable] == BASIC) {
      return;
    }
    if (place[variable] == HIGH && highest == Double.POSITIVE_INFINITY) {
      place[variable] = LOW;
    } else if (place[variable] == LOW && lowest == Double.NEGATIVE_INFINITY) {
      place[variable] = HIGH;
    }
    double change = at(variable) - before;
    if (change != 0) {
      shift(variable, change);
    }
  }

  private void shift(int variable, double change) {
    for (int r = 0; r < rows; r++) {
      level[r] -= columns.times(inverse.row(r), variable) * change;
    }
  }

  private double at(int variable) {
    return place[variable] == HIGH ? high[variable] : low[variable];
  }

  double low(int variable) {
    return low[variable];
  }

  double high(int variable) {
    return high[variable];
  }

  /** The value of every variable, by its index. */
  double[] values() {
    double[] x = new double[variables];
    for (int j = 0; j < variables; j++) {
      x[j] = place[j] == BASIC ? 0 : at(j);
    }
    for (int r = 0; r < rows; r++) {
      x[basic[r]] = level[r];
    }
    return x;
  }

  /** The sum of a row. */
  double sum(int row) {
    int own = rowVariable[row];
    if (place[own] != BASIC) {
      return at(own);
    }
    for (int r = 0; r < rows; r++) {
      if (basic[r] == own) {
        return level[r];
      }
    }
    throw new IllegalStateException("row " + row + " lost");
  }

  /** What one more of each row's sum would cost. */
  double[] duals() {
    return Arrays.copyOf(dual, rows);
  }

  /** What shows that there is no solution: any multiple may be added to the duals. */
  double[] ray() {
    return ray;
  }

  /** The sum of costs. */
  double cost() {
    double sum = 0;
    for (int j = 0; j < variables; j++) {
      if (cost[j] != 0 && place[j] != BASIC) {
        sum += cost[j] * at(j);
      }
    }
    for (int r = 0; r < rows; r++) {
      sum += cost[basic[r]] * level[r];
    }
    return sum;
  }

  /** Goes on from where it stands to the least cost. */
  End solve() {
    settle();
    End end = dualMethod();
    return end == End.LEAST ? primalMethod() : end;
  }

  /** Puts variables at the end of their range that suits their reduced cost, where there is one. */
  private void settle() {
    for (int j = 0; j < variables; j++) {
      if (place[j] != BASIC && low[j] < high[j]) {
        double d = reduced(j);
        if (d < -TINY && place[j] == LOW && high[j] < Double.POSITIVE_INFINITY) {
          place[j] = HIGH;
          shift(j, high[j] - low[j]);
        } else if (d > TINY && place[j] == HIGH && low[j] > Double.NEGATIVE_INFINITY) {
          place[j] = LOW;
          shift(j, low[j] - high[j]);
        }
      }
    }
  }

  private double reduced(int variable) {
    return cost[variable] - columns.times(dual, variable);
  }

  /** Choosing a variable looks at every entry; the exchange itself is counted as it is made. */
  private long pivotWork() {
    return columns.entries() * 2 + variables * 2L + rows * 20L;
  }

  private End dualMethod() {
    int stalled = 0;
    while (true) {
      if (!work.spend(pivotWork() + columns.entries() + variables)) {
        return End.STOPPED;
      }
      int leaving = outside(stalled >= STALLED);
      if (leaving < 0) {
        return End.LEAST;
      }
      boolean below = level[leaving] < low[basic[leaving]];
      double[] row = inverse.row(leaving);
      int entering = -1;
      double best = Double.POSITIVE_INFINITY;
      double bestPivot = 0;
      for (int j = 0; j < variables; j++) {
        if (place[j] == BASIC || low[j] == high[j]) {
          continue;
        }
        double a = columns.times(row, j);
        double toward = (place[j] == LOW) == below ? -a : a;
        if (toward > PIVOT) {
          double d = Math.abs(reduced(j));
          double ratio = d / toward;
          if (ratio < best - TINY
              || ratio < best + TINY && toward > bestPivot && stalled < STALLED) {
            best = Math.min(best, ratio);
            bestPivot = toward;
            entering = j;
          }
        }
      }
      if (entering < 0) {
        ray = new double[rows];
        for (int r = 0; r < rows; r++) {
          ray[r] = below ? -row[r] : row[r];
        }
        return End.IMPOSSIBLE;
      }
      stalled = best > TINY ? 0 : stalled + 1;
      if (stalled > STALLED * 5) {
        return End.STOPPED;
      }
      double[] column = column(entering);
      double bound = below ? low[basic[leaving]] : high[basic[leaving]];
      double step = (level[leaving] - bound) / column[leaving];
      pivot(leaving, entering, column, step, below ? LOW : HIGH);
    }
  }

  /**
   * The row outside its range, furthest for the length of its row of the inverse (Forrest and
   * Goldfarb 1992), or where progress has stalled the first (Bland 1977).
   */
  private int outside(boolean first) {
    int chosen = -1;
    double most = 0;
    for (int r = 0; r < rows; r++) {
      int j = basic[r];
      double outside = Math.max(low[j] - level[r], level[r] - high[j]);
      if (outside > TINY) {
        double score = first ? -j : outside * outside / square(inverse.row(r));
        if (chosen < 0 || score > most) {
          most = score;
          chosen = r;
        }
      }
    }
    return chosen;
  }

  private double square(double[] row) {
    double sum = 0;
    for (int c = 0; c < rows; c++) {
      sum += row[c] * row[c];
    }
    work.spend(rows);
    return sum;
  }

  private End primalMethod() {
    int stalled = 0;
    while (true) {
      if (!work.spend(pivotWork())) {
        return End.STOPPED;
      }
      int entering = -1;
      double best = TINY;
      for (int j = 0; j < variables; j++) {
        if (place[j] != BASIC && low[j] < high[j]) {
          double d = reduced(j);
          double gain = place[j] == LOW ? -d : d;
          if (gain > best) {
            entering = j;
            if (stalled >= STALLED) {
              break;
            }
            best = gain;
          }
        }
      }
      if (entering < 0) {
        return End.LEAST;
      }
      double sign = place[entering] == LOW ? 1 : -1;
      double[] column = column(entering);
      double furthest = high[entering] - low[entering];
      for (int r = 0; r < rows; r++) {
        double change = -sign * column[r];
        if (change < -PIVOT) {
          furthest = Math.min(furthest, (level[r] - low[basic[r]] + TINY) / -change);
        } else if (change > PIVOT) {
          furthest = Math.min(furthest, (high[basic[r]] - level[r] + TINY) / change);
        }
      }
      int leaving = -1;
      double pivot = 0;
      double step = high[entering] - low[entering];
      for (int r = 0; r < rows; r++) {
        double change = -sign * column[r];
        if (Math.abs(change) > Math.max(PIVOT, pivot)) {
          double until =
              change < 0
                  ? (level[r] - low[basic[r]]) / -change
                  : (high[basic[r]] - level[r]) / change;
          if (until <= furthest) {
            leaving = r;
            pivot = Math.abs(change);
            step = Math.max(0, until);
          }
        }
      }
      if (step == Double.POSITIVE_INFINITY) {
        return End.STOPPED;
      }
      stalled = step > TINY ? 0 : stalled + 1;
      if (stalled > STALLED * 20) {
        return End.STOPPED;
      }
      if (leaving < 0) {
        place[entering] = sign > 0 ? HIGH : LOW;
        shift(entering, sign * step);
      } else {
        byte to = -sign * column[leaving] < 0 ? LOW : HIGH;
        pivot(leaving, entering, column, sign * step, to);
      }
    }
  }

  private double[] column(int variable) {
    double[] column = new double[rows];
    for (int r = 0; r < rows; r++) {
      column[r] = columns.times(inverse.row(r), variable);
    }
    return column;
  }

  private void pivot(int leaving, int entering, double[] column, double step, byte to) {
    double start = at(entering);
    double d = reduced(entering);
    for (int r = 0; r < rows; r++) {
      level[r] -= step * column[r];
    }
    place[basic[leaving]] = to;
    place[entering] = BASIC;
    basic[leaving] = entering;
    level[leaving] = start + step;
    work.spend(inverse.exchange(leaving, column));
    double[] row = inverse.row(leaving);
    for (int c = 0; c < rows; c++) {
      dual[c] += d * row[c];
    }
    if (++pivots % CHECK == 0) {
      check();
    }
  }

  /** Builds the inverse anew when rounding has crept in. */
  private void check() {
    double[] sums = new double[rows];
    double[] x = values();
    for (int j = 0; j < variables; j++) {
      if (x[j] != 0) {
        columns.addTo(sums, j, x[j]);
      }
    }
    double off = 0;
    for (double sum : sums) {
      off = Math.max(off, Math.abs(sum));
    }
    work.spend(columns.entries());
    if (off > TINY) {
      rebuild();
    } else {
      price();
    }
  }

  /** A basis to come back to. */
  record Basis(int rows, int variables, int[] basic, byte[] place) {}

  Basis basis() {
    return new Basis(rows, variables, Arrays.copyOf(basic, rows), Arrays.copyOf(place, variables));
  }

  /** Goes back to a basis; rows and variables that were added since are gone. */
  void restore(Basis basis) {
    columns.keep(basis.variables, basis.rows);
    rows = basis.rows;
    variables = basis.variables;
    System.arraycopy(basis.basic, 0, basic, 0, rows);
    System.arraycopy(basis.place, 0, place, 0, variables);
    rebuild();
  }

  /** The inverse of the basis by elimination, then levels and duals. */
  private void rebuild() {
    double[][] matrix = new double[rows][rows];
    for (int r = 0; r < rows; r++) {
      double[] column = new double[rows];
      columns.addTo(column, basic[r], 1);
      for (int c = 0; c < rows; c++) {
        matrix[c][r] = column[c];
      }
    }
    inverse.invert(matrix);
    work.spend((long) rows * rows * rows / 2);
    Arrays.fill(level, 0, rows, 0);
    double[] fixed = new double[rows];
    for (int j = 0; j < variables; j++) {
      double x = place[j] == BASIC ? 0 : at(j);
      if (x != 0) {
        columns.addTo(fixed, j, x);
      }
    }
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < rows; c++) {
        level[r] -= inverse.row(r)[c] * fixed[c];
      }
    }
    price();
  }

  private void price() {
    Arrays.fill(dual, 0, rows, 0);
    for (int r = 0; r < rows; r++) {
      double price = cost[basic[r]];
      if (price != 0) {
        for (int c = 0; c < rows; c++) {
          dual[c] += price * inverse.row(r)[c];
        }
      }
    }
  }
}
