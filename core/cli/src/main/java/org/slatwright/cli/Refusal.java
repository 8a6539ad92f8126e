package org.slatwright.cli;

/** Why a command ends early: what to tell the maker, ready to print, and the status to end with. */
final class Refusal extends Exception {

  private static final long serialVersionUID = 1L;

  private final ExitStatus status;

  Refusal(ExitStatus status, String message) {
    super(message);
    this.status = status;
  }

  ExitStatus status() {
    return status;
  }
}
