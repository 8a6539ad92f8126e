package org.slatwright.design.cuttingstock;

/**
 * How long to look for a better plan, and for the proof that there is none. Counted in steps and
 * never by the clock, so that the same problem has the same answer on every machine and every day.
 *
 * @param steps about 100 000 of them take a millisecond on a machine of 2025
 */
public record Effort(long steps) {

  private static final long STEPS_PER_MILLISECOND = 100_000;

  /** Two seconds: what a maker waits without wondering. */
  public static final Effort USUAL = ofMilliseconds(2_000);

  /** About that long. */
  public static Effort ofMilliseconds(long milliseconds) {
    return new Effort(milliseconds * STEPS_PER_MILLISECOND);
  }
}
