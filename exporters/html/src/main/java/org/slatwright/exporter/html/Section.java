package org.slatwright.exporter.html;

import java.util.List;
import java.util.stream.Stream;

/**
 * A section of the page, with what it says below its heading.
 *
 * @param id what a link to it names
 * @param title its heading
 * @param content below the heading; nothing where the plan has nothing to say of it
 */
record Section(String id, String title, List<Node> content) {

  Section {
    content = List.copyOf(content);
  }

  boolean isEmpty() {
    return content.isEmpty();
  }

  /** As an element. */
  Node node() {
    Element heading = Element.of("h2", title).with("id", id + "-title");
    Element progress = Element.of("p").styled("progress").with("data-progress").with("hidden");
    Element head = Element.of("div", heading, progress).styled("heading");
    return Element.of("section", Stream.concat(Stream.of(head), content.stream()).toList())
        .with("id", id)
        .with("aria-labelledby", id + "-title");
  }

  /** A link to it. */
  Node link() {
    return Element.of("li", Element.of("a", title).with("href", "#" + id));
  }
}
