package org.slatwright.design.checks;

/** A kind of number and how it is told to the maker: to as many digits as it deserves. */
interface Measure {

  /** So many steps finer than usual at most. */
  int FINEST = 4;

  /**
   * With its unit.
   *
   * @param finer so many steps than usual; 0 is as usual, where noise is told as less than
   *     something
   */
  String told(double value, int finer);

  /** Whether it is more than nothing, but less than is worth a number. */
  boolean isNoise(double value);

  default String told(double value) {
    return told(value, 0);
  }

  /**
   * Both as usual, or as much finer as tells them apart: a limit that is missed must not look met.
   */
  default Compared compare(double value, double limit) {
    int usual = isNoise(limit) ? 1 : 0;
    for (int finer = usual; finer <= FINEST; finer++) {
      Compared compared = compare(value, limit, finer);
      if (!compared.looksEqual()) {
        return compared;
      }
    }
    return compare(value, limit, usual);
  }

  private Compared compare(double value, double limit, int finer) {
    return new Compared(told(value, finer), told(limit, finer));
  }

  /** A value and what it is held against, as they are told. */
  record Compared(String value, String limit) {

    String atLeast() {
      return "at least " + limit;
    }

    String atMost() {
      return "at most " + limit;
    }

    private boolean looksEqual() {
      return value.equals(limit);
    }
  }
}
