package org.slatwright.api.export;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.slatwright.api.measure.Length;

/** A valid value for each option that an exporter declares. */
public final class OptionValues {

  private final Map<String, String> values;

  private OptionValues(Map<String, String> values) {
    this.values = Map.copyOf(values);
  }

  /** The default of every option. */
  public static OptionValues defaults(List<ExportOption> declared) {
    return of(declared, Map.of());
  }

  /**
   * The values given, and the default of every option that is not.
   *
   * @throws IllegalArgumentException when an option is not declared or a value is not allowed; the
   *     message names what is
   */
  public static OptionValues of(List<ExportOption> declared, Map<String, String> given) {
    Map<String, String> values = new TreeMap<>();
    declared.forEach(option -> values.put(option.name(), option.defaultValue()));
    given.forEach(
        (name, value) -> {
          ExportOption option =
              declared.stream()
                  .filter(candidate -> candidate.name().equals(name))
                  .findFirst()
                  .orElseThrow(() -> unknown(name, declared));
          if (!option.takes(value)) {
            throw new IllegalArgumentException(
                "option "
                    + name
                    + " takes "
                    + (option.form() == ExportOption.Form.ONE_OF ? "" : "values such as ")
                    + String.join(", ", option.values())
                    + ", not "
                    + value);
          }
          values.put(name, value);
        });
    return new OptionValues(values);
  }

  private static IllegalArgumentException unknown(String name, List<ExportOption> declared) {
    String known =
        declared.isEmpty()
            ? "it has none"
            : "it has " + String.join(", ", declared.stream().map(ExportOption::name).toList());
    return new IllegalArgumentException("no option " + name + ": " + known);
  }

  /**
   * The value of an option.
   *
   * @throws IllegalArgumentException when the exporter does not declare it
   */
  public String value(String name) {
    String value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("option " + name + " is not declared");
    }
    return value;
  }

  /**
   * The lengths that an option of the form {@link ExportOption.Form#LENGTHS} says: one, or two, the
   * first across and the second up.
   *
   * @throws IllegalArgumentException when the exporter does not declare it or it says no lengths
   */
  public List<Length> lengths(String name) {
    return ExportOption.lengths(value(name))
        .orElseThrow(() -> new IllegalArgumentException("option " + name + " is not a length"));
  }
}
