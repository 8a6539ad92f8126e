package org.slatwright.design.rackfile;

/** A text does not say what it should; the message says so, to follow the text itself. */
final class Unreadable extends Exception {

  private static final long serialVersionUID = 1L;

  Unreadable(String message) {
    super(message, null, false, false);
  }
}
