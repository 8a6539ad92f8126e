package org.slatwright.exporter.html;

import org.slatwright.api.plan.Plan;

/**
 * The head of the page. Its policy lets nothing in but what the page holds itself: this style, this
 * script, a font within the style.
 */
record PageHead(Plan plan, String style, String script) {

  Element node() {
    return Element.of(
        "head",
        Element.of("meta").with("charset", "utf-8"),
        named("viewport", "width=device-width, initial-scale=1"),
        Element.of("meta").with("http-equiv", "Content-Security-Policy").with("content", policy()),
        named("referrer", "no-referrer"),
        named("color-scheme", "light dark"),
        named("generator", "Slatwright"),
        Element.of("title", title()),
        // Without one, a browser asks the server for one.
        Element.of("link").with("rel", "icon").with("href", "data:,"),
        Element.of("style", new Node.Verbatim(style)));
  }

  private String title() {
    String title = plan.title().strip();
    return title.isEmpty() ? "Plan of a rack" : title;
  }

  private String policy() {
    return String.join(
        "; ",
        "default-src 'none'",
        "style-src " + Digest.source(style),
        "script-src " + Digest.source(script),
        "font-src data:",
        "img-src data:",
        "base-uri 'none'",
        "form-action 'none'");
  }

  private static Element named(String name, String content) {
    return Element.of("meta").with("name", name).with("content", content);
  }
}
