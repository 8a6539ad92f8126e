package org.slatwright.design.rackfile;

import java.util.List;

/** What the YAML says, before it means anything: each part with its place. */
sealed interface Node {

  /** Where it begins. */
  Place place();

  /**
   * A single value.
   *
   * @param text without its quotes
   * @param quoted whether it had quotes; {@code ""} is a text, nothing at all is not
   */
  record Scalar(Place place, String text, boolean quoted) implements Node {

    /** Whether nothing stands here. */
    boolean isEmpty() {
      return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }
  }

  /** A list. */
  record Sequence(Place place, List<Node> entries) implements Node {
    public Sequence {
      entries = List.copyOf(entries);
    }
  }

  /** Keys and values in their order; no key twice. */
  record Mapping(Place place, List<Member> members) implements Node {
    public Mapping {
      members = List.copyOf(members);
    }
  }

  /**
   * A key and its value.
   *
   * @param place of the key
   */
  record Member(String key, Place place, Node value) {}
}
