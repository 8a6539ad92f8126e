package org.slatwright.exporter.html;

/**
 * A box that the maker ticks when something is done. Its looks and its memory are the style sheet's
 * and the script's.
 *
 * @param id the same in every page of the same plan, unique in it: {@code cut-U}
 */
record Tick(String id) {

  /** With a label that says what is done, for whoever cannot see where it stands. */
  Node alone(String label) {
    return Element.of("label", box().with("aria-label", label)).styled("tick");
  }

  /** With what is done beside it. */
  Node beside(Node... label) {
    return Element.of("label", box(), Element.of("span", label)).styled("tick");
  }

  private Element box() {
    return Element.of("input")
        .with("type", "checkbox")
        .with("autocomplete", "off")
        .with("data-tick", id);
  }
}
