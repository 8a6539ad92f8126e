package org.slatwright.cli;

/** What the status that a command ends with means. */
enum ExitStatus {
  DONE(0),
  RACK_WRONG(1),
  USAGE_WRONG(2),
  NOT_WRITTEN(3);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }
}
