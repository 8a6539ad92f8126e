package org.slatwright.exporter.html;

import java.util.Set;
import org.slatwright.exporter.figures.XmlText;

/**
 * Spells a page in HTML (WHATWG HTML, "The HTML syntax"): the one place that knows tags, quotes and
 * escapes.
 */
final class HtmlWriter {

  /** Elements without content and end tag, of those that the page uses. */
  private static final Set<String> VOID = Set.of("br", "input", "link", "meta");

  /** Elements that begin a line, so that a person can read the file. */
  private static final Set<String> ON_A_LINE =
      Set.of(
          "article",
          "body",
          "caption",
          "dd",
          "dialog",
          "div",
          "dl",
          "dt",
          "fieldset",
          "figcaption",
          "figure",
          "footer",
          "h1",
          "h2",
          "h3",
          "h4",
          "head",
          "header",
          "legend",
          "li",
          "link",
          "main",
          "meta",
          "nav",
          "ol",
          "p",
          "script",
          "section",
          "style",
          "table",
          "tbody",
          "thead",
          "title",
          "tr",
          "ul");

  private final StringBuilder out = new StringBuilder();

  private HtmlWriter() {}

  /** The whole document. */
  static String document(Element root) {
    HtmlWriter writer = new HtmlWriter();
    writer.out.append("<!DOCTYPE html>");
    writer.write(root);
    return writer.out.append('\n').toString();
  }

  private void write(Node node) {
    if (node instanceof Node.Text text) {
      out.append(escaped(text.text()));
    } else if (node instanceof Node.Verbatim verbatim) {
      out.append(verbatim.markup());
    } else if (node instanceof Element element) {
      write(element);
    }
  }

  private void write(Element element) {
    if (ON_A_LINE.contains(element.name())) {
      out.append('\n');
    }
    out.append('<').append(element.name());
    element.attributes().forEach(this::write);
    out.append('>');
    if (!VOID.contains(element.name())) {
      element.children().forEach(this::write);
      out.append("</").append(element.name()).append('>');
    }
  }

  private void write(Element.Attribute attribute) {
    out.append(' ').append(attribute.name());
    if (!attribute.value().isEmpty()) {
      out.append("=\"").append(escaped(attribute.value())).append('"');
    }
  }

  private static String escaped(String text) {
    return XmlText.legal(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("\r", "&#13;");
  }
}
