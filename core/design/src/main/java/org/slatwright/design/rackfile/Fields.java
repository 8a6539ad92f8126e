package org.slatwright.design.rackfile;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A group of keys on its way to its meaning. Ask for every key, then {@link #close}. */
final class Fields {

  private final Node.Mapping mapping;
  private final String path;
  private final Reading reading;
  private final boolean complainsOfMissing;

  /**
   * Of a group that stands in the file, or stands in for one.
   *
   * @param complainsOfMissing false when the group itself is already complained of
   */
  Fields(Node.Mapping mapping, String path, Reading reading, boolean complainsOfMissing) {
    this.mapping = mapping;
    this.path = path;
    this.reading = reading;
    this.complainsOfMissing = complainsOfMissing;
  }

  /** What stands under the key. */
  Optional<Value> value(String key) {
    reading.ask(path, key);
    return mapping.members().stream()
        .filter(member -> member.key().equals(key))
        .findFirst()
        .map(member -> new Value(member.value(), path(key), reading));
  }

  /** What the key says, if it is there. */
  <T> Optional<Given<T>> optional(String key, Kind<T> kind) {
    return value(key).flatMap(value -> value.as(kind));
  }

  /** What the key says, or a default that stands nowhere. */
  <T> Given<T> orDefault(String key, Kind<T> kind, T byDefault) {
    Place nowhere = new Place(mapping.place().source(), 0, 0);
    return optional(key, kind).orElse(new Given<>(byDefault, path(key), nowhere));
  }

  /** What the key says, which must be there; empty after a complaint. */
  <T> Optional<Given<T>> demanded(String key, Kind<T> kind, String example) {
    Optional<Value> value = value(key);
    if (value.isEmpty()) {
      missing(key, example);
    }
    return value.flatMap(v -> v.as(kind));
  }

  /** What the key says, which must be there; the stand-in after a complaint. */
  <T> Given<T> required(String key, Kind<T> kind, String example) {
    return demanded(key, kind, example)
        .orElse(new Given<>(kind.standIn(), path(key), mapping.place()));
  }

  /** Complains of a key that does not go with another. */
  void refuse(String key, String message) {
    value(key).ifPresent(value -> reading.complain(value.place(), message));
  }

  /** The group under the key; one without keys when there is none. */
  Fields group(String key, String example) {
    return value(key)
        .map(value -> value.asGroup(example))
        .orElse(new Fields(new Node.Mapping(mapping.place(), List.of()), path(key), reading, true));
  }

  /** The group under the key, which must be there. */
  Fields requiredGroup(String key, String example) {
    Optional<Value> value = value(key);
    if (value.isPresent()) {
      return value.get().asGroup(example);
    }
    missing(key, example);
    Node.Mapping none = new Node.Mapping(mapping.place(), List.of());
    return new Fields(none, path(key), reading, false);
  }

  /** The entries of the list under the key; none when there is no list. */
  <T> List<T> list(String key, String example, Function<Value, T> entry) {
    return value(key).stream().flatMap(value -> value.asList(example).stream()).map(entry).toList();
  }

  /** Notes the keys that nobody asked for. */
  void close() {
    reading.noteUnknown(mapping, path);
  }

  /** Complains of the group, unless that has been done. */
  void complain(String message) {
    if (complainsOfMissing) {
      reading.complain(mapping.place(), message);
    }
  }

  private void missing(String key, String example) {
    String where = path.isEmpty() ? "" : " in " + path;
    complain(key + " is missing" + where + "; write, say, " + key + ": " + example);
  }

  private String path(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
