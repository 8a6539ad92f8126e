package org.slatwright.design.mechanics;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * A straight beam by the direct stiffness method, in elements of Timoshenko's beam: an independent
 * way to the numbers of this package (Przemieniecki, Theory of Matrix Structural Analysis, 5.6,
 * from memory). Exact at the nodes.
 */
final class BeamElements {

  private final List<Double> nodes;
  private final double bending;
  private final double shear;
  private final RealMatrix stiffness;
  private final RealVector loads;
  private final double[] perElement;
  private RealVector moved = new ArrayRealVector();

  /**
   * @param nodes from the left, mm
   * @param bending E·I
   * @param shear G·A′
   */
  BeamElements(List<Double> nodes, double bending, double shear) {
    this.nodes = nodes;
    this.bending = bending;
    this.shear = shear;
    int freedoms = 2 * nodes.size();
    stiffness = new Array2DRowRealMatrix(freedoms, freedoms);
    loads = new ArrayRealVector(freedoms);
    perElement = new double[nodes.size() - 1];
    for (int element = 0; element < nodes.size() - 1; element++) {
      double[][] own = element(element);
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          stiffness.addToEntry(2 * element + i, 2 * element + j, own[i][j]);
        }
      }
    }
  }

  /** A load at a node, N. */
  BeamElements load(int node, double force) {
    loads.addToEntry(2 * node, force);
    return this;
  }

  /** A load spread evenly between two nodes, N/mm. */
  BeamElements spread(int from, int to, double perMm) {
    for (int element = from; element < to; element++) {
      double[] own = spread(element, perMm);
      for (int i = 0; i < 4; i++) {
        loads.addToEntry(2 * element + i, own[i]);
      }
      perElement[element] += perMm;
    }
    return this;
  }

  /** Solved with these freedoms held: 2 · node for its place, 2 · node + 1 for its turn. */
  BeamElements held(List<Integer> freedoms) {
    RealMatrix held = stiffness.copy();
    RealVector forces = loads.copy();
    for (int freedom : freedoms) {
      for (int other = 0; other < forces.getDimension(); other++) {
        held.setEntry(freedom, other, 0);
        held.setEntry(other, freedom, 0);
      }
      held.setEntry(freedom, freedom, bending);
      forces.setEntry(freedom, 0);
    }
    moved = new LUDecomposition(held, 0).getSolver().solve(forces);
    return this;
  }

  /** Downwards, mm. */
  double sag(int node) {
    return moved.getEntry(2 * node);
  }

  /** What a support at a node bears, N. */
  double reaction(int node) {
    return loads.getEntry(2 * node) - stiffness.operate(moved).getEntry(2 * node);
  }

  /** The bending moment at a node, N·mm; sagging is positive. */
  double moment(int node) {
    int element = Math.min(node, nodes.size() - 2);
    double[] fixed = spread(element, perElement[element]);
    RealVector ends = moved.getSubVector(2 * element, 4);
    RealVector forces = new Array2DRowRealMatrix(element(element)).operate(ends);
    int turn = node == element ? 1 : 3;
    double moment = forces.getEntry(turn) - fixed[turn];
    return node == element ? moment : -moment;
  }

  private double[] spread(int element, double perMm) {
    double length = length(element);
    double force = perMm * length / 2;
    double moment = perMm * length * length / 12;
    return new double[] {force, moment, force, -moment};
  }

  private double[][] element(int element) {
    double l = length(element);
    double phi = 12 * bending / (shear * l * l);
    double k = bending / ((1 + phi) * l * l * l);
    double end = k * (4 + phi) * l * l;
    double far = k * (2 - phi) * l * l;
    double arm = 6 * k * l;
    double side = 12 * k;
    return new double[][] {
      {side, arm, -side, arm},
      {arm, end, -arm, far},
      {-side, -arm, side, -arm},
      {arm, far, -arm, end}
    };
  }

  private double length(int element) {
    return nodes.get(element + 1) - nodes.get(element);
  }
}
