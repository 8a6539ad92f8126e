package org.slatwright.design.cuttingstock;

import static org.slatwright.design.cuttingstock.Tableau.TINY;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.design.cuttingstock.Variables.Place;

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

  /** How solving ended. */
  enum End {
    LEAST,
    IMPOSSIBLE,
    STOPPED
  }

  private final Work work;
  private final Variables variables = new Variables();
  private final Tableau tableau;

  /** The own variable of each row. */
  private final List<Integer> own = new ArrayList<>();

  /** After {@link End#IMPOSSIBLE}: multipliers of the rows that show it. */
  private double[] ray = new double[0];

  LinearProgram(Work work) {
    this.work = work;
    this.tableau = new Tableau(variables, work);
  }

  int rows() {
    return tableau.rows();
  }

  /** A row without entries; its index. */
  int addRow(double lowest, double highest) {
    return addRow(lowest, highest, new int[0]);
  }

  /** The sum of such variables as a row; its index. */
  int addRow(double lowest, double highest, int[] members) {
    int row = rows();
    for (int j : members) {
      variables.columns.enter(j, row, 1);
    }
    own.add(variables.add(0, new int[] {row}, new double[] {-1}, lowest, highest, Place.BASIC));
    tableau.addRow(own(row), members);
    return row;
  }

  /** A variable at its lowest; its index. */
  int addVariable(double price, int[] itsRows, double[] values, double lowest, double highest) {
    return variables.add(price, itsRows, values, lowest, highest, Place.LOW);
  }

  /** The variable that equals the sum of a row. */
  int own(int row) {
    return own.get(row);
  }

  void boundRow(int row, double lowest, double highest) {
    bound(own(row), lowest, highest);
  }

  /** Sets the range of a variable; {@link #solve} puts right what that upsets. */
  void bound(int variable, double lowest, double highest) {
    double change = variables.bound(variable, lowest, highest);
    if (change != 0) {
      tableau.shift(variable, change);
    }
  }

  double low(int variable) {
    return variables.low(variable);
  }

  double high(int variable) {
    return variables.high(variable);
  }

  /** The value of every variable, by its index. */
  double[] values() {
    return tableau.values();
  }

  /** What one more of each row's sum would cost. */
  double[] duals() {
    return tableau.duals();
  }

  /** What shows that there is no solution: any multiple may be added to the duals. */
  double[] ray() {
    return ray.clone();
  }

  /** The sum of costs. */
  double cost() {
    double sum = 0;
    for (int j = 0; j < variables.size(); j++) {
      if (variables.cost(j) != 0 && !variables.isBasic(j)) {
        sum += variables.cost(j) * variables.at(j);
      }
    }
    for (int r = 0; r < rows(); r++) {
      sum += variables.cost(tableau.basic(r)) * tableau.level(r);
    }
    return sum;
  }

  /** Goes on from where it stands to the least cost. */
  End solve() {
    settle();
    var dual = new DualMethod(variables, tableau, work);
    End end = dual.run();
    dual.ray().ifPresent(found -> ray = found);
    return end == End.LEAST ? new PrimalMethod(variables, tableau, work).run() : end;
  }

  /** Puts variables at the end of their range that suits their reduced cost, where there is one. */
  private void settle() {
    for (int j = 0; j < variables.size(); j++) {
      if (variables.isMovable(j)) {
        double d = tableau.reduced(j);
        boolean low = variables.isLow(j);
        double other = low ? variables.high(j) : variables.low(j);
        if ((low ? d < -TINY : d > TINY) && !Double.isInfinite(other)) {
          tableau.shift(j, variables.flip(j));
        }
      }
    }
  }

  /** A basis to come back to. */
  record Basis(int[] basics, Place[] places) {}

  Basis basis() {
    return new Basis(tableau.basics(), variables.places());
  }

  /** Goes back to a basis; rows and variables that were added since are gone. */
  void restore(Basis basis) {
    int rows = basis.basics.length;
    variables.restore(basis.places, rows);
    own.subList(rows, own.size()).clear();
    tableau.restore(basis.basics);
  }
}
