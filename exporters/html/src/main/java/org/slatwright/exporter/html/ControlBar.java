package org.slatwright.exporter.html;

import org.slatwright.api.measure.Unit;

/** What stays at the top of the screen: the way to the contents, progress, units, light or dark. */
final class ControlBar {

  private ControlBar() {}

  static Node node(Unit own) {
    return Element.of(
            "div",
            Element.of("a", "Contents").with("href", "#contents"),
            Element.of(
                    "div",
                    Element.of("p").styled("progress").with("data-progress-all"),
                    units(own),
                    Element.of("button", "Dark")
                        .with("type", "button")
                        .with("data-dark")
                        .with("aria-pressed", "false"))
                .styled("controls")
                .with("hidden"))
        .styled("bar")
        .with("role", "region")
        .with("aria-label", "Controls");
  }

  private static Node units(Unit own) {
    return Element.of(
            "fieldset",
            Element.of("legend", "Unit").styled("unseen"),
            unit(Unit.MM, own),
            unit(Unit.INCH, own))
        .styled("units");
  }

  private static Node unit(Unit unit, Unit own) {
    Element radio =
        Element.of("input")
            .with("type", "radio")
            .with("name", "unit")
            .with("value", unit.symbol())
            .with("autocomplete", "off");
    return Element.of(
        "label", unit == own ? radio.with("checked") : radio, Element.of("span", unit.symbol()));
  }
}
