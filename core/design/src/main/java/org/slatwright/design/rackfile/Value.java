package org.slatwright.design.rackfile;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A value on its way to its meaning; whatever is wrong with it goes to the complaints. */
record Value(Node node, String path, Reading reading) {

  /** The single value, or empty after a complaint. */
  <T> Optional<Given<T>> as(Kind<T> kind) {
    if (!(node instanceof Node.Scalar scalar)) {
      reading.complain(node.place(), name() + " is " + what() + "; write " + kind.forms());
      return Optional.empty();
    }
    if (scalar.isEmpty()) {
      reading.complain(node.place(), name() + " has no value; write " + kind.forms());
      return Optional.empty();
    }
    try {
      return Optional.of(new Given<>(kind.meaning().of(scalar.text()), path, node.place()));
    } catch (Unreadable e) {
      String read = name() + " " + Quoted.of(scalar.text()) + " ";
      String advice = e.advice().orElse("write " + kind.forms());
      reading.complain(node.place(), read + e.getMessage() + "; " + advice);
      return Optional.empty();
    }
  }

  /** The group of keys. Nothing at all is a group without keys. */
  Fields asGroup(String example) {
    if (node instanceof Node.Mapping mapping) {
      return new Fields(mapping, path, reading, true);
    }
    boolean empty = node instanceof Node.Scalar scalar && scalar.isEmpty();
    if (!empty) {
      reading.complain(
          node.place(), name() + " is " + what() + "; write keys and values: " + example);
    }
    return new Fields(new Node.Mapping(node.place(), List.of()), path, reading, empty);
  }

  /** The entries of the list; none after a complaint. */
  List<Value> asList(String example) {
    if (node instanceof Node.Sequence sequence) {
      return IntStream.range(0, sequence.entries().size())
          .mapToObj(i -> new Value(sequence.entries().get(i), path + "[" + i + "]", reading))
          .toList();
    }
    reading.complain(node.place(), name() + " is " + what() + "; write a list: " + example);
    return List.of();
  }

  Place place() {
    return node.place();
  }

  boolean isGroup() {
    return node instanceof Node.Mapping;
  }

  private String name() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private String what() {
    if (node instanceof Node.Scalar scalar) {
      return scalar.isEmpty() ? "empty" : "the single value " + Quoted.of(scalar.text());
    }
    return node instanceof Node.Sequence ? "a list" : "a group of keys";
  }
}
