package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;

/**
 * An element of the page.
 *
 * @param name in lower case
 * @param attributes in order
 * @param children in order
 */
record Element(String name, List<Attribute> attributes, List<Node> children) implements Node {

  Element {
    attributes = List.copyOf(attributes);
    children = List.copyOf(children);
  }

  /**
   * An attribute.
   *
   * @param value any text; empty for one that is simply there
   */
  record Attribute(String name, String value) {}

  /** An element with those children. */
  static Element of(String name, Node... children) {
    return new Element(name, List.of(), List.of(children));
  }

  /** An element with those children. */
  static Element of(String name, List<? extends Node> children) {
    return new Element(name, List.of(), List.copyOf(children));
  }

  /** An element that holds {@code text}. */
  static Element of(String name, String text) {
    return of(name, Node.text(text));
  }

  /** The same with one more attribute. */
  Element with(String attribute, String value) {
    List<Attribute> all = new ArrayList<>(attributes);
    all.add(new Attribute(attribute, value));
    return new Element(name, all, children);
  }

  /** The same with one more attribute that is simply there. */
  Element with(String attribute) {
    return with(attribute, "");
  }

  /** The same with a class for the style sheet. */
  Element styled(String styleClass) {
    return with("class", styleClass);
  }
}
