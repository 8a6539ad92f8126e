package org.slatwright.design.rackfile;

import java.util.Optional;

/** A text does not say what it should; the message says so, to follow the text itself. */
final class Unreadable extends Exception {

  private static final long serialVersionUID = 1L;

  private final String advice;

  /** With the forms of its kind as the advice. */
  Unreadable(String message) {
    this(message, "");
  }

  /** With advice of its own, such as {@code write a point, not a comma: 4.5}. */
  Unreadable(String message, String advice) {
    super(message, null, false, false);
    this.advice = advice;
  }

  /** What to write instead, if there is more to say than the forms of the kind. */
  Optional<String> advice() {
    return advice.isEmpty() ? Optional.empty() : Optional.of(advice);
  }
}
