package org.slatwright.design.sizing;

import java.util.Optional;
import org.slatwright.api.measure.Length;

/**
 * A length and where it comes from.
 *
 * @param solved whether it was worked out, rather than given in the rack file
 */
record Sized(Length length, boolean solved) {

  static Sized given(Length length) {
    return new Sized(length, false);
  }

  static Sized solved(Length length) {
    return new Sized(length, true);
  }

  /** What was given, or else what was worked out. */
  static Sized of(Optional<Length> given, Length otherwise) {
    return given.map(Sized::given).orElseGet(() -> solved(otherwise));
  }
}
