package org.slatwright.design.cuttingstock;

import static org.slatwright.design.cuttingstock.Tableau.PIVOT;
import static org.slatwright.design.cuttingstock.Tableau.STALLED;
import static org.slatwright.design.cuttingstock.Tableau.TINY;

import java.util.Optional;
import org.slatwright.design.cuttingstock.LinearProgram.End;
import org.slatwright.design.cuttingstock.Variables.Place;

/**
 * The dual simplex method (Lemke 1954): from a basis whose reduced costs suit to one whose levels
 * lie within their ranges too.
 */
final class DualMethod {

  private static final int HOPELESS = STALLED * 5;

  private final Variables variables;
  private final Tableau tableau;
  private final Work work;
  private int stalled;

  /** How much cost each unit of the row that leaves adds, of the last variable chosen to enter. */
  private double ratio;

  /** Multipliers of the rows that show it, where there is no solution. */
  private Optional<double[]> ray = Optional.empty();

  DualMethod(Variables variables, Tableau tableau, Work work) {
    this.variables = variables;
    this.tableau = tableau;
    this.work = work;
  }

  Optional<double[]> ray() {
    return ray;
  }

  End run() {
    while (work.spend(workOfChoosing())) {
      int leaving = outside();
      if (leaving < 0) {
        return End.LEAST;
      }
      boolean below = tableau.level(leaving) < variables.low(tableau.basic(leaving));
      int entering = entering(tableau.row(leaving), below);
      if (entering < 0) {
        ray = Optional.of(ray(leaving, below));
        return End.IMPOSSIBLE;
      }
      stalled = ratio > TINY ? 0 : stalled + 1;
      if (stalled > HOPELESS) {
        return End.STOPPED;
      }
      exchange(leaving, entering, below);
    }
    return End.STOPPED;
  }

  private long workOfChoosing() {
    return tableau.workOfChoosing() + variables.columns.entries() + variables.size();
  }

  /**
   * The row outside its range, furthest for the length of its row of the inverse (Forrest and
   * Goldfarb 1992), or where progress has stalled the first (Bland 1977).
   */
  private int outside() {
    int chosen = -1;
    double most = 0;
    for (int r = 0; r < tableau.rows(); r++) {
      int j = tableau.basic(r);
      double level = tableau.level(r);
      double outside = Math.max(variables.low(j) - level, level - variables.high(j));
      if (outside > TINY) {
        double score = stalled >= STALLED ? -j : outside * outside / square(tableau.row(r));
        if (chosen < 0 || score > most) {
          most = score;
          chosen = r;
        }
      }
    }
    return chosen;
  }

  private double square(double[] row) {
    int rows = tableau.rows();
    double sum = 0;
    for (int c = 0; c < rows; c++) {
      sum += row[c] * row[c];
    }
    work.spend(rows);
    return sum;
  }

  /** The variable that brings the row back for the least cost, among those the largest pivot. */
  private int entering(double[] row, boolean below) {
    int entering = -1;
    double bestPivot = 0;
    ratio = Double.POSITIVE_INFINITY;
    for (int j = 0; j < variables.size(); j++) {
      if (variables.isMovable(j)) {
        double a = variables.columns.times(row, j);
        double toward = variables.isLow(j) == below ? -a : a;
        if (toward > PIVOT) {
          double its = Math.abs(tableau.reduced(j)) / toward;
          if (its < ratio - TINY || its < ratio + TINY && toward > bestPivot && stalled < STALLED) {
            ratio = Math.min(ratio, its);
            bestPivot = toward;
            entering = j;
          }
        }
      }
    }
    return entering;
  }

  private double[] ray(int leaving, boolean below) {
    double[] row = tableau.row(leaving);
    double[] multipliers = new double[tableau.rows()];
    for (int r = 0; r < multipliers.length; r++) {
      multipliers[r] = below ? -row[r] : row[r];
    }
    return multipliers;
  }

  private void exchange(int leaving, int entering, boolean below) {
    int j = tableau.basic(leaving);
    double[] column = tableau.column(entering);
    double bound = below ? variables.low(j) : variables.high(j);
    double step = (tableau.level(leaving) - bound) / column[leaving];
    tableau.exchange(leaving, entering, column, step, below ? Place.LOW : Place.HIGH);
  }
}
