package org.slatwright.exporter.html;

import java.util.stream.Collectors;

/** What is lettered on the page outside its drawings, so that the font shows it. */
final class Lettered {

  private Lettered() {}

  static String textOf(Node node) {
    if (node instanceof Node.Text text) {
      return text.text();
    }
    return node instanceof Element element
        ? element.children().stream().map(Lettered::textOf).collect(Collectors.joining())
        : "";
  }
}
