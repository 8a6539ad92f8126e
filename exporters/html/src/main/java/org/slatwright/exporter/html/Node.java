package org.slatwright.exporter.html;

/** A piece of the page. Only {@link HtmlWriter} knows how one is spelt. */
sealed interface Node permits Element, Node.Text, Node.Verbatim {

  /** What a reader sees, whatever characters are in it. */
  record Text(String text) implements Node {}

  /** What is HTML already: SVG, and the text of a script or a style sheet. */
  record Verbatim(String markup) implements Node {}

  /** What a reader sees, whatever characters are in it. */
  static Node text(String text) {
    return new Text(text);
  }

  /** A whole number. */
  static Node count(int number) {
    return new Text(Integer.toString(number));
  }
}
