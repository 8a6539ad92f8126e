package org.slatwright.exporter.html;

/** What opens over the page. */
final class Dialogs {

  private Dialogs() {}

  /** One drawing as large as the screen. */
  static Node viewer() {
    Element stage =
        Element.of("div")
            .styled("stage")
            .with("tabindex", "0")
            .with("role", "group")
            .with("aria-label", "Drawing: arrow keys move it, plus and minus zoom, 0 shows all");
    return Element.of(
            "dialog",
            Element.of("h2").with("id", "viewer-title"),
            stage,
            Element.of(
                    "div",
                    button("previous", "Previous"),
                    button("next", "Next"),
                    button("out", "Smaller"),
                    button("in", "Larger"),
                    button("all", "Whole"),
                    button("close", "Close"))
                .styled("actions"))
        .with("id", "viewer")
        .with("aria-labelledby", "viewer-title");
  }

  /** Asks before ticks are lost. */
  static Node clearing() {
    return Element.of(
            "dialog",
            Element.of("h2", "Clear all ticks?").with("id", "clearing-title"),
            Element.of("p", "Every box of this plan on this device will be empty."),
            Element.of("div", button("keep", "Keep them"), button("clear", "Clear all"))
                .styled("actions"))
        .with("id", "clearing")
        .with("aria-labelledby", "clearing-title");
  }

  private static Element button(String action, String label) {
    return Element.of("button", label).with("type", "button").with("data-action", action);
  }
}
