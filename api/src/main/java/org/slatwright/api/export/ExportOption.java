package org.slatwright.api.export;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthGrammar;
import org.slatwright.api.measure.Unit;

/**
 * A choice that an exporter offers, set with {@code --option FORMAT.NAME=VALUE}.
 *
 * @param name lower-case words joined by hyphens, unique within its exporter
 * @param description what it changes, in one line
 * @param values at least one; the first is taken when none is given
 * @param form whether {@code values} are all that is allowed, or examples
 */
public record ExportOption(String name, String description, List<String> values, Form form) {

  public ExportOption {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException("option " + name + " allows no value");
    }
  }

  /** One of {@code values}. */
  public ExportOption(String name, String description, List<String> values) {
    this(name, description, values, Form.ONE_OF);
  }

  /** What may be given. */
  public enum Form {
    /** One of the values listed. */
    ONE_OF,
    /**
     * A length greater than zero, or two joined by {@code x}: across and up. A bare number is in
     * millimetres. See {@link LengthGrammar}.
     */
    LENGTHS
  }

  /** The value taken when none is given. */
  public String defaultValue() {
    return values.get(0);
  }

  /** Whether {@code value} may be given. */
  public boolean takes(String value) {
    return switch (form) {
      case ONE_OF -> values.contains(value);
      case LENGTHS -> lengths(value).isPresent();
    };
  }

  /** The one or two lengths that {@code value} says, or empty when it says none. */
  static Optional<List<Length>> lengths(String value) {
    List<Length> read =
        Arrays.stream(value.split("x", -1))
            .map(new LengthGrammar(Unit.MM)::read)
            .flatMap(Optional::stream)
            .filter(Length::isPositive)
            .toList();
    int said = value.split("x", -1).length;
    return said <= 2 && read.size() == said ? Optional.of(read) : Optional.empty();
  }
}
