package org.slatwright.design.cuttingstock;

import static org.slatwright.design.cuttingstock.Tableau.PIVOT;
import static org.slatwright.design.cuttingstock.Tableau.STALLED;
import static org.slatwright.design.cuttingstock.Tableau.TINY;

import org.slatwright.design.cuttingstock.LinearProgram.End;
import org.slatwright.design.cuttingstock.Variables.Place;

/**
 * The simplex method with bounds (Dantzig): from a basis whose levels lie within their ranges to
 * the least cost.
 */
final class PrimalMethod {

  private static final int HOPELESS = STALLED * 20;

  private final Variables variables;
  private final Tableau tableau;
  private final Work work;
  private int stalled;

  PrimalMethod(Variables variables, Tableau tableau, Work work) {
    this.variables = variables;
    this.tableau = tableau;
    this.work = work;
  }

  End run() {
    while (work.spend(tableau.workOfChoosing())) {
      int entering = entering();
      if (entering < 0) {
        return End.LEAST;
      }
      double sign = variables.isLow(entering) ? 1 : -1;
      double[] column = tableau.column(entering);
      int leaving = leaving(entering, column, sign);
      double step =
          leaving < 0
              ? variables.high(entering) - variables.low(entering)
              : Math.max(0, room(leaving, -sign * column[leaving], 0));
      if (step == Double.POSITIVE_INFINITY) {
        return End.STOPPED;
      }
      stalled = step > TINY ? 0 : stalled + 1;
      if (stalled > HOPELESS) {
        return End.STOPPED;
      }
      if (leaving < 0) {
        tableau.shift(entering, variables.flip(entering));
      } else {
        Place to = -sign * column[leaving] < 0 ? Place.LOW : Place.HIGH;
        tableau.exchange(leaving, entering, column, sign * step, to);
      }
    }
    return End.STOPPED;
  }

  /** The variable that gains most, or where progress has stalled the first that gains. */
  private int entering() {
    int entering = -1;
    double best = TINY;
    for (int j = 0; j < variables.size(); j++) {
      if (variables.isMovable(j)) {
        double d = tableau.reduced(j);
        double gain = variables.isLow(j) ? -d : d;
        if (gain > best) {
          entering = j;
          if (stalled >= STALLED) {
            break;
          }
          best = gain;
        }
      }
    }
    return entering;
  }

  /** Of the rows that reach an end of their range first, nearly, the one of the largest pivot. */
  private int leaving(int entering, double[] column, double sign) {
    double furthest = furthest(entering, column, sign);
    int leaving = -1;
    double pivot = PIVOT;
    for (int r = 0; r < column.length; r++) {
      double change = -sign * column[r];
      if (Math.abs(change) > pivot && room(r, change, 0) <= furthest) {
        leaving = r;
        pivot = Math.abs(change);
      }
    }
    return leaving;
  }

  /** How far it may go before a row leaves its range, each by a little (Harris 1973). */
  private double furthest(int entering, double[] column, double sign) {
    double furthest = variables.high(entering) - variables.low(entering);
    for (int r = 0; r < column.length; r++) {
      double change = -sign * column[r];
      if (Math.abs(change) > PIVOT) {
        furthest = Math.min(furthest, room(r, change, TINY));
      }
    }
    return furthest;
  }

  /** How often a row may change by that before it is beyond its range by more than is allowed. */
  private double room(int row, double change, double allowed) {
    int j = tableau.basic(row);
    double level = tableau.level(row);
    return change < 0
        ? (level - variables.low(j) + allowed) / -change
        : (variables.high(j) - level + allowed) / change;
  }
}
