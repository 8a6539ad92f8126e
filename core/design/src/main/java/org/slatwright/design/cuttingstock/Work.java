package org.slatwright.design.cuttingstock;

/** Counts the steps of an {@link Effort} down. */
final class Work {

  /** Additions and comparisons that take about as long as a step. */
  private static final int OPERATIONS = 10;

  private long left;

  Work(Effort effort) {
    this.left = effort.steps() * OPERATIONS;
  }

  private Work(long left) {
    this.left = left;
  }

  /** Counts that many additions, comparisons and the like; false when there is no time left. */
  boolean spend(long operations) {
    left -= operations;
    return left > 0;
  }

  boolean isOver() {
    return left <= 0;
  }

  /** A part of what is left, to be taken from this one by {@link #spend} when it is used. */
  Work part(int hundredths) {
    return new Work(left / 100 * hundredths);
  }

  /** What is left. */
  long left() {
    return left;
  }
}
