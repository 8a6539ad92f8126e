package org.slatwright.design.rackfile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * One reading of a file. It learns which keys there are from what the reader asks for, so that a
 * key nobody asks for is known to be a slip, and where a misplaced one belongs.
 */
final class Reading {

  private static final int MOST_HOMES = 2;
  private static final Pattern INDEX = Pattern.compile("\\[\\d+]");

  private final Complaints complaints;
  private final List<Unknown> unknown = new ArrayList<>();
  private final Map<String, Set<String>> asked = new TreeMap<>();

  Reading(Complaints complaints) {
    this.complaints = complaints;
  }

  private record Unknown(Node.Member member, String group) {}

  void complain(Place place, String message) {
    complaints.add(place, message);
  }

  /** Notes that {@code group} may hold {@code key}. */
  void ask(String group, String key) {
    asked.computeIfAbsent(anyEntry(group), g -> new LinkedHashSet<>()).add(key);
  }

  /** Notes the keys of a group that nobody asked for; they are judged when all is read. */
  void noteUnknown(Node.Mapping group, String path) {
    Set<String> known = asked.getOrDefault(anyEntry(path), Set.of());
    for (Node.Member member : group.members()) {
      if (!known.contains(member.key())) {
        unknown.add(new Unknown(member, path));
      }
    }
  }

  /** Complains of every unknown key, with the likeliest right one. */
  void complainOfUnknownKeys() {
    for (Unknown one : unknown) {
      String where = one.group.isEmpty() ? "" : " in " + one.group;
      complain(
          one.member.place(),
          "unknown key " + Quoted.of(one.member.key()) + where + "; " + advice(one));
    }
  }

  /** Every group of keys by its path, {@code rack.openings[]} for the entries of a list. */
  Map<String, Set<String>> askedFor() {
    return asked;
  }

  private String advice(Unknown one) {
    Set<String> here = asked.getOrDefault(anyEntry(one.group), Set.of());
    String key = one.member.key();
    return NearestKey.oneSlipFrom(key, here)
        .map(near -> "did you mean " + near + "?")
        .or(() -> home(key).map(group -> "it belongs in " + group))
        .or(() -> NearestKey.to(key, here).map(near -> "did you mean " + near + "?"))
        .orElse("write " + String.join(", ", here));
  }

  /** The groups elsewhere that hold this very key, unless they are many. */
  private Optional<String> home(String key) {
    List<String> homes =
        asked.entrySet().stream()
            .filter(group -> group.getValue().contains(key))
            .map(group -> group.getKey().isEmpty() ? "the outermost group" : group.getKey())
            .toList();
    boolean few = !homes.isEmpty() && homes.size() <= MOST_HOMES;
    return few ? Optional.of(String.join(" or ", homes).replace("[]", "")) : Optional.empty();
  }

  private static String anyEntry(String path) {
    return INDEX.matcher(path).replaceAll("[]");
  }
}
