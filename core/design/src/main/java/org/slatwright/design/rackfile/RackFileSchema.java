package org.slatwright.design.rackfile;

import java.util.SortedSet;

/**
 * The rack file's JSON Schema (draft 2020-12), with which an editor completes and checks a rack
 * file while it is written. It knows the same keys as {@link RackFileReader} and allows whatever
 * the reader can read; the reader alone checks what depends on the units or on another key.
 */
public final class RackFileSchema {

  private RackFileSchema() {}

  /** The schema as JSON text, ending in a line break. */
  public static String json() {
    return Resource.text("rack-file.schema.json");
  }

  /**
   * Every key that there is, as {@code --set} takes it but for the number of an entry: {@code
   * rack.upright}, {@code rack.openings[].clear}; groups, lists and their entries among them.
   */
  public static SortedSet<String> keys() {
    return SchemaKeys.of(json());
  }
}
