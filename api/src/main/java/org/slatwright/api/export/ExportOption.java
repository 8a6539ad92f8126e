package org.slatwright.api.export;

import java.util.List;

/**
 * A choice that an exporter offers, set with {@code --option FORMAT.NAME=VALUE}.
 *
 * @param name lower-case words joined by hyphens, unique within its exporter
 * @param description what it changes, in one line
 * @param values the values allowed, at least one; the first is taken when none is given
 */
public record ExportOption(String name, String description, List<String> values) {

  public ExportOption {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException("option " + name + " allows no value");
    }
  }

  /** The value taken when none is given. */
  public String defaultValue() {
    return values.get(0);
  }
}
