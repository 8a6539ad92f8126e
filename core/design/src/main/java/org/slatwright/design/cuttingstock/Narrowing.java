package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;

/** What the branches down to where the search stands add to the pattern program. */
final class Narrowing {

  private final ColumnGeneration generation;
  private final LinearProgram program;

  /** The patterns of each row that was added, in the order of those rows. */
  private final List<int[]> added = new ArrayList<>();

  /** What gives each range back that was narrowed. */
  private final List<Runnable> undo = new ArrayList<>();

  Narrowing(ColumnGeneration generation) {
    this.generation = generation;
    this.program = generation.program;
  }

  /** Does something in a branch, and takes back what it has narrowed. */
  void within(Runnable branch, Runnable search) {
    var basis = program.basis();
    int before = undo.size();
    int rows = added.size();
    branch.run();
    search.run();
    while (undo.size() > before) {
      undo.remove(undo.size() - 1).run();
    }
    added.subList(rows, added.size()).clear();
    program.restore(basis);
  }

  /** Allows a variable of the program that range only. */
  void limit(int variable, double low, double high) {
    double lowBefore = program.low(variable);
    double highBefore = program.high(variable);
    undo.add(() -> program.bound(variable, lowBefore, highBefore));
    program.bound(variable, low, high);
  }

  /** Allows such patterns that range of times together only. */
  void limitTogether(int[] patterns, double low, double high) {
    int[] variables = new int[patterns.length];
    for (int n = 0; n < patterns.length; n++) {
      variables[n] = generation.variable(patterns[n]);
    }
    if (high == 0) {
      for (int v : variables) {
        limit(v, 0, 0);
      }
    } else {
      program.addRow(low, high, variables);
      added.add(patterns);
    }
  }

  /** The patterns of each row that was added, in the order of those rows. */
  List<int[]> added() {
    return added;
  }
}
