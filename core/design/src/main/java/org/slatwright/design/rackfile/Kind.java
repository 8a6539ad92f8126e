package org.slatwright.design.rackfile;

import java.util.function.Function;

/**
 * One kind of value.
 *
 * @param forms what can be written for it
 * @param standIn goes in place of a value that could not be read, so that the reading goes on and
 *     finds what else is wrong; it never leaves the reader, since a complaint has been made
 * @param meaning reads a text
 */
record Kind<T>(String forms, T standIn, Meaning<T> meaning) {

  /** What a text means. */
  @FunctionalInterface
  interface Meaning<T> {
    T of(String text) throws Unreadable;
  }

  /** The same texts, with another meaning. */
  <U> Kind<U> as(Function<? super T, ? extends U> other) {
    return new Kind<>(forms, other.apply(standIn), text -> other.apply(meaning.of(text)));
  }

  /** This kind of length, and one word besides. */
  Kind<T> orWord(String word, T meant) {
    return new Kind<>(
        word + ", or a length: " + forms,
        meant,
        text -> text.equals(word) ? meant : meaning.of(text));
  }
}
