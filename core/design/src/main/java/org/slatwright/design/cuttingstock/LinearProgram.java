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
  private int[][] rowsOf = new int[16][];
  private double[][] valuesOf = new double[16][];
  private int[] sizeOf = new int[16];
  private double[] cost = new double[16];
  private double[] low = new double[16];
  private double[] high = new double[16];
  private byte[] place = new byte[16];

  private int rows;
  private int[] rowVariable = new int[16];
  private int[] basic = new int[16];
  private double[] level = new double[16];
  private double[][] inverse = new double[16][16];
  private double[] dual = new double[16];
  private int pivots;
  private long entries;

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
    double[] bottom = inverse[row];
    Arrays.fill(bottom, 0);
    for (int r = 0; r < row; r++) {
      inverse[r][row] = 0;
    }
    double sum = 0;
    for (int j : members) {
      enter(j, row, 1);
      sum += place[j] == LOW ? low[j] : place[j] == HIGH ? high[j] : 0;
    }
    if (members.length > 0) {
      for (int r = 0; r < row; r++) {
        if (coefficient(basic[r], row) != 0) {
          sum += level[r];
          for (int c = 0; c < row; c++) {
            bottom[c] += inverse[r][c];
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

  private double coefficient(int variable, int row) {
    for (int e = sizeOf[variable] - 1; e >= 0; e--) {
      if (rowsOf[variable][e] == row) {
        return valuesOf[variable][e];
      }
    }
    return 0;
  }

  private void enter(int variable, int row, double value) {
    int at = sizeOf[variable]++;
    if (at == rowsOf[variable].length) {
      rowsOf[variable] = Arrays.copyOf(rowsOf[variable], at + 4);
      valuesOf[variable] = Arrays.copyOf(valuesOf[variable], at + 4);
    }
    rowsOf[variable][at] = row;
    valuesOf[variable][at] = value;
    entries++;
  }

  /** A variable at its lowest; its index. */
  int addVariable(double price, int[] itsRows, double[] values, double lowest, double highest) {
    int j = variables++;
    growVariables();
    cost[j] = price;
    rowsOf[j] = itsRows;
    valuesOf[j] = values;
    sizeOf[j] = itsRows.length;
    low[j] = lowest;
    high[j] = highest;
    place[j] = LOW;
    entries += itsRows.length;
    return j;
  }

  private void growVariables() {
    if (variables > cost.length) {
      int more = cost.length * 2;
      rowsOf = Arrays.copyOf(rowsOf, more);
      valuesOf = Arrays.copyOf(valuesOf, more);
      sizeOf = Arrays.copyOf(sizeOf, more);
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
      inverse = Arrays.copyOf(inverse, more);
      for (int r = 0; r < more; r++) {
        inverse[r] = inverse[r] == null ? new double[more] : Arrays.copyOf(inverse[r], more);
      }
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
    int[] at = rowsOf[variable];
    double[] values = valuesOf[variable];
    for (int r = 0; r < rows; r++) {
      double sum = 0;
      for (int e = 0; e < sizeOf[variable]; e++) {
        sum += inverse[r][at[e]] * values[e];
      }
      level[r] -= sum * change;
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
    double d = cost[variable];
    int[] at = rowsOf[variable];
    double[] values = valuesOf[variable];
    for (int e = sizeOf[variable] - 1; e >= 0; e--) {
      d -= dual[at[e]] * values[e];
    }
    return d;
  }

  private double inRow(double[] multipliers, int variable) {
    double sum = 0;
    int[] at = rowsOf[variable];
    double[] values = valuesOf[variable];
    for (int e = sizeOf[variable] - 1; e >= 0; e--) {
      sum += multipliers[at[e]] * values[e];
    }
    return sum;
  }

  /** Exchanging a basic variable touches the whole inverse, and choosing one every entry. */
  private long pivotWork() {
    return entries * 2 + variables * 2L + rows * 20L;
  }

  private End dualMethod() {
    int stalled = 0;
    while (true) {
      if (!work.spend(pivotWork() + entries + variables)) {
        return End.STOPPED;
      }
      int leaving = outside(stalled >= STALLED);
      if (leaving < 0) {
        return End.LEAST;
      }
      boolean below = level[leaving] < low[basic[leaving]];
      double[] row = inverse[leaving];
      int entering = -1;
      double best = Double.POSITIVE_INFINITY;
      double bestPivot = 0;
      for (int j = 0; j < variables; j++) {
        if (place[j] == BASIC || low[j] == high[j]) {
          continue;
        }
        double a = inRow(row, j);
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
        double score = first ? -j : outside * outside / square(inverse[r]);
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
    int[] at = rowsOf[variable];
    double[] values = valuesOf[variable];
    for (int r = 0; r < rows; r++) {
      double[] row = inverse[r];
      double sum = 0;
      for (int e = sizeOf[variable] - 1; e >= 0; e--) {
        sum += row[at[e]] * values[e];
      }
      column[r] = sum;
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
    double[] row = inverse[leaving];
    double pivot = column[leaving];
    int[] at = new int[rows];
    int size = 0;
    for (int c = 0; c < rows; c++) {
      if (row[c] != 0) {
        row[c] /= pivot;
        at[size++] = c;
      }
    }
    int touched = 0;
    for (int r = 0; r < rows; r++) {
      double factor = column[r];
      if (r != leaving && factor != 0) {
        touched++;
        double[] other = inverse[r];
        if (size * 4 < rows) {
          for (int n = 0; n < size; n++) {
            other[at[n]] -= factor * row[at[n]];
          }
        } else {
          for (int c = 0; c < rows; c++) {
            other[c] -= factor * row[c];
          }
        }
      }
    }
    work.spend((long) touched * Math.min(rows, size * 4));
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
        for (int e = 0; e < sizeOf[j]; e++) {
          sums[rowsOf[j][e]] += valuesOf[j][e] * x[j];
        }
      }
    }
    double off = 0;
    for (double sum : sums) {
      off = Math.max(off, Math.abs(sum));
    }
    work.spend(entries);
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
    for (int j = 0; j < basis.variables; j++) {
      while (sizeOf[j] > 0 && rowsOf[j][sizeOf[j] - 1] >= basis.rows) {
        sizeOf[j]--;
        entries--;
      }
    }
    for (int j = basis.variables; j < variables; j++) {
      entries -= sizeOf[j];
    }
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
      int j = basic[r];
      for (int e = 0; e < sizeOf[j]; e++) {
        matrix[rowsOf[j][e]][r] = valuesOf[j][e];
      }
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
      double[] row = matrix[c];
      double[] side = inverse[c];
      double pivot = row[c];
      for (int i = 0; i < rows; i++) {
        row[i] /= pivot;
        side[i] /= pivot;
      }
      for (int r = 0; r < rows; r++) {
        double factor = matrix[r][c];
        if (r != c && factor != 0) {
          double[] other = matrix[r];
          double[] otherSide = inverse[r];
          for (int i = c; i < rows; i++) {
            other[i] -= factor * row[i];
          }
          for (int i = 0; i < rows; i++) {
            otherSide[i] -= factor * side[i];
          }
        }
      }
    }
    work.spend((long) rows * rows * rows / 2);
    Arrays.fill(level, 0, rows, 0);
    double[] fixed = new double[rows];
    for (int j = 0; j < variables; j++) {
      double x = place[j] == BASIC ? 0 : at(j);
      if (x != 0) {
        for (int e = 0; e < sizeOf[j]; e++) {
          fixed[rowsOf[j][e]] += valuesOf[j][e] * x;
        }
      }
    }
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < rows; c++) {
        level[r] -= inverse[r][c] * fixed[c];
      }
    }
    price();
  }

  private static void swap(double[][] matrix, int one, int other) {
    double[] kept = matrix[one];
    matrix[one] = matrix[other];
    matrix[other] = kept;
  }

  private void price() {
    Arrays.fill(dual, 0, rows, 0);
    for (int r = 0; r < rows; r++) {
      double price = cost[basic[r]];
      if (price != 0) {
        for (int c = 0; c < rows; c++) {
          dual[c] += price * inverse[r][c];
        }
      }
    }
  }
}
