package org.slatwright.design.rackfile;

import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Walks through the rack file's schema, which is read as the YAML that all JSON is. */
final class SchemaKeys {

  private static final String DEFINITIONS = "#/$defs/";

  private final Node.Mapping definitions;
  private final SortedSet<String> keys = new TreeSet<>();

  private SchemaKeys(Node.Mapping schema) {
    this.definitions = (Node.Mapping) member(schema, "$defs");
    collect(schema, "");
  }

  /** The keys of a schema; an entry of a list is {@code []}. */
  static SortedSet<String> of(String schema) {
    try {
      Node root = YamlTree.ofFile(schema, "the schema", new Complaints(List.of())).orElseThrow();
      return Collections.unmodifiableSortedSet(new SchemaKeys((Node.Mapping) root).keys);
    } catch (RackFileException e) {
      throw new IllegalStateException("the schema is not JSON", e);
    }
  }

  private void collect(Node node, String path) {
    if (!(node instanceof Node.Mapping schema)) {
      return;
    }
    for (Node.Member member : schema.members()) {
      switch (member.key()) {
        case "properties" -> collectProperties((Node.Mapping) member.value(), path);
        case "items" -> collectKey(member.value(), path + "[]");
        case "anyOf" ->
            ((Node.Sequence) member.value()).entries().forEach(one -> collect(one, path));
        case "$ref" -> collect(definition((Node.Scalar) member.value()), path);
        default -> {
          // says what a value looks like, not which keys there are
        }
      }
    }
  }

  private void collectProperties(Node.Mapping properties, String path) {
    String before = path.isEmpty() ? "" : path + ".";
    properties.members().forEach(member -> collectKey(member.value(), before + member.key()));
  }

  private void collectKey(Node schema, String key) {
    keys.add(key);
    collect(schema, key);
  }

  private Node definition(Node.Scalar reference) {
    return member(definitions, reference.text().substring(DEFINITIONS.length()));
  }

  private static Node member(Node.Mapping group, String key) {
    return group.members().stream()
        .filter(member -> member.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the schema has no " + key))
        .value();
  }
}
