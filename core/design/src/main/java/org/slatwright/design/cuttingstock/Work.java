package org.slatwright.design.cuttingstock;

/** Counts the steps of an {@link Effort} down. */
final class Work {

  /** Additions and comparisons that take about as long as a step. */
  private static final int OPERATIONS = 8;

  private long left;

  Work(Effort effort) {
    this.left = effort.steps() * OPERATIONS;
  }

  /** Counts that many additions, comparisons and the like; false when there is no time left. */
  boolean spend(long operations) {
    left -= operations;
    return left > 0;
  }

  boolean isOver() {
    return left <= 0;
  }

  /** What is left. */
  long left() {
    return left;
  }
}
