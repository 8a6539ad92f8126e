package org.slatwright.cli.sizes;

import java.util.List;

/** A table that cannot be read, or not from a line on. */
public final class TableException extends Exception {

  private static final long serialVersionUID = 1L;

  private final long line;
  private final List<String> faults;

  TableException(long line, List<String> faults) {
    super(String.join("\n", faults));
    this.line = line;
    this.faults = List.copyOf(faults);
  }

  TableException(long line, String fault) {
    this(line, List.of(fault));
  }

  /** Where, from 1; or 0 when it cannot be said. */
  public long line() {
    return line;
  }

  /** What is wrong, one line each. */
  public List<String> faults() {
    return faults;
  }
}
