package org.slatwright.design.rackfile;

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

  /** This kind, and one word besides. */
  static <T> Kind<T> orWord(String word, T meant, Kind<? extends T> other) {
    return new Kind<>(
        word + ", or a length: " + other.forms(),
        meant,
        text -> text.equals(word) ? meant : other.meaning().of(text));
  }
}
