package org.slatwright.design.cuttingstock;

import java.util.Arrays;

/** The variables of a linear program: cost, column, range, and where in it each stands. */
final class Variables {

  /** Where a variable stands: in the basis, or at an end of its range. */
  enum Place {
    BASIC,
    LOW,
    HIGH
  }

  final SparseColumns columns = new SparseColumns();

  private int size;
  private double[] cost = new double[16];
  private double[] low = new double[16];
  private double[] high = new double[16];
  private Place[] place = new Place[16];

  int size() {
    return size;
  }

  /** A variable; its index. */
  int add(double price, int[] rows, double[] values, double lowest, double highest, Place start) {
    int j = size++;
    if (size > cost.length) {
      int more = cost.length * 2;
      cost = Arrays.copyOf(cost, more);
      low = Arrays.copyOf(low, more);
      high = Arrays.copyOf(high, more);
      place = Arrays.copyOf(place, more);
    }
    cost[j] = price;
    columns.add(rows, values);
    low[j] = lowest;
    high[j] = highest;
    place[j] = start;
    return j;
  }

  double cost(int variable) {
    return cost[variable];
  }

  double low(int variable) {
    return low[variable];
  }

  double high(int variable) {
    return high[variable];
  }

  boolean isBasic(int variable) {
    return place[variable] == Place.BASIC;
  }

  boolean isLow(int variable) {
    return place[variable] == Place.LOW;
  }

  /** Whether it stands at an end of a range that has another. */
  boolean isMovable(int variable) {
    return place[variable] != Place.BASIC && low[variable] < high[variable];
  }

  /** The value of a variable that is not basic. */
  double at(int variable) {
    return place[variable] == Place.HIGH ? high[variable] : low[variable];
  }

  void put(int variable, Place to) {
    place[variable] = to;
  }

  /** Puts one that is not basic at the other end of its range; by how much that changes it. */
  double flip(int variable) {
    double before = at(variable);
    place[variable] = place[variable] == Place.LOW ? Place.HIGH : Place.LOW;
    return at(variable) - before;
  }

  /** Sets a range; by how much that changes a variable that is not basic, else 0. */
  double bound(int variable, double lowest, double highest) {
    double before = at(variable);
    low[variable] = lowest;
    high[variable] = highest;
    if (place[variable] == Place.BASIC) {
      return 0;
    }
    if (place[variable] == Place.HIGH && highest == Double.POSITIVE_INFINITY) {
      place[variable] = Place.LOW;
    } else if (place[variable] == Place.LOW && lowest == Double.NEGATIVE_INFINITY) {
      place[variable] = Place.HIGH;
    }
    return at(variable) - before;
  }

  Place[] places() {
    return Arrays.copyOf(place, size);
  }

  /** Goes back to such places in so many rows; variables that were added since are gone. */
  void restore(Place[] places, int rows) {
    columns.keep(places.length, rows);
    size = places.length;
    System.arraycopy(places, 0, place, 0, size);
  }
}
