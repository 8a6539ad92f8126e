package org.slatwright.api.measure;

/**
 * The unit a maker measures in. It decides how numbers are read and shown, never how they are kept.
 */
public enum Unit {
  /** Millimetres. */
  MM("mm", 1_000_000L),
  /** International inches of exactly 25.4 mm. */
  INCH("in", 25_400_000L);

  private final String symbol;
  private final long nanometres;

  Unit(String symbol, long nanometres) {
    this.symbol = symbol;
    this.nanometres = nanometres;
  }

  /** {@code mm} or {@code in}. */
  public String symbol() {
    return symbol;
  }

  /** One of this unit, in nanometres. */
  public long nanometres() {
    return nanometres;
  }

  /** The first of two where this is millimetres, the second where it is inches. */
  public <T> T metricOrInch(T metric, T inch) {
    return this == MM ? metric : inch;
  }
}
