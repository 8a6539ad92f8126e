package org.slatwright.design.rackfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One {@code --set}: {@code rack.upright=1400}, {@code rack.openings[1].clear=even}, {@code
 * rack.openings=[{clear: even, count: 2}]}; or {@code rack.upright=}, which leaves the key out.
 *
 * @param value empty to leave the key out
 */
record Setting(Place place, KeyPath path, Optional<Node> value) {

  private static final int LONGEST_SOURCE = 200;

  /** What {@code text} asks for, or empty after a complaint. */
  static Optional<Setting> of(String text, Complaints complaints) {
    Place place = new Place(source(text), 0, 0);
    int equals = text.indexOf('=');
    Optional<KeyPath> path = KeyPath.of(text.substring(0, Math.max(equals, 0)).strip());
    if (path.isEmpty()) {
      complaints.add(
          place, "is not key=value; write rack.upright=1400 or rack.openings[1].clear=even");
      return Optional.empty();
    }
    try {
      String value = text.substring(equals + 1).strip();
      return Optional.of(
          new Setting(place, path.get(), YamlTree.ofSetting(value, place, complaints)));
    } catch (RackFileException e) {
      return Optional.empty(); // the complaint is made; the other settings may have theirs
    }
  }

  /** The source of every place within the setting: {@code --set rack.upright=14x}. */
  static String source(String text) {
    boolean whole = text.length() <= LONGEST_SOURCE;
    return "--set " + (whole ? text : text.substring(0, LONGEST_SOURCE) + "…");
  }

  /** The file as it would stand had the maker written this into it. */
  Node.Mapping appliedTo(Node.Mapping file, Complaints complaints) {
    try {
      Optional<Node> changed = changed(Optional.of(file), path.steps(), "");
      return changed.map(Node.Mapping.class::cast).orElse(file);
    } catch (Unreadable e) {
      complaints.add(place, e.getMessage());
      return file;
    }
  }

  private Optional<Node> changed(Optional<Node> current, List<KeyPath.Step> steps, String at)
      throws Unreadable {
    if (steps.isEmpty()) {
      return value;
    }
    List<KeyPath.Step> inner = steps.subList(1, steps.size());
    Optional<Node> node = current.filter(n -> !(n instanceof Node.Scalar s && s.isEmpty()));
    return steps.get(0) instanceof KeyPath.Step.Index step
        ? Optional.of(inList(node, step.index(), inner, at))
        : Optional.of(inMapping(node, ((KeyPath.Step.Key) steps.get(0)).name(), inner, at));
  }

  private Node inMapping(Optional<Node> node, String key, List<KeyPath.Step> inner, String at)
      throws Unreadable {
    Node group = node.orElse(new Node.Mapping(place, List.of()));
    if (!(group instanceof Node.Mapping mapping)) {
      throw new Unreadable(at + " has no keys of its own to set; set " + at + " itself");
    }
    String path = at.isEmpty() ? key : at + "." + key;
    List<Node.Member> members = new ArrayList<>(mapping.members());
    int index = members.stream().map(Node.Member::key).toList().indexOf(key);
    Optional<Node> old = index < 0 ? Optional.empty() : Optional.of(members.get(index).value());
    Optional<Node> changed = changed(old, inner, path);
    put(members, index, changed.map(value -> new Node.Member(key, place, value)));
    return new Node.Mapping(mapping.place(), members);
  }

  private Node inList(Optional<Node> node, int index, List<KeyPath.Step> inner, String at)
      throws Unreadable {
    Node list = node.orElse(new Node.Sequence(place, List.of()));
    if (!(list instanceof Node.Sequence sequence)) {
      throw new Unreadable(at + " is not a list; set " + at + " itself");
    }
    List<Node> entries = new ArrayList<>(sequence.entries());
    if (index > entries.size()) {
      String next = at + "[" + entries.size() + "]";
      throw new Unreadable(at + " ends before that; the next entry would be " + next);
    }
    boolean fresh = index == entries.size();
    Optional<Node> old = fresh ? Optional.empty() : Optional.of(entries.get(index));
    put(entries, fresh ? -1 : index, changed(old, inner, at + "[" + index + "]"));
    return new Node.Sequence(sequence.place(), entries);
  }

  /** Replaces, appends (index below zero) or, without a value, takes out. */
  private static <T> void put(List<T> all, int index, Optional<T> value) {
    if (index < 0) {
      value.ifPresent(all::add);
    } else if (value.isPresent()) {
      all.set(index, value.get());
    } else {
      all.remove(index);
    }
  }
}
